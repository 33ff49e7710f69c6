import { resolve } from 'node:path';
import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import {
  applySeverities,
  readSeverities,
  SEVERITY_CHOICES,
  type Severities,
} from '@plimsoll/language/checks/severities';
import type { Severity } from '@plimsoll/language/model/source';
import { count } from '@plimsoll/language/summaries/words';
import { splitTexts } from '@plimsoll/language/text/lines';
import type { Terminal } from '../command-line.ts';
import type { FileProblem } from '../problems.ts';
import { CheckCache } from './check-cache.ts';
import { checkLogs, checkWithCache } from './check-logs.ts';
import { Misuse } from './misuse.ts';
import { readOptions, readToday } from './read-options.ts';
import { type ReadLog, readTexts } from './read-paths.ts';

const HELP = `plimsoll check [paths] [--fail-on error|warning] [--format text|json] [--today DATE]
               [--severity CODE=${SEVERITY_CHOICES.join('|')},...] [--cache FOLDER]

Tells what is wrong in logs, file by file, with the line and the place in it. A line that ends in
"# ignore code" keeps quiet about the code in brackets; --severity makes more or less of a code in all
files, or turns it off: --severity load-jump=off,no-load=hint
--cache remembers in a folder what was found, so that the next check looks only at what changed.

Ends with 0 if there is no error, 1 if there is one (or, with --fail-on warning, a warning),
2 if the command was not understood.
`;

/** A problem with its place in a file, lines and columns from 1. */
interface FoundProblem {
  readonly path: string;
  readonly line: number;
  readonly column: number;
  readonly endColumn: number;
  readonly severity: Severity;
  readonly message: string;
  readonly code: string;
  /** The line it is in. */
  readonly source: string;
}

export async function runCheck(args: string[], terminal: Terminal): Promise<number> {
  const { values, paths, help } = readOptions('check', args, {
    'fail-on': ['error', 'warning'],
    format: ['text', 'json'],
    today: 'any',
    severity: 'list',
    cache: 'any',
  });
  if (help) {
    terminal.write(HELP);
    return 0;
  }
  const today = readToday(values.today, terminal.today);
  const severities = readChoices(values.severity);
  const logs = await readTexts(paths, terminal.folder);
  const cache = values.cache && resolve(terminal.folder, values.cache);
  const found = await findProblems(logs, today, cache);
  const problems = logs.flatMap((log) => [
    ...complain(log),
    ...locate(applySeverities(found.get(log.uri)!, severities), log),
  ]);
  const number = (severity: Severity) => problems.filter((problem) => problem.severity === severity).length;
  const [errors, warnings] = [number('error'), number('warning')];
  if (values.format === 'json') {
    terminal.write(`${JSON.stringify({ files: logs.length, errors, warnings, problems }, undefined, 2)}\n`);
  } else {
    const shown = problems.filter(({ severity }) => severity !== 'hint');
    const found = [count(errors, 'error'), count(warnings, 'warning')];
    const notes = number('info');
    const summary = [...found, ...(notes > 0 ? [count(notes, 'note')] : [])].join(', ');
    const printed = shown.map((problem) => printProblem(problem, terminal.colour));
    terminal.write([...printed, `${summary} in ${count(logs.length, 'file')}\n`].join(''));
  }
  const failed = errors > 0 || (values['fail-on'] === 'warning' && warnings > 0);
  return failed ? 1 : 0;
}

function complain({ path, complaint }: ReadLog): FoundProblem[] {
  const place = { path, line: 1, column: 1, endColumn: 1, source: '' };
  return complaint ? [{ ...place, severity: 'warning', message: complaint, code: 'unreadable-file' }] : [];
}

/** `load-jump=off,no-load=hint` → the severities; anything unknown is a misuse that says what is known. */
function readChoices(text = ''): Severities {
  const parts = text.split(',').flatMap((part) => part.trim() || []);
  const { severities, complaints } = readSeverities(
    Object.fromEntries(parts.map((part) => part.split('=', 2).map((side) => side.trim()))),
  );
  if (complaints.length > 0) throw new Misuse(`--severity: ${complaints.join('; ')}`);
  return severities;
}

/** With a folder for the cache, only what is new to it is looked at. */
async function findProblems(
  logs: readonly ReadLog[],
  today: IsoDate,
  folder: string | undefined,
): Promise<ReadonlyMap<string, readonly FileProblem[]>> {
  if (!folder) return checkLogs(logs, today);
  const cache = await CheckCache.open(folder);
  const found = checkWithCache(logs, today, cache);
  await cache.close();
  return found;
}

function locate(problems: readonly FileProblem[], { path, text }: ReadLog): FoundProblem[] {
  const lines = problems.length > 0 ? splitTexts(text) : [];
  return problems.map(({ entryLine, problem: { severity, message, code, span } }) => {
    const line = entryLine + span.line;
    return {
      path,
      line: line + 1,
      column: span.start + 1,
      endColumn: span.end + 1,
      severity,
      message,
      code,
      source: lines[line] ?? '',
    };
  });
}

/** Hints do not come here, and what is neither error nor warning is called info by every tool that reads this. */
function printProblem(problem: FoundProblem, colour: boolean): string {
  const { path, line, column, endColumn, severity, message, code, source } = problem;
  const paint = (style: number, text: string) => (colour ? `\u001b[${style}m${text}\u001b[0m` : text);
  const tone = { error: 31, warning: 33, info: 36, hint: 36 }[severity];
  const head = `${path}:${line}:${column}: ${paint(tone, `${severity}:`)} ${plain(message)} [${code}]\n`;
  if (source.trim() === '') return head;
  // Tabs stay tabs, so that the caret stands under its letter whatever a tab is worth.
  const before = source.slice(0, column - 1).replace(/[^\t]/g, ' ');
  const carets = '^'.repeat(Math.max(1, Math.min(endColumn, source.length + 1) - column));
  return `${head}${plain(source)}\n${before}${paint(tone, carets)}\n`;
}

/** A log must not steer the terminal. */
function plain(text: string): string {
  return text.replace(/(?!\t)\p{Cc}/gu, '\ufffd');
}
