/** What was done of a plan's day, block by block and line by line: sets, reps, kilograms and load beside those planned. */
import { findSlotOf } from '../measures/adherence.ts';
import { computeBlockWork, isWorking, type SetWork, type WorkContext } from '../measures/block-work.ts';
import { findCell } from '../measures/expand-sets.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { nameMovement, readExternal } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { DoneSlot } from '../measures/week-adherence.ts';
import { addWork, NO_WORK, volumeOf, type Work } from '../measures/work.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { listModifiers } from './line-steps.ts';
import { findCourse, findTurn } from './plan-calendar.ts';
import { openContext, takeEnds } from './plan-totals.ts';
import { projectTurn } from './project-plan.ts';

/** Sums of one side; a number that is not known, or that nobody asked for, is not there. */
export interface Sums {
  readonly sets: number;
  readonly reps: number;
  /** Share of body mass included; undefined where something has no known kilograms. */
  readonly kilograms?: number;
  /** Grams of the heaviest load that stands on one implement, and was lifted. */
  readonly grams?: number;
  /** A set that nobody counted is among them, so there were more reps. */
  readonly isAtLeast?: boolean;
}

/**
 * A line of the plan's day. Ranges of the plan are asked for from their lower to their upper end. Where the load moves with
 * what was done (double progression, a stall rule), neither a load nor kilograms are asked for.
 */
export interface DoneLine {
  readonly name: string;
  /** A max is found by as many attempts as it takes. */
  readonly isTest: boolean;
  readonly asked: { readonly low: Sums; readonly high: Sums };
  readonly done: Sums;
  /** Movements done instead of it. */
  readonly instead: readonly string[];
  /** `pain 4 left knee`. */
  readonly pain?: string;
}

export interface DoneBlock {
  /** As the plan writes it. */
  readonly block: Block;
  readonly lines: readonly DoneLine[];
}

/** Undefined where the session names no day of a plan. */
export function compareDone(
  works: SessionWorks,
  record: SessionRecord,
  formula: OneRepMaxFormula,
): DoneBlock[] | undefined {
  const slot = findSlotOf(works.practice, record);
  const { athlete, day } = record;
  return slot && compareSlot(works, { slot, records: [record] }, { athlete, day, formula });
}

/** Sessions of one plan day, which add up, against that day; `day` counts where there is none and the plan has no dates. */
export function compareSlot(
  works: SessionWorks,
  { slot, records }: DoneSlot,
  { athlete, day, formula }: { athlete: string; day: number; formula: OneRepMaxFormula },
): DoneBlock[] {
  const { practice } = works;
  const { entry } = slot.plan;
  const turn = findTurn(entry, slot.week, slot.day, findCourse(practice, entry).start, slot.nth);
  const on = records[0]?.day ?? turn.date ?? day;
  const projected = projectTurn(works, entry, turn, { athlete, today: on, unit: 'kg', formula, on });
  const context = openContext(works, athlete, on);
  const toKey = (name: string): string => nameMovement(practice.findMovement(name), name).key;
  const waiting = records.flatMap((record) => listDone(works.of(record).blocks, record.index, toKey));
  return projected.blocks.flatMap(({ block, lines: projectedLines }): DoneBlock[] => {
    const ends = (['low', 'high'] as const).map((end) => listAsked(block, end, context));
    const lines = projectedLines.flatMap(({ line, source }): DoneLine[] => {
      const [low, high] = ends.map((sets): Sums => {
        const ofLine = sets.filter(({ set }) => set.line.span.line === line.span.line);
        const asked = sumSets(ofLine, context);
        return followsWhatWasDone(source) ? { sets: asked.sets, reps: asked.reps } : asked;
      });
      if (low!.sets === 0) return [];
      const key = toKey(line.name.text);
      // A movement that comes twice is taken line by line, in order; what is left over belongs to its last line.
      const found = waiting.filter((each) => each.for === key);
      const isLast = countLater(projected.blocks, line, key, toKey) === 0;
      const taken = isLast ? found : found.slice(0, 1);
      for (const each of taken) waiting.splice(waiting.indexOf(each), 1);
      const pain = taken.map((each) => each.pain).find((each) => each !== undefined);
      const done = sumSets(
        taken.flatMap(({ sets }) => sets),
        context,
      );
      return [
        {
          name: line.name.text,
          isTest: line.purpose === 'test',
          asked: { low: low!, high: isOpenEnded(line) ? raise(high!, done) : high! },
          done,
          instead: taken.flatMap(({ name, isInstead }) => (isInstead ? [name] : [])),
          ...(pain !== undefined && { pain }),
        },
      ];
    });
    return lines.length > 0 ? [{ block, lines }] : [];
  });
}

