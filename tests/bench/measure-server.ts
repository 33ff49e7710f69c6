import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { compare, type Findings, type Growth, megabytes, type Plan, type Row } from './bench.ts';
import { type Practice, preparePractice } from './generate-practice.ts';
import { listKeystrokes } from './keystrokes.ts';
import { benchFolder } from './paths.ts';
import { measurePlainLangium } from './plain-langium.ts';
import { readResidentBytes, wait } from './processes.ts';
import { createRandom } from './random.ts';
import { positionAt, ServerClient } from './server-client.ts';
import { findMedian, findQuantile } from './statistics.ts';

/** A person types at this pace, with pauses now and then: what the server does meanwhile counts. */
const PACE_IN_MS = [60, 240] as const;
/** Edits of a definition are followed by work in the background; a person does not make them in a burst. */
const EDIT_PACE_IN_MS = [300, 600] as const;
const P95 = 0.95;
/** The server gives memory back when it has had nothing to do for some seconds. */
const REST_IN_MS = 6_000;
/** By then Node has written what it compiled. */
const COMPILED_CODE_KEPT_AFTER_MS = 32_000;

/** What a server on one practice showed; times in milliseconds. */
interface ServerTimes {
  readonly bytes: number;
  /** From starting the process to the first lenses of a file opened at once. */
  readonly firstLens: readonly number[];
  /** From starting the process to its answer to `initialize`, of which the first lens is a part. */
  readonly started: readonly number[];
  /** Resident memory with all files closed and nothing left to do. */
  readonly resident: number | undefined;
  readonly keystrokes: readonly number[];
  readonly definitionEdits: readonly number[];
  /** None where the server completes nothing. */
  readonly completions: readonly number[];
}

/** The language server on practices of several sizes, beside plain Langium on the usual one. */
export async function measureServer(plan: Plan): Promise<Findings> {
  const all: ServerTimes[] = [];
  for (const bytes of plan.sizes) all.push(await measureSize(preparePractice(bytes), plan));
  const empty = await measureEmpty(plan);
  const practice = preparePractice(plan.usual);
  const path = chooseLog(practice);
  const plain = await measurePlainLangium({ practice, path, keystrokes: Math.min(20, plan.keystrokes) });
  const usual = all.find(({ bytes }) => bytes === practice.bytes)!;
  const growth = (what: string, pick: (times: ServerTimes) => number): Growth => ({
    what,
    points: all.map((times) => [times.bytes, pick(times)]),
  });
  return {
    rows: [
      ...describeKeystrokes(usual, all, plain.keystrokes, plan),
      describeDefinitionEdits(usual, plan),
      ...describeFirstLens(usual, plan),
      describeMemory(usual, empty, plan),
      describeCompletions(usual),
      { what: `plain Langium: first build of ${megabytes(plan.usual)}`, samples: [plain.build], unit: 'ms' },
    ],
    growth: [
      growth('keystroke to fresh lenses, p95', ({ keystrokes }) => findQuantile(keystrokes, P95)),
      growth('edit of a definition to fresh lenses, p95', ({ definitionEdits }) =>
        findQuantile(definitionEdits, P95),
      ),
      growth('first lens, cold', ({ firstLens }) => findMedian(firstLens)),
      ...(empty === undefined
        ? []
        : [growth('resident memory over an empty server', ({ resident }) => resident! - empty)]),
      growth('completion, p95', ({ completions }) =>
        completions.length > 0 ? findQuantile(completions, P95) : 0,
      ),
    ],
  };
}

