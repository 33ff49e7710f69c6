/** The blocks of a plan's day as they stand in one week: its cells, its number of sets and rounds, its rests. */

import { countRounds } from '../measures/expand-sets.ts';
import type { Block, MovementLine, PlanEntry } from '../model/entry.ts';
import type { Cell, SetGroup } from '../model/quantity.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import { LIMITS } from '../vocabulary/limits.ts';
import { type LineSteps, takeSteps } from './line-steps.ts';
import { moveSet } from './move-amount.ts';
import type { PlanTurn } from './plan-calendar.ts';
import { kindOf } from './step-kinds.ts';
import { takeWeek } from './take-week.ts';
import { takeLineRest, takeRestSteps } from './week-rests.ts';
import { fitToRounds, takeRoundSteps } from './week-rounds.ts';

/** A line with the sets of one week; steps have moved its amounts, not yet its loads. */
export interface WeekLine {
  /** As the plan writes it, with all its cells. */
  readonly source: MovementLine;
  readonly line: MovementLine;
  readonly steps: LineSteps;
}

export interface WeekBlock {
  readonly block: Block;
  readonly lines: readonly WeekLine[];
}

export function takeTurn(plan: PlanEntry, turn: PlanTurn, toKey: (name: string) => string): WeekBlock[] {
  const sources = turn.day.blocks.flatMap((block) => block.lines);
  return takeWeek(turn.day, turn.week, toKey)
    .filter((block) => block.lines.length > 0)
    .map((written): WeekBlock => {
      const share = BLOCK_KINDS[written.kind].working ? turn.deload?.sets : undefined;
      const stepped = takeRestSteps(plan, takeRoundSteps(plan, written, turn), turn);
      const { roundStep: _step, ...block } = shortenBlock(stepped, share);
      const lines = written.lines.map((line) => {
        const source = sources.find(({ span }) => span.line === line.span.line)!;
        return takeLine(plan, turn, { written, stepped, shortened: block }, source, share);
      });
      return { block: { ...block, lines: lines.map(({ line }) => line), restSteps: [] }, lines };
    });
}

/** A block as it is written, with that week's rounds and rests, and what a deload leaves of it. */
interface BlockOfWeek {
  readonly written: Block;
  readonly stepped: Block;
  readonly shortened: Block;
}

function takeLine(
  plan: PlanEntry,
  turn: PlanTurn,
  { written, stepped: block, shortened }: BlockOfWeek,
  source: MovementLine,
  share: number | undefined,
): WeekLine {
  const cellIndex = source.week === undefined ? (turn.week - 1) % Math.max(1, source.cells.length) : 0;
  const cell = source.cells[cellIndex];
  const steps: LineSteps =
    source.week === undefined ? takeSteps(plan, source, cellIndex, turn) : { taken: [], eachRound: [] };
  const hasRounds = countRounds(written) !== undefined;
  const stepped = hasRounds
    ? fitToRounds(cell?.sets ?? [], written, block)
    : addSets(cell?.sets ?? [], steps);
  const moved = stepped.map((group) => moveSet(group, steps.taken));
  const kept =
    share === undefined || source.purpose === 'warmup' ? moved : lighten(moved, block, shortened, share);
  const modifiers = [...(cell?.modifiers ?? []), ...source.modifiers].filter(({ kind }) => kind !== 'stall');
  const weekCell: Cell = { sets: kept, modifiers: [], span: cell?.span ?? source.span };
  return {
    source,
    steps,
    line: {
      ...source,
      cells: cell ? [weekCell] : [],
      modifiers: takeLineRest(plan, turn, written, source, modifiers),
    },
  };
}

/** `+1 set each week` goes to the last group of sets, which never falls below one. */
function addSets(groups: readonly SetGroup[], { taken }: LineSteps): readonly SetGroup[] {
  const last = groups.at(-1);
  if (!last) return groups;
  const written = groups.reduce((sum, { count }) => sum + count, 0);
  let total = written;
  for (const { step, times } of taken) {
    if (kindOf(step) !== 'sets') continue;
    const next = total + step.sign * step.amount * times;
    if (step.bound === undefined) total = next;
    else
      total =
        step.sign > 0
          ? Math.max(total, Math.min(next, step.bound))
          : Math.min(total, Math.max(next, step.bound));
  }
  if (total === written) return groups;
  const count = Math.min(LIMITS.sets.high, Math.max(1, last.count + Math.round(total - written)));
  return [...groups.slice(0, -1), { ...last, count, counted: true }];
}

/** A deload's sets: a share of all of a line's, rounded up, never below one; the first ones stay. */
function lighten(
  groups: readonly SetGroup[],
  written: Block,
  block: Block,
  share: number,
): readonly SetGroup[] {
  const total = groups.reduce((sum, { count }) => sum + count, 0);
  const rounds = countRounds(written);
  // In rounds one written set stands for each; where each is written, those of the rounds left stay.
  if (rounds !== undefined && total === 1) return groups;
  const left =
    rounds === undefined
      ? takeShare(total, share)
      : Math.max(1, Math.round((total * (countRounds(block) ?? rounds)) / rounds));
  return keepFirst(groups, left);
}

export function takeShare(count: number, percent: number): number {
  return Math.max(1, Math.ceil((count * percent) / 100));
}

function keepFirst(groups: readonly SetGroup[], sets: number): SetGroup[] {
  let left = sets;
  return groups.flatMap((group): SetGroup[] => {
    const count = Math.min(left, group.count);
    left -= count;
    return count > 0 ? [{ ...group, count }] : [];
  });
}

/** In a deload blocks with rounds have fewer of them; a window (`amrap 10:00`) stays. */
function shortenBlock(block: Block, share: number | undefined): Block {
  if (share === undefined) return block;
  const { rounds, every, intervals } = block;
  return {
    ...block,
    ...(rounds !== undefined && { rounds: takeShare(rounds, share) }),
    ...(every?.total !== undefined && {
      every: {
        ...every,
        total: every.interval * takeShare(Math.floor(every.total / every.interval), share),
      },
    }),
    ...(intervals?.count !== undefined && {
      intervals: { ...intervals, count: takeShare(intervals.count, share) },
    }),
  };
}
