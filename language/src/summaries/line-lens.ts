import { describeLine, findLastLine } from '../measures/compare-lines.ts';
import type { DayMax } from '../measures/day-max.ts';
import { toMovementKey } from '../measures/max-candidates.ts';
import { findRecordsIn, findRecordsOf } from '../measures/records.ts';
import type { SessionWork, SessionWorks } from '../measures/session-work.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { findPosition } from '../practice/session-list.ts';
import { printDistance } from '../units/distance.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber, printSigned } from '../units/number.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import type { Lens, LensOptions, LineHint } from './lens.ts';
import { areSumsKnown, LOADING } from './loading.ts';
import { printRecordReps } from './print-record.ts';
import { unitFor } from './session-lens.ts';
import { joinFacts, printDay } from './words.ts';

/** The day's maxes that have a lens. None where the clock ends the sets: a lens a line would tear a circuit apart. */
export function listShownMaxes(
  works: SessionWorks,
  work: SessionWork,
  { formula }: LensOptions,
): readonly DayMax[] {
  const quiet = new Set(
    work.record.entry.blocks
      .filter(({ kind }) => BLOCK_KINDS[kind].endedByClock)
      .flatMap(({ lines }) => lines),
  );
  return works.maxesOf(work, formula).filter((max) => !quiet.has(max.line));
}

/** `e1RM 102 kg (98 to 105 by formula) from set 1 · +2 since 10 Nov`, over the line that gave the day's estimate. */
export function describeMax(
  works: SessionWorks,
  work: SessionWork,
  max: DayMax,
  options: LensOptions,
): Omit<Lens, 'line'> {
  const unit = unitFor(works, work.record.athlete, options);
  const blocks = work.record.entry.blocks.filter(({ lines }) => lines.includes(max.line));
  if (max.added && !areSumsKnown(work, blocks, options))
    return { kind: 'line', text: LOADING, explain: () => [] };
  const since = options.complete ? describeSince(works, work.record, max, unit, options) : LOADING;
  const key = toMovementKey(max.series.key);
  const isRecord = options.complete && findRecordsIn(works, work, key, options.formula).maxes.includes(max);
  return {
    kind: 'line',
    text: joinFacts([printMax(max, unit), since, isRecord ? 'record' : undefined]),
    explain: () => [max.result],
  };
}

/** All of a session's, with the lines of their entry that they stand over. */
export function describeMaxes(
  works: SessionWorks,
  work: SessionWork,
  options: LensOptions,
): (Omit<Lens, 'line'> & { readonly entryLine: number })[] {
  return listShownMaxes(works, work, options).map((max) => ({
    entryLine: max.line.span.line,
    ...describeMax(works, work, max, options),
  }));
}

export function printMax(max: DayMax, unit: MassUnit): string {
  const { result, added, setNumber, series, heldAt } = max;
  const { low, high } = heldAt;
  const shown = (value: number): string => {
    // A load that was lifted, or failed, is known to the plate; an estimate is not.
    const isPlate = !result.spread || value === low || value === high;
    return printNumber(fromGrams(value * 1000, unit), isPlate ? 2 : Math.abs(value) < 30 ? 1 : 0);
  };
  const value = result.value!;
  const body = added ? `bw${value < 0 ? '-' : '+'}` : '';
  // The failed load itself is no estimate: the max is between it and what was lifted.
  if (isHeld(max))
    return `e1RM ${shown(result.spread!.low)} to ${shown(result.spread!.high)} ${unit}${added ? ' added' : ''}${series.perHand ? ' a hand' : ''}, lifted and failed, from set ${setNumber}`;
  const spread = result.spread
    ? ` (${shown(result.spread.low)} to ${shown(result.spread.high)} ${printBasis(heldAt)})`
    : '';
  const what = result.method === 'true-single' && result.bound === 'exact' ? '1RM' : 'e1RM';
  const lead = result.bound === 'at least' ? 'at least ' : '';
  const hand = series.perHand ? ' a hand' : '';
  const rough = result.remark ? `, ${result.remark}` : '';
  return `${what} ${lead}${body}${shown(added ? Math.abs(value) : value)} ${unit}${hand}${spread}${rough} from set ${setNumber}`;
}

/** What the ends of a range rest on. */
function printBasis({ low, high }: DayMax['heldAt']): string {
  if (low === undefined && high === undefined) return 'by formula';
  if (low === undefined) return 'by formula and what failed';
  return high === undefined ? 'by formula and what was lifted' : 'by what was lifted and what failed';
}