/** Keystrokes in any one file, for the comparison of large files too. */
export async function measureKeystrokes(
  client: ServerClient,
  path: string,
  count: number,
): Promise<number[]> {
  const random = createRandom(3);
  const times: number[] = [];
  let before = new Map<number, string>();
  for (const { offset, line, removed, typed } of listKeystrokes(client.text(path), count, random)) {
    if (typed !== '') before = new Map([[line, String(await client.lenses(path, line))]]);
    await wait(random.integer(...PACE_IN_MS));
    const send = client.prepareEdit(path, offset, removed, typed);
    const start = performance.now();
    await send();
    const lenses = String(await client.lenses(path, line));
    times.push(performance.now() - start);
    if (lenses === before.get(line)) throw new Error(`${path}:${line + 1}: the lenses are not fresh`);
    before.set(line, lenses);
  }
  return times;
}

async function measureSize(practice: Practice, plan: Plan): Promise<ServerTimes> {
  const path = chooseLog(practice);
  // First the long run, after which Node has what it compiled of the server, as after any day's work.
  const atWork = await measureAtWork(practice, path, plan);
  const firstLens: number[] = [];
  const started: number[] = [];
  for (let run = 0; run < plan.runs; run++) {
    const client = await ServerClient.start(practice.folder);
    started.push(performance.now() - client.startedAt);
    await client.open(path);
    const lenses = await client.lenses(path, 0);
    firstLens.push(performance.now() - client.startedAt);
    await client.stop();
    if (lenses.length === 0) throw new Error('The first answer has no lens');
  }
  return { bytes: practice.bytes, firstLens, started, ...atWork };
}

/** One server on one practice, from reading it to edits of a definition. */
async function measureAtWork(
  practice: Practice,
  path: string,
  plan: Plan,
): Promise<Omit<ServerTimes, 'bytes' | 'firstLens' | 'started'>> {
  const client = await ServerClient.start(practice.folder);
  const resident = await measureResident(client, plan);
  await client.open(path);
  const keystrokes = await measureKeystrokes(client, path, plan.keystrokes);
  const completions = client.capabilities.completionProvider
    ? await measureCompletions(client, path, plan.keystrokes)
    : [];
  const definitionEdits = await measureDefinitionEdits(client, practice, path, plan.keystrokes);
  if (!plan.smoke)
    await wait(Math.max(0, client.startedAt + COMPILED_CODE_KEPT_AFTER_MS - performance.now()));
  await client.stop();
  return { resident, keystrokes, definitionEdits, completions };
}

/** Once all files are read, nothing is left to do, and memory was given back. */
async function measureResident(client: ServerClient, { smoke }: Plan): Promise<number | undefined> {
  await client.settle();
  if (!smoke) await wait(REST_IN_MS);
  return readResidentBytes(client.pid);
}

/** Other percentages of body mass for a movement that every log holds, each followed by the lenses of an open log. */
async function measureDefinitionEdits(
  client: ServerClient,
  practice: Practice,
  path: string,
  count: number,
): Promise<number[]> {
  await client.open(practice.movements);
  const random = createRandom(4);
  const line = positionAt(client.text(path), client.text(path).indexOf('Bell-Rope Row')).line;
  const offset = client.text(practice.movements).indexOf('bodyweight 60%') + 'bodyweight 6'.length;
  const times: number[] = [];
  let before = String(await client.lenses(path, line));
  for (let edit = 1; edit <= Math.max(3, count / 4); edit++) {
    await wait(random.integer(...EDIT_PACE_IN_MS));
    const send = client.prepareEdit(practice.movements, offset, 1, String(edit % 10));
    const start = performance.now();
    await send();
    const lenses = String(await client.lenses(path, line));
    times.push(performance.now() - start);
    if (lenses === before) throw new Error('The lenses are those of the old definition');
    before = lenses;
  }
  return times;
}

/** Completion at the ends of words and of lines all over a file. */
export async function measureCompletions(
  client: ServerClient,
  path: string,
  count: number,
): Promise<number[]> {
  const random = createRandom(6);
  const text = client.text(path);
  const times: number[] = [];
  for (let asked = 0; asked < count; asked++) {
    const from = random.integer(0, text.length - 200);
    const position = positionAt(text, from + text.slice(from).search(/[ \n]/));
    const start = performance.now();
    await client.countCompletions(path, position);
    times.push(performance.now() - start);
  }
  return times;
}

