import { fromDayNumber, type IsoDate } from '../calendar/iso-date.ts';
import type { SeriesPoint, TimeSeries } from '../measures/series.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import { printDay } from './words.ts';

const BARS = ['▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'] as const;
/** Equal values stand at half height: there is neither a rise nor a fall to see. */
const LEVEL = BARS[3];

/** `▁▄█` for 10, 20, 30: the lowest value has the lowest bar and the highest the highest, whatever they are. */
export function drawSparkline(values: readonly number[]): string {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (!(high > low)) return LEVEL.repeat(values.length);
  return values.map((value) => BARS[Math.round(((value - low) / (high - low)) * (BARS.length - 1))]).join('');
}

/** So many of the last points are shown. */
const MOST_POINTS = 8;

/**
 * `▁▄█ 96, 98.5, 102 kg (5 Oct to 12 Nov)`: the last points of a series, with their numbers beside the bars, since
 * shape alone says nothing to many. Lower bounds are left out: where two of them differ, nothing rose or fell for
 * certain. Undefined below two points.
 */
export function describeSeries(
  { points, unit }: Pick<TimeSeries, 'points'> & { readonly unit: string },
  shown: MassUnit,
  today: IsoDate,
): string | undefined {
  const last = points.filter(({ bound }) => bound === 'exact').slice(-MOST_POINTS);
  const [first, end] = [last[0], last.at(-1)];
  if (!first || !end || last.length < 2) return undefined;
  const isMass = unit.startsWith('kg');
  const values = last.map(({ value }) => (isMass ? fromGrams(value * 1000, shown) : value));
  const shownUnit = isMass ? unit.replace('kg', shown) : unit;
  const days = `${toText(first, today)} to ${toText(end, today)}`;
  return `${drawSparkline(values)} ${printAlike(values).join(', ')} ${shownUnit} (${days})`;
}

/** A decimal where the numbers are small enough for it to matter. */
function printAlike(values: readonly number[]): string[] {
  const decimals = Math.max(...values.map(Math.abs)) < 200 ? 1 : 0;
  return values.map((value) => printNumber(value, decimals));
}

function toText({ day }: SeriesPoint, today: IsoDate): string {
  return printDay(fromDayNumber(day), today);
}
