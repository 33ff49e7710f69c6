import type { Block } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { compareRecords, findPosition } from '../practice/session-list.ts';
import { findSeriesKey } from './series-sets.ts';

/** What makes two blocks the same: kind, passes, settings and set of movements; not letter, order, rounds, reps or loads. */
export interface BlockIdentity {
  readonly frame: string;
  /** Keys of the movements, sorted. */
  readonly movements: readonly string[];
  readonly key: string;
}

const identities = new WeakMap<Block, { version: number; identity: BlockIdentity }>();

export function identifyBlock(practice: Practice, block: Block): BlockIdentity {
  const known = identities.get(block);
  if (known?.version === practice.movementsVersion) return known.identity;
  const { kind, passes, every, window, intervals, alternating } = block;
  const frame = JSON.stringify([
    kind,
    passes,
    every,
    window,
    intervals && { ...intervals, count: undefined },
    alternating,
  ]);
  const names = block.lines
    .filter((line) => line.purpose !== 'warmup')
    .map((line) => identifyLine(practice, line));
  const movements = [...new Set(names)].sort();
  const identity = { frame, movements, key: `${frame} ${movements.join(' + ')}` };
  identities.set(block, { version: practice.movementsVersion, identity });
  return identity;
}

/** A movement with its settings: a box of another height is another exercise. */
function identifyLine(practice: Practice, line: Block['lines'][number]): string {
  const key = keyOfLine(practice, line);
  const settings = [...line.modifiers, ...line.cells.flatMap((cell) => cell.modifiers)].flatMap((modifier) =>
    modifier.kind === 'setting' ? [modifier.text.toLowerCase()] : [],
  );
  return [key, ...new Set(settings)].join(', ');
}

function keyOfLine(practice: Practice, { name }: Block['lines'][number]): string {
  return findSeriesKey(practice, name.text);
}

interface Found {
  readonly edition: number;
  readonly record: SessionRecord;
  readonly last: LastBlock;
}

/** What is said of a block and what that rests on both ask. */
const found = new WeakMap<Block, Found>();

export interface LastBlock {
  readonly same?: EarlierBlock;
  readonly changed?: EarlierBlock & { readonly now: string; readonly before: string };
}

export interface EarlierBlock {
  readonly record: SessionRecord;
  readonly block: Block;
}

/**
 * The same block of the same athlete, the last time before a session; else, where one movement changed, the last that
 * differs by it, and by which.
 */
export function findLastSameBlock(practice: Practice, record: SessionRecord, block: Block): LastBlock {
  const { edition } = practice;
  const known = found.get(block);
  if (known?.edition === edition && known.record === record) return known.last;
  const last = searchLastBlock(practice, record, block);
  found.set(block, { edition, record, last });
  return last;
}

function searchLastBlock(practice: Practice, record: SessionRecord, block: Block): LastBlock {
  if (block.implicit || block.lines.length === 0) return {};
  const identity = identifyBlock(practice, block);
  let changed: LastBlock['changed'];
  for (const earlier of listEarlier(practice, record, block)) {
    for (const other of earlier.entry.blocks) {
      if (other.kind !== block.kind || other.implicit) continue;
      const before = identifyBlock(practice, other);
      if (before.key === identity.key) return { same: { record: earlier, block: other } };
      changed ??= describeChange(identity, before, earlier, other);
    }
  }
  return changed ? { changed } : {};
}

/**
 * Sessions before one, the latest first, that may hold the block: where one movement of several changed at most, they
 * name one of the first two.
 */
function* listEarlier(practice: Practice, record: SessionRecord, block: Block): Iterable<SessionRecord> {
  const keys = new Set(
    block.lines.filter((line) => line.purpose !== 'warmup').map((line) => keyOfLine(practice, line)),
  );
  const lists = [...keys].slice(0, 2).map((key) => practice.sessionsWith(record.athlete, key));
  // A block of warm-up sets alone is the same as any other such block.
  if (lists.length === 0) lists.push(practice.sessionsOf(record.athlete));
  const at = lists.map((records) => findPosition(records, record) - 1);
  for (;;) {
    let latest: SessionRecord | undefined;
    for (const [index, records] of lists.entries()) {
      const next = records[at[index]!];
      if (next && (!latest || compareRecords(next, latest) > 0)) latest = next;
    }
    if (!latest) return;
    yield latest;
    for (const [index, records] of lists.entries()) if (records[at[index]!] === latest) at[index]!--;
  }
}

function describeChange(now: BlockIdentity, before: BlockIdentity, record: SessionRecord, block: Block) {
  if (
    now.frame !== before.frame ||
    now.movements.length !== before.movements.length ||
    now.movements.length < 2
  )
    return undefined;
  const added = now.movements.filter((name) => !before.movements.includes(name));
  const gone = before.movements.filter((name) => !now.movements.includes(name));
  return added.length === 1 && gone.length === 1
    ? { record, block, now: added[0]!, before: gone[0]! }
    : undefined;
}
