/** What was done of a plan's day, block by block and line by line: sets, reps, kilograms and load beside those planned. */
import { findSlotOf } from '../measures/adherence.ts';
import { isWorking, type SetWork } from '../measures/block-work.ts';
import { findCell } from '../measures/expand-sets.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { findSeriesKey } from '../measures/series-sets.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { DoneSlot } from '../measures/week-adherence.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { findAsked } from './asked-memory.ts';
import { type Sums, sumSets } from './asked-work.ts';
import { findCourse, findTurn } from './plan-calendar.ts';
import { openContext } from './plan-totals.ts';

export type { Sums } from './asked-work.ts';

/** A line of the plan's day. */
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
  const context = openContext(works, athlete, on);
  const toKey = (name: string): string => findSeriesKey(practice, name);
  const waiting = records.flatMap((record) => listDone(works.of(record).blocks, record.index, toKey));
  return findAsked(works, entry, turn, { athlete, on, formula }).map(({ block, lines }) => ({
    block,
    lines: lines.map(({ line, key, isLast, low, high }): DoneLine => {
      // A movement that comes twice is taken line by line, in order; what is left over belongs to its last line.
      const found = waiting.filter((each) => each.for === key);
      const taken = isLast ? found : found.slice(0, 1);
      for (const each of taken) waiting.splice(waiting.indexOf(each), 1);
      const pain = taken.map((each) => each.pain).find((each) => each !== undefined);
      const done = sumSets(
        taken.flatMap(({ sets }) => sets),
        context,
      );
      return {
        name: line.name.text,
        isTest: line.purpose === 'test',
        asked: { low, high: isOpenEnded(line) ? raise(high, done) : high },
        done,
        instead: taken.flatMap(({ name, isInstead }) => (isInstead ? [name] : [])),
        ...(pain !== undefined && { pain }),
      };
    }),
  }));
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
