import type { Block, ExerciseEntry } from '../model/entry.ts';
import type { SetGroup } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import { countRounds, type ExpandedSet, expandLine } from './expand-sets.ts';
import { computeSetWork } from './set-work.ts';
import { addWork, NO_WORK, type Work } from './work.ts';

/** What the work of a session rests on beside the session itself. */
export interface WorkContext {
  readonly findMovement: (name: string) => Movement | undefined;
  /** Grams, as of the last weigh-in. */
  readonly bodyMass: number | undefined;
  readonly sex?: 'female' | 'male';
}

export interface SetWork {
  readonly set: ExpandedSet;
  readonly work: Work;
}

/** One athlete's work in one block. Warm-up sets and blocks are done but enter no working sum. */
export interface BlockWork {
  readonly block: Block;
  readonly sets: readonly SetWork[];
  /** Working sums. */
  readonly total: Work;
  /** Working sums of each round, where the block has rounds. */
  readonly rounds: readonly Work[];
  readonly roundCount: number | undefined;
}

export function isWorking(set: ExpandedSet, block: Block): boolean {
  return BLOCK_KINDS[block.kind].working && set.line.purpose !== 'warmup';
}

interface KnownSet {
  readonly movement: ExerciseEntry | undefined;
  readonly blockKind: Block['kind'];
  readonly bodyMass: number | undefined;
  readonly sex: WorkContext['sex'];
  readonly work: Work;
}

const knownSets = new WeakMap<SetGroup, KnownSet>();

/** Written once, a set is done several times, and lines of the same text are the same fact in all sessions. */
function sumSet(
  set: ExpandedSet,
  movement: Movement | undefined,
  blockKind: Block['kind'],
  { bodyMass, sex }: WorkContext,
): Work {
  const { group } = set;
  const sum = (): Work => computeSetWork(set, { movement, blockKind, bodyMass, ...(sex && { sex }) });
  if (set.amount !== group.amount || set.unfinished) return sum();
  const known = knownSets.get(group);
  if (
    known?.movement === movement?.entry &&
    known?.blockKind === blockKind &&
    known.bodyMass === bodyMass &&
    known.sex === sex
  )
    return known.work;
  const work = sum();
  knownSets.set(group, { movement: movement?.entry, blockKind, bodyMass, sex, work });
  return work;
}

export function computeBlockWork(
  block: Block,
  record: Pick<SessionRecord, 'index'>,
  context: WorkContext,
): BlockWork {
  const sets = block.lines.flatMap((line, index): SetWork[] => {
    const movement = context.findMovement(line.name.text);
    return expandLine(block, index, record.index).map((set) => ({
      set,
      work: sumSet(set, movement, block.kind, context),
    }));
  });
  const working = sets.filter(({ set }) => isWorking(set, block));
  const roundCount = countRounds(block);
  const byRound: Work[][] = [];
  for (const { set, work } of working) {
    if (set.round === undefined) continue;
    byRound[set.round] ??= [];
    byRound[set.round]!.push(work);
  }
  const broken = block.lines
    .filter((line) => line.broken)
    .map(
      (line): Work => ({
        ...NO_WORK,
        atLeast: true,
        omitted: [{ what: line.name.text, why: 'part of the line could not be read' }],
      }),
    );
  const unknownRounds: Work[] =
    block.kind === 'amrap' && roundCount === undefined && block.lines.length > 0
      ? [
          {
            ...NO_WORK,
            atLeast: true,
            omitted: [{ what: 'amrap', why: 'its rounds are not written (done 4 rounds + 5)' }],
          },
        ]
      : [];
  const total = addWork([NO_WORK, ...working.map(({ work }) => work), ...broken, ...unknownRounds]);
  return {
    block,
    sets,
    total,
    rounds: Array.from(byRound, (works) => (works ? addWork(works) : NO_WORK)),
    roundCount,
  };
}