/** Held by a failed load: the max is somewhere under it, so no number can be held against another. */
function isHeld({ result }: DayMax): boolean {
  return result.method === 'failed-load';
}

/** Against the last day that has an estimate of the same series; a lower bound is compared with its like alone. */
function describeSince(
  works: SessionWorks,
  record: SessionRecord,
  max: DayMax,
  unit: MassUnit,
  options: LensOptions,
): string | undefined {
  if (isHeld(max)) return undefined;
  const records = works.practice.sessionsWith(record.athlete, toMovementKey(max.series.key));
  for (let index = findPosition(records, record) - 1; index >= 0; index--) {
    const earlier = records[index]!;
    const then = works.of(earlier);
    const before = works
      .maxesOf(then, options.formula)
      .find((candidate) => candidate.series.key === max.series.key);
    if (!before || before.result.bound !== max.result.bound || isHeld(before)) continue;
    const change = fromGrams((max.result.value! - before.result.value!) * 1000, unit);
    const decimals = Math.abs(max.result.value!) < 30 ? 1 : 0;
    const text = printSigned(change, decimals);
    const day = printDay(earlier.date, record.date);
    const weighed = max.added && then.bodyMass?.grams !== works.of(record).bodyMass?.grams;
    return `${text === '0' ? `same as ${day}` : `${text} since ${day}`}${weighed ? ', another weigh-in' : ''}`;
  }
  return undefined;
}

/**
 * `+2.5 kg since 10 Nov · record for 5 reps`: what changed since the movement was last done and what is better than ever,
 * at the end of each working line.
 */
export function describeHints(
  works: SessionWorks,
  work: SessionWork,
  options: LensOptions,
): (Omit<LineHint, 'line'> & { readonly entryLine: number })[] {
  if (!options.complete) return [];
  const { record } = work;
  const unit = unitFor(works, record.athlete, options);
  const records = findRecordsOf(works, work, options.formula).sets;
  const hints: (Omit<LineHint, 'line'> & { readonly entryLine: number })[] = [];
  for (const { block } of work.blocks) {
    if (block.kind === 'warmup' || block.kind === 'cooldown') continue;
    for (const line of block.lines) {
      const now = line.purpose === 'warmup' ? undefined : describeLine(block, line, record.index);
      const last = now && findLastLine(works.practice, record, block, line);
      const before = last && describeLine(last.block, last.line, last.record.index);
      const change = now && before && printLineChange(now, before, unit);
      const day = last && printDay(last.record.date, record.date);
      const since = change === 'same' ? `same as ${day}` : change && `${change} since ${day}`;
      const text = joinFacts([since, printRecordReps(records.filter((best) => best.line === line))]);
      if (text === '') continue;
      const { span } = line;
      hints.push({
        entryLine: span.line,
        column: span.end,
        text,
        tooltip: last
          ? `${line.name.text} was last done on ${last.record.date}`
          : `More than in any session of ${line.name.text} before`,
      });
    }
  }
  return hints;
}

type Facts = NonNullable<ReturnType<typeof describeLine>>;

/** The load that changed, else the reps (or time, distance); undefined where the two cannot be compared. */
function printLineChange(now: Facts, before: Facts, unit: MassUnit): string | undefined {
  if (now.measure !== before.measure) return undefined;
  const parts: string[] = [];
  if (now.top !== undefined && before.top !== undefined && now.top !== before.top) {
    parts.push(`${printSigned(fromGrams(now.top - before.top, unit), 2)} ${unit}`);
  }
  if (now.amount !== undefined && before.amount !== undefined && now.amount !== before.amount) {
    parts.push(printAmountChange(now.amount - before.amount, now.measure));
  }
  if (parts.length > 0) return parts.join(', ');
  return now.top !== undefined &&
    now.top === before.top &&
    now.amount !== undefined &&
    now.amount === before.amount
    ? 'same'
    : undefined;
}

function printAmountChange(change: number, measure: Facts['measure']): string {
  const sign = change > 0 ? '+' : '-';
  const size = Math.abs(change);
  switch (measure) {
    case 'reps':
      return `${sign}${printNumber(size)} rep${size === 1 ? '' : 's'}`;
    case 'seconds':
      return `${sign}${printNumber(size)} s`;
    case 'metres':
      return `${sign}${printDistance(size)}`;
    case 'calories':
      return `${sign}${printNumber(size)} cal`;
  }
}