/** `5+`: more of them is as planned. */
function isOpenEnded({ cells }: MovementLine): boolean {
  return cells.some(({ sets }) => sets.some(({ amount }) => amount?.kind === 'at-least'));
}

function raise(asked: Sums, done: Sums): Sums {
  const isWeighed = asked.kilograms !== undefined && done.kilograms !== undefined;
  return {
    ...asked,
    reps: Math.max(asked.reps, done.reps),
    ...(isWeighed && { kilograms: Math.max(asked.kilograms, done.kilograms) }),
  };
}

function followsWhatWasDone(source: MovementLine): boolean {
  return listModifiers(source).some(
    (modifier) =>
      modifier.kind === 'stall' || (modifier.kind === 'step' && modifier.whenFull && !modifier.each),
  );
}

interface Waiting {
  /** Key of the movement that it counts for. */
  readonly for: string;
  readonly name: string;
  readonly isInstead: boolean;
  readonly sets: readonly SetWork[];
  readonly pain: string | undefined;
}

function listDone(
  blocks: readonly { readonly block: Block; readonly sets: readonly SetWork[] }[],
  index: number,
  toKey: (name: string) => string,
): Waiting[] {
  return blocks.flatMap(({ block, sets }) =>
    block.lines.flatMap((line): Waiting[] => {
      const own = sets.filter(({ set }) => set.line === line && isWorking(set, block));
      if (own.length === 0) return [];
      const modifiers = [...(findCell(line, index)?.modifiers ?? []), ...line.modifiers];
      const replaced = modifiers.find((modifier) => modifier.kind === 'instead')?.of.text;
      const pain = modifiers.find((modifier) => modifier.kind === 'pain');
      return [
        {
          for: toKey(replaced ?? line.name.text),
          name: line.name.text,
          isInstead: replaced !== undefined,
          sets: own,
          pain: pain && ['pain', pain.score, pain.where].filter((part) => part !== undefined).join(' '),
        },
      ];
    }),
  );
}

function countLater(
  blocks: readonly { readonly block: Block }[],
  line: MovementLine,
  key: string,
  toKey: (name: string) => string,
): number {
  const lines = blocks.flatMap(({ block }) => block.lines).filter(({ purpose }) => purpose !== 'warmup');
  return lines.slice(lines.indexOf(line) + 1).filter(({ name }) => toKey(name.text) === key).length;
}

/** The working sets of all of a block's lines, so that lines which take turns share the rounds. */
function listAsked(block: Block, end: 'low' | 'high', context: WorkContext): SetWork[] {
  const { sets } = computeBlockWork(takeEnds(block, end), { index: 0 }, context);
  return sets.filter(({ set }) => isWorking(set, block));
}

function sumSets(sets: readonly SetWork[], { findMovement }: WorkContext): Sums {
  const total: Work = addWork([NO_WORK, ...sets.map(({ work }) => work)]);
  const loads = sets.flatMap(({ set, work }) =>
    work.sets > 0 && !(set.amount?.kind === 'attempt' && set.amount.made === 0)
      ? (readExternal(set.group.load, findMovement(set.line.name.text)) ?? [])
      : [],
  );
  const kilograms = volumeOf(total);
  const isWeighed = kilograms > 0 && !total.atLeast && total.omitted.length === 0;
  return {
    sets: total.sets,
    reps: total.reps,
    ...((isWeighed || total.sets === 0) && { kilograms }),
    ...(loads.length > 0 && { grams: Math.max(...loads) }),
    ...(sets.some(({ set: { amount } }) => !amount || amount.kind === 'unrecorded') && { isAtLeast: true }),
  };
}
