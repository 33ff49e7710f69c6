import { type IsoWeek, parseIsoWeek } from '@plimsoll/language/calendar/iso-week';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { Practice } from '@plimsoll/language/practice/practice';
import { makeReport, printReport } from '@plimsoll/language/summaries/report';
import { count } from '@plimsoll/language/summaries/words';
import { foldName } from '@plimsoll/language/text/names';
import type { Terminal } from '../command-line.ts';
import { listProblems } from '../problems.ts';
import { DEFAULT_SETTINGS } from '../settings.ts';
import { Misuse } from './misuse.ts';
import { readOptions, readToday } from './read-options.ts';
import { type ReadLog, readPaths } from './read-paths.ts';

const HELP = `plimsoll report [paths] [--athlete NAME] [--week 2026-W47] [--format text|json] [--today DATE]

Prints the numbers that the editor shows over sessions, blocks and lines, for each athlete's last
trained week up to today, or for the week and athlete given. As JSON each number comes with what
went in, what was left out, its formula and its source.
`;

export async function runReport(args: string[], terminal: Terminal): Promise<number> {
  const { values, paths, help } = readOptions('report', args, {
    athlete: 'any',
    week: 'any',
    format: ['text', 'json'],
    today: 'any',
  });
  if (help) {
    terminal.write(HELP);
    return 0;
  }
  const today = readToday(values.today, terminal.today);
  const week = readWeek(values.week);
  const { practice, logs } = await readPaths(paths, terminal.folder);
  checkAthlete(practice, values.athlete);
  const works = new SessionWorks(practice);
  const report = makeReport(works, {
    today,
    formula: DEFAULT_SETTINGS.formula,
    unit: DEFAULT_SETTINGS.unit,
    complete: true,
    ...(values.athlete !== undefined && { athlete: values.athlete }),
    ...(week && { week }),
  });
  terminal.write(
    values.format === 'json' ? `${JSON.stringify(report, undefined, 2)}\n` : printReport(report),
  );
  warnOfErrors(works, logs, terminal);
  return 0;
}

function readWeek(text: string | undefined): IsoWeek | undefined {
  if (text === undefined) return undefined;
  const week = parseIsoWeek(text);
  if (!week) throw new Misuse(`--week is an ISO week such as 2026-W47, not "${text}".`);
  return week;
}

function checkAthlete(practice: Practice, name: string | undefined): void {
  const keys = practice.athleteKeys();
  if (name === undefined || keys.includes(foldName(name))) return;
  const known = keys.map((key) => practice.athleteName(key)).filter((known) => known !== '');
  throw new Misuse(
    `No athlete is called "${name}"${known.length > 0 ? `: there are ${known.join(', ')}` : ' in these files'}.`,
  );
}

/** What could not be read is in no number, and whoever reads the numbers must know. */
function warnOfErrors(works: SessionWorks, logs: readonly ReadLog[], { today, writeError }: Terminal): void {
  for (const { path, complaint } of logs) if (complaint) writeError(`${path}: ${complaint}.\n`);
  const errors = logs
    .flatMap(({ uri }) => listProblems(works, uri, { today, complete: true }))
    .filter(({ problem }) => problem.severity === 'error').length;
  if (errors > 0) {
    writeError(`${count(errors, 'error')} in these files may leave something out: see plimsoll check.\n`);
  }
}
