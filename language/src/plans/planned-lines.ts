import { findSeriesKey } from '../measures/series-sets.ts';
import type { Block, MovementLine, SessionEntry } from '../model/entry.ts';
import type { Practice } from '../practice/practice.ts';
import { findTurn } from './plan-calendar.ts';
import { takeTurn } from './week-blocks.ts';

/** A line of the day that a session names, as it stands in that week. */
export interface PlannedLine {
  readonly block: Block;
  readonly line: MovementLine;
  /** As the plan writes it, with all its cells and steps. */
  readonly source: MovementLine;
  readonly isDeload: boolean;
}

/** What the plan asks of the day that a session names; nothing where it names none, or one that is not there. */
export function findPlannedLines(
  practice: Practice,
  { plan: asked }: Pick<SessionEntry, 'plan'>,
): readonly PlannedLine[] {
  const plan = asked && practice.findPlan(asked.name.text);
  const day = plan?.entry.days.find(({ number }) => number === asked?.day);
  if (!plan || !day) return [];
  const turn = findTurn(plan.entry, asked?.week ?? 1, day);
  const toKey = (name: string): string => findSeriesKey(practice, name);
  return takeTurn(plan.entry, turn, toKey).flatMap(({ block, lines }) =>
    lines.map(({ line, source }) => ({ block, line, source, isDeload: turn.deload !== undefined })),
  );
}
