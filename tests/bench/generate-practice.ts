import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { benchFolder } from './paths.ts';
import { MOVEMENTS, PLACES, writeAthletes, writePlans } from './practice-definitions.ts';
import { createLifters, type Lifter, LOFT } from './practice-people.ts';
import { writeSession } from './practice-sessions.ts';
import { createRandom } from './random.ts';

/** The last day of the practice; every run takes it for today. */
export const TODAY = '2026-11-24';

/** A file of about this many bytes, unless all of the practice is in one. */
const FILE_BYTES = 20_000;
/** About ten years of three sessions a week. */
const BYTES_OF_A_LIFE = 1_000_000;
const DAY_MS = 86_400_000;

export interface Practice {
  readonly folder: string;
  /** Paths of the logs in order; definitions are not among them, unless all is one file. */
  readonly logs: readonly string[];
  /** Path of the file that defines {@link EDITED_MOVEMENT}. */
  readonly movements: string;
  readonly bytes: number;
  readonly lines: number;
}

/** How a practice lies on the disk: a file for each athlete's quarter or so, or all in one. */
export type Shape = 'many' | 'one';

/** Writes a practice of about that many bytes, or takes the one that an earlier run wrote. */
export function preparePractice(bytes: number, shape: Shape = 'many'): Practice {
  const folder = join(benchFolder, `practice-${bytes}-${shape}-${hashGenerator()}`);
  const index = join(folder, 'index.json');
  if (!existsSync(index)) {
    const unfinished = `${folder}.unfinished`;
    rmSync(unfinished, { recursive: true, force: true });
    const files = shape === 'many' ? writePractice(bytes) : mergeFiles(writePractice(bytes));
    for (const [name, text] of files) {
      mkdirSync(dirname(join(unfinished, name)), { recursive: true });
      writeFileSync(join(unfinished, name), text);
    }
    const texts = [...files.values()];
    const facts = {
      logs: [...files.keys()].filter((name) => shape === 'one' || !name.startsWith('practice/')),
      movements: shape === 'one' ? 'all.plim' : 'practice/movements.plim',
      bytes: texts.reduce((sum, text) => sum + text.length, 0),
      lines: texts.reduce((sum, text) => sum + text.split('\n').length - 1, 0),
    };
    writeFileSync(join(unfinished, 'index.json'), JSON.stringify(facts));
    rmSync(folder, { recursive: true, force: true });
    renameSync(unfinished, folder);
  }
  const facts = JSON.parse(readFileSync(index, 'utf8')) as Omit<Practice, 'folder'>;
  return {
    ...facts,
    folder,
    logs: facts.logs.map((name) => join(folder, name)),
    movements: join(folder, facts.movements),
  };
}

/** All files of a practice by name, plain ASCII, so that characters are bytes. */
export function writePractice(bytes: number): Map<string, string> {
  const count = Math.min(100, Math.max(3, Math.round(bytes / BYTES_OF_A_LIFE)));
  const lifters = createLifters(count);
  const files = new Map([
    ['practice/movements.plim', MOVEMENTS],
    ['practice/places.plim', PLACES],
    ['practice/plans.plim', writePlans(lifters)],
    ['practice/athletes.plim', writeAthletes(lifters)],
  ]);
  const defined = [...files.values()].reduce((sum, text) => sum + text.length, 0);
  const group = writeGroup(lifters, (bytes - defined) / 50);
  const share = (bytes - defined - group.length) / count;
  for (const lifter of lifters) {
    for (const [date, text] of cutIntoFiles(lifter, writeHistory(lifter, share)))
      files.set(`${lifter.folder}/${date}.plim`, text);
  }
  files.set('sunday-group/all.plim', group);
  return files;
}

type Dated = readonly [date: string, text: string];

/** An athlete's sessions, oldest first: as many as fill the bytes, up to the last day of the practice. */
function writeHistory(lifter: Lifter, bytes: number): Dated[] {
  const random = createRandom(lifter.seed);
  const sessions: Dated[] = [];
  let size = 0;
  for (let day = Date.parse(TODAY) / DAY_MS - 1; size < bytes; day--) {
    const date = new Date(day * DAY_MS);
    const index = lifter.weekdays.indexOf(date.getUTCDay());
    if (index < 0) continue;
    const text = writeSession(toIso(date), { lifter, week: Math.floor((day + 3) / 7), index, random });
    sessions.push([toIso(date), text]);
    size += text.length + 1;
  }
  return sessions.reverse();
}

function cutIntoFiles({ unit }: Lifter, sessions: readonly Dated[]): Dated[] {
  const files: [string, string][] = [];
  for (const [date, text] of sessions) {
    const last = files.at(-1);
    if (last && last[1].length + text.length < FILE_BYTES) last[1] += `\n${text}`;
    else files.push([date, `# From ${date} on.\n\nunits ${unit}\n\n${text}`]);
  }
  return files;
}

/** Sundays of three people in one log, with cells between bars. */
function writeGroup(lifters: readonly Lifter[], bytes: number): string {
  const group = lifters.slice(0, 3);
  const random = createRandom(77);
  const cells = (write: (lifter: Lifter) => string) => group.map(write).join(' | ');
  const sessions: string[] = [];
  let size = 0;
  for (let day = Date.parse('2026-11-22') / DAY_MS; size < bytes; day -= 7) {
    const time = () => Array.from({ length: 3 }, () => `2:${random.integer(20, 59)}`).join(', ');
    const text = `session ${toIso(new Date(day * DAY_MS))} 10:00 ${cells(({ name }) => name)} at ${LOFT}
  A circuit, 3 rounds, rest 1:30
    Kettlebell Swing: ${cells(({ kettlebell }) => `${random.integer(10, 15)} @ ${kettlebell} kg`)}
    Bell-Rope Row: ${cells(() => String(random.integer(8, 12)))}
    Millstone Carry: ${cells(({ kettlebell }) => `20 m/side @ ${kettlebell} kg`)}
    time ${cells(time)}
  effort ${cells(() => String(random.integer(5, 8)))}
  lasted 45 min
`;
    sessions.push(text);
    size += text.length + 1;
  }
  return sessions.reverse().join('\n');
}

/**
 * One unit for a file: each line of an athlete in pounds writes its own. The group stays out, for its sessions would
 * stand below later ones of the same people.
 */
function mergeFiles(files: ReadonlyMap<string, string>): Map<string, string> {
  const own = [...files].filter(([name]) => !name.startsWith('sunday-group/'));
  const texts = own.map(([, text]) => text.replace(/^units .*\n\n/m, ''));
  return new Map([['all.plim', `units kg\n\n${texts.join('\n')}`]]);
}

function toIso(date: Date): string {
  return date.toISOString().slice(0, 10);
}

/** A practice that another version of the generator wrote is not taken. */
function hashGenerator(): string {
  const hash = createHash('sha256');
  for (const part of [
    'generate-practice',
    'practice-people',
    'practice-definitions',
    'practice-sessions',
    'random',
  ])
    hash.update(readFileSync(join(import.meta.dirname, `${part}.ts`)));
  return hash.digest('hex').slice(0, 8);
}
