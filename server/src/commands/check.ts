import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { Severity } from '@plimsoll/language/model/source';
import { count } from '@plimsoll/language/summaries/words';
import type { Terminal } from '../command-line.ts';
import { listProblems } from '../problems.ts';
import { readOptions, readToday } from './read-options.ts';
import { type ReadLog, readPaths } from './read-paths.ts';

const HELP = `plimsoll check [paths] [--fail-on error|warning] [--format text|json] [--today DATE]

Tells what is wrong in logs, file by file, with the line and the place in it. A line that ends in
"# ignore code" keeps quiet about the code in brackets.

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
  });
  if (help) {
    terminal.write(HELP);
    return 0;
  }
  const today = readToday(values.today, terminal.today);
  const { practice, logs } = await readPaths(paths, terminal.folder);
  const works = new SessionWorks(practice);
  const problems = logs.flatMap((log) => [...complain(log), ...findProblems(works, log, today)]);
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

function findProblems(works: SessionWorks, { uri, path }: ReadLog, today: Terminal['today']): FoundProblem[] {
  const lines = works.practice.file(uri)!.lines;
  return listProblems(works, uri, { today, complete: true }).map(({ entryLine, problem }) => {
    const { severity, message, code, span } = problem;
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
