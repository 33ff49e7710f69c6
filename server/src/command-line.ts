import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import { version } from '../package.json';
import { runCheck } from './commands/check.ts';
import { runCompare } from './commands/compare.ts';
import { Misuse } from './commands/misuse.ts';
import { runNext } from './commands/next.ts';
import { runReport } from './commands/report.ts';

/** The world around a command, so that tests can be it. */
export interface Terminal {
  readonly write: (text: string) => void;
  readonly writeError: (text: string) => void;
  readonly colour: boolean;
  /** The current folder: paths are relative to it. */
  readonly folder: string;
  readonly today: IsoDate;
}

const COMMANDS: Readonly<Record<string, (args: string[], terminal: Terminal) => Promise<number>>> = {
  check: runCheck,
  compare: runCompare,
  next: runNext,
  report: runReport,
};

const HELP = `plimsoll reads training logs in plain text (*.plim).

  plimsoll check [paths]    tells what is wrong in them
  plimsoll compare [paths]  tells what changed since the last commit, and what it costs
  plimsoll next [paths]     writes an athlete's next session
  plimsoll report [paths]   prints the numbers that the editor shows
  plimsoll <command> --help explains a command
  plimsoll --version

A path is a file or a folder; without one it is the current folder. Names are looked up in the
files given, so give the folder of the whole practice.
`;

/** Runs a command; answers its exit code: 0 for well, 1 for what the command found, 2 for misuse. */
export async function runCommandLine(args: readonly string[], terminal: Terminal): Promise<number> {
  const [name, ...rest] = args;
  if (name === '--version') {
    terminal.write(`${version}\n`);
    return 0;
  }
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    terminal.write(HELP);
    return name === undefined ? 2 : 0;
  }
  const run = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!run) {
    terminal.writeError(
      `There is no command "${name}": it is check, compare, next or report. See plimsoll --help\n`,
    );
    return 2;
  }
  try {
    return await run(rest, terminal);
  } catch (error) {
    if (!(error instanceof Misuse)) throw error;
    terminal.writeError(`${error.message}\n`);
    return 2;
  }
}
