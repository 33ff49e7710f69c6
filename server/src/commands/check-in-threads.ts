import { availableParallelism } from 'node:os';
import { parentPort, Worker, workerData } from 'node:worker_threads';
import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import type { FileProblem } from '@plimsoll/language/checks/check-file';
import { type FileOutline, listRests } from '@plimsoll/language/checks/file-outline';
import { PartlyRead } from './partly-read.ts';
import type { ReadLog } from './read-paths.ts';

/** Less text than this in all is checked before a thread has begun. */
const LEAST_LENGTH = 2_000_000;
/** More threads read the same definitions and histories too often. */
const MOST_THREADS = 4;
/** Facts live as long as the check: with room to be born in they are moved about less. */
const YOUNG_MEGABYTES = 64;

type Log = Pick<ReadLog, 'uri' | 'text'>;
type Outlines = readonly (readonly [uri: string, outline: FileOutline])[];
type Found = readonly (readonly [uri: string, problems: readonly FileProblem[]])[];

/** What a thread is given to read and to check. */
interface Share {
  readonly logs: readonly Log[];
  readonly today: IsoDate;
}

/** How many threads a check of these logs is worth. */
export function countThreads(logs: readonly Log[], cores = availableParallelism()): number {
  const length = logs.reduce((sum, { text }) => sum + text.length, 0);
  return length < LEAST_LENGTH ? 1 : Math.min(MOST_THREADS, cores, logs.length);
}

/**
 * The problems of each log, by URI, found by threads that run `program`. Each reads a share of the logs and says what
 * is in it; then it is given what else its share rests on, and checks. No facts travel between threads, only texts and
 * problems.
 */
export async function checkInThreads(
  logs: readonly Log[],
  today: IsoDate,
  program: string,
  threads: number,
): Promise<ReadonlyMap<string, readonly FileProblem[]>> {
  const shares = shareOut(logs, threads);
  const workers = shares.map(
    (share) =>
      new Worker(program, {
        workerData: { logs: share, today } satisfies Share,
        resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MEGABYTES },
      }),
  );
  try {
    const outlines = new Map((await Promise.all(workers.map((worker) => receive<Outlines>(worker)))).flat());
    const rests = listRests(outlines);
    const found = workers.map((worker, index) => {
      const own = new Set(shares[index]!.map(({ uri }) => uri));
      const wanted = new Set([...own].flatMap((uri) => rests.get(uri)!));
      worker.postMessage(logs.filter(({ uri }) => wanted.has(uri) && !own.has(uri)));
      return receive<Found>(worker);
    });
    return new Map((await Promise.all(found)).flat());
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}

/** The next message of a thread; rejects if it ends without one. */
function receive<T>(worker: Worker): Promise<T> {
  return new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
  });
}

/** Cuts the logs, in order of path, into shares of about as much text: files of one folder are mostly of one athlete. */
export function shareOut(logs: readonly Log[], count: number): readonly (readonly Log[])[] {
  const whole = logs.reduce((sum, { text }) => sum + text.length, 0);
  const shares = Array.from({ length: count }, (): Log[] => []);
  let before = 0;
  for (const { uri, text } of logs) {
    const middle = before + text.length / 2;
    shares[Math.min(count - 1, Math.floor((middle / Math.max(1, whole)) * count))]!.push({ uri, text });
    before += text.length;
  }
  return shares;
}

/** The other end of {@link checkInThreads}, in a thread of its own. */
export function serveShare(): void {
  const port = parentPort!;
  const { logs, today } = workerData as Share;
  const own = logs.map(({ uri }) => uri);
  const read = new PartlyRead(logs);
  port.postMessage(own.map((uri) => [uri, read.outline(uri)]) satisfies Outlines);
  port.once('message', (others: readonly Log[]) => {
    read.add(others);
    const found: Found = own.map((uri) => [uri, read.check(uri, today)]);
    port.postMessage(found);
  });
}