async function measureEmpty(plan: Plan): Promise<number | undefined> {
  const folder = join(benchFolder, 'empty');
  mkdirSync(folder, { recursive: true });
  const client = await ServerClient.start(folder);
  const resident = await measureResident(client, plan);
  await client.stop();
  return resident;
}

/** A log of the usual size in the middle of somebody's history, with sets to type into. */
function chooseLog({ logs }: Practice): string {
  return logs[Math.floor(logs.length / 2)]!;
}

function describeKeystrokes(
  usual: ServerTimes,
  all: readonly ServerTimes[],
  plain: readonly number[],
  { usual: bytes }: Plan,
): Row[] {
  const own = usual.keystrokes;
  const p95 = findQuantile(own, P95);
  const [smallest, largest] = [all[0]!, all.at(-1)!];
  return [
    {
      what: `keystroke to fresh lenses, 20 KB file in ${megabytes(bytes)}`,
      samples: own,
      unit: 'ms',
      judged: milliseconds(p95),
      target: 5,
    },
    {
      what: 'the same against plain Langium in the same file (its update alone, without lenses or protocol)',
      samples: plain,
      unit: 'ms',
      judged: compare(p95, findQuantile(plain, P95), 'plain Langium'),
      target: 0.1,
    },
    {
      what: `the same in ${megabytes(largest.bytes)} against ${megabytes(smallest.bytes)}`,
      samples: largest.keystrokes,
      unit: 'ms',
      judged: compare(
        findQuantile(largest.keystrokes, P95),
        findQuantile(smallest.keystrokes, P95),
        megabytes(smallest.bytes),
      ),
      target: 1.5,
    },
  ];
}

function describeDefinitionEdits({ definitionEdits }: ServerTimes, { usual }: Plan): Row {
  return {
    what: `edit of a definition that every file uses to fresh lenses of the open file, ${megabytes(usual)}`,
    samples: definitionEdits,
    unit: 'ms',
    judged: milliseconds(findQuantile(definitionEdits, P95)),
    target: 20,
  };
}

function describeFirstLens({ firstLens, started }: ServerTimes, { usual }: Plan): Row[] {
  return [
    {
      what: `first lens of an opened file, cold, ${megabytes(usual)}, from starting the process`,
      samples: firstLens,
      unit: 'ms',
      judged: { value: findMedian(firstLens), words: `${Math.round(findMedian(firstLens))} ms median` },
      target: 300,
    },
    { what: 'of which: the process answers at all', samples: started, unit: 'ms' },
  ];
}

function describeMemory({ resident, bytes }: ServerTimes, empty: number | undefined, { usual }: Plan): Row {
  const what = `resident memory for each MB of closed text, over an empty server, ${megabytes(usual)}`;
  const row = { what, unit: 'MB/MB', target: 12, stretch: 6 } as const;
  if (resident === undefined || empty === undefined)
    return { ...row, samples: [], note: 'there is no /proc' };
  const value = (resident - empty) / bytes;
  const note = `${megabytes(resident)} in all, ${megabytes(empty)} of them empty`;
  return { ...row, samples: [value], judged: { value, words: `${value.toFixed(1)} MB per MB` }, note };
}

function describeCompletions({ completions }: ServerTimes): Row {
  const row = { what: 'completion at any place of a 20 KB file', unit: 'ms', target: 10 } as const;
  if (completions.length === 0) return { ...row, samples: [], note: 'not there yet' };
  return { ...row, samples: completions, judged: milliseconds(findQuantile(completions, P95)) };
}

export function milliseconds(p95: number): NonNullable<Row['judged']> {
  return { value: p95, words: `${p95 < 10 ? p95.toFixed(1) : Math.round(p95)} ms p95` };
}
