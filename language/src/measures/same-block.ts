import type { Block } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';

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
  if (known?.version === practice.definitionsVersion) return known.identity;
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
  identities.set(block, { version: practice.definitionsVersion, identity });
  return identity;
}

/** A movement with its settings: a box of another height is another exercise. */
function identifyLine(practice: Practice, line: Block['lines'][number]): string {
  const key = practice.findMovement(line.name.text)?.key ?? line.name.text.toLowerCase();
  const settings = [...line.modifiers, ...line.cells.flatMap((cell) => cell.modifiers)].flatMap((modifier) =>
    modifier.kind === 'setting' ? [modifier.text.toLowerCase()] : [],
  );
  return [key, ...new Set(settings)].join(', ');
}

export interface EarlierBlock {
  readonly record: SessionRecord;
  readonly block: Block;
}

/**
 * The same block of the same athlete, the last time before a session; else, where one movement changed, the last that
 * differs by it, and by which.
 */
export function findLastSameBlock(
  practice: Practice,
  record: SessionRecord,
  block: Block,
): { same?: EarlierBlock; changed?: EarlierBlock & { readonly now: string; readonly before: string } } {
  if (block.implicit || block.lines.length === 0) return {};
  const identity = identifyBlock(practice, block);
  const records = practice.sessionsOf(record.athlete);
  let changed: ReturnType<typeof findLastSameBlock>['changed'];
  for (let index = practice.indexOf(record) - 1; index >= 0; index--) {
    const earlier = records[index]!;
    for (const other of earlier.entry.blocks) {
      if (other.kind !== block.kind || other.implicit) continue;
      const before = identifyBlock(practice, other);
      if (before.key === identity.key) return { same: { record: earlier, block: other } };
      changed ??= describeChange(identity, before, earlier, other);
    }
  }
  return changed ? { changed } : {};
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
