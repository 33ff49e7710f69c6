import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, relative } from 'node:path';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { type NextSession, toInsertion, writeNextSession } from '@plimsoll/language/plans/next-session';
import { listPlans } from '@plimsoll/language/plans/next-turn';
import type { Practice } from '@plimsoll/language/practice/practice';
import { splitLines } from '@plimsoll/language/text/lines';
import { foldName } from '@plimsoll/language/text/names';
import { URI } from 'vscode-uri';
import type { Terminal } from '../command-line.ts';
import { decode, LARGEST_IN_BYTES, TOO_LARGE } from '../node-file-store.ts';
import { DEFAULT_SETTINGS } from '../settings.ts';
import { Misuse } from './misuse.ts';
import { readOptions, readToday } from './read-options.ts';
import { readPaths } from './read-paths.ts';

const HELP = `plimsoll next [paths] --athlete NAME [--today DATE] [--write]

Prints the athlete's next session: the next day of the plan with its loads, and what really happened
taken into account. Without a plan it is the session of a week before. With --write it goes into the
athlete's newest file (a file called after its month is followed by the next month's).

Ends with 0, with 1 if there is nothing to go on from, with 2 if the command was not understood.
`;

export async function runNext(args: string[], terminal: Terminal): Promise<number> {
  const { flags, rest } = takeFlag(args, '--write');
  const { values, paths, help } = readOptions('next', rest, { athlete: 'any', today: 'any' });
  if (help) {
    terminal.write(HELP);
    return 0;
  }
  const today = readToday(values.today, terminal.today);
  const { practice, logs } = await readPaths(paths, terminal.folder);
  const athlete = findAthlete(practice, values.athlete);
  const next = writeNextSession(new SessionWorks(practice), {
    athlete,
    today,
    unit: DEFAULT_SETTINGS.unit,
    formula: DEFAULT_SETTINGS.formula,
    ...(logs[0] && { fallback: logs[0].uri }),
  });
  if ('refused' in next) {
    terminal.writeError(`${next.refused}.\n`);
    return 1;
  }
  terminal.write(`${next.text}\n`);
  const path = relative(terminal.folder, URI.parse(next.place.uri).fsPath);
  if (flags) {
    await insert(next);
    terminal.writeError(`Written to ${path}\n`);
  } else terminal.writeError(`For ${path}: --write puts it there.\n`);
  return 0;
}

/** `--write` takes no value. */
function takeFlag(args: readonly string[], flag: string): { flags: boolean; rest: string[] } {
  return { flags: args.includes(flag), rest: args.filter((arg) => arg !== flag) };
}

function findAthlete(practice: Practice, name: string | undefined): string {
  const keys = practice.athleteKeys();
  const named = keys.map((key) => practice.athleteName(key)).filter((known) => known !== '');
  if (name !== undefined) {
    const key = foldName(name);
    if (keys.includes(key) || listPlans(practice, key).length > 0) return key;
    const known = named.length > 0 ? `: there are ${named.join(', ')}` : ' in these files';
    throw new Misuse(`No athlete is called "${name}"${known}.`);
  }
  if (keys.length === 1) return keys[0]!;
  throw new Misuse(
    keys.length === 0 ? 'No athlete in these files.' : `Whose? --athlete NAME, one of ${named.join(', ')}.`,
  );
}

/** Puts the session in its place, with the line ends that the file has. */
async function insert(next: NextSession): Promise<void> {
  const { place } = next;
  const path = URI.parse(place.uri).fsPath;
  if (place.isNew) {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, toInsertion(next), { flag: 'wx' });
    return;
  }
  const bytes = await readFile(path);
  const { text, complaint } = decode(bytes);
  if (bytes.length > LARGEST_IN_BYTES)
    throw new Misuse(`${path} was not read, so nothing was written. ${TOO_LARGE.complaint}.`);
  // Written back in another encoding, or without what could not be read, the file would be another.
  if (complaint || (bytes.length > 1 && (bytes[0] === 0xff || bytes[0] === 0xfe)))
    throw new Misuse(`${path} is not in the encoding UTF-8, so nothing was written.`);
  const lines = splitLines(text);
  const line = lines[place.line]!;
  const first = lines[0]!;
  const lineEnd =
    text.slice(first.offset + first.text.length, first.offset + first.text.length + first.endLength) || '\n';
  const at = line.offset + place.column;
  // The decoder takes a byte-order mark off.
  const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? '\ufeff' : '';
  const added = toInsertion(next).replaceAll('\n', lineEnd);
  const isLast = at === text.length && text.length > 0;
  await writeFile(path, `${mark}${text.slice(0, at)}${added}${isLast ? lineEnd : ''}${text.slice(at)}`);
}
