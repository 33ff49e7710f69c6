import { fromDayNumber, toDayNumber } from '../calendar/iso-date.ts';
import { findMaxHistory, type MaxKind, type ValidMax } from '../measures/max-history.ts';
import type { Result, Unit } from '../measures/result.ts';
import {
  computeBodyMassSeries,
  computeVolumeSeries,
  listDensitySeries,
  listMaxSeries,
  type SeriesPoint,
  type TimeSeries,
} from '../measures/series.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import {
  computeDaysSince,
  computeLoadRatio,
  computeLoadShape,
  computeWeekLoad,
} from '../measures/training-load.ts';
import {
  computeDetectable,
  computeGroupError,
  computeLineTrend,
  computeRetestError,
  computeTrend,
  computeWorthwhile,
  judgeChange,
} from '../measures/trend.ts';
import { computeWeekAdherence } from '../measures/week-adherence.ts';
import { compareSlot } from '../plans/done-work.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber, printRange, printSigned } from '../units/number.ts';
import { computeDoneTotals, listDoneResults, printDoneTotals } from './done-totals.ts';
import type { LensOptions } from './lens.ts';
import { explainNumber, type ReportFact, type ReportNumber } from './report-fact.ts';
import { count, joinFacts } from './words.ts';

/** How many lifts and circuits have their trend in the text. */
const LIFTS_NAMED = 3;
const CIRCUITS_NAMED = 2;

/** Load over time, trends and the plan, as of a week: its end, or today where it is not over. One line each. */
export function describeLoad(
  works: SessionWorks,
  athlete: string,
  startDay: number,
  unit: MassUnit,
  options: LensOptions,
): ReportFact[] {
  const untilDay = Math.min(startDay + 6, toDayNumber(options.today));
  const facts = [
    describeWeekLoad(works, athlete, startDay, untilDay),
    describeState(works, athlete, untilDay, toDayNumber(options.today)),
    describeTrends('lifts', listLifts(works, athlete, untilDay, unit, options), LIFTS_NAMED),
    describeTrends(
      'circuits',
      listTrends(listDensitySeries(works, athlete, untilDay), untilDay, unit),
      CIRCUITS_NAMED,
    ),
    describeTotals(works, athlete, untilDay, unit),
    describePlan(works, athlete, startDay, untilDay, unit, options),
  ];
  return facts.filter((fact) => fact !== undefined && fact.numbers.length > 0) as ReportFact[];
}

/** `1 850 AU · monotony 1.02 · strain 1 893`: the two multiply out by eye. */
function describeWeekLoad(
  works: SessionWorks,
  athlete: string,
  startDay: number,
  untilDay: number,
): ReportFact | undefined {
  const week = computeWeekLoad(works.practice, athlete, startDay, untilDay);
  if (!week) return undefined;
  const { load, monotony, strain } = week;
  const lead = load.bound === 'at least' ? 'at least ' : '';
  const soFar = load.remark ? `${load.remark} ` : '';
  return {
    of: 'load',
    text: joinFacts([
      load.omitted.length > 0 ? `${count(load.omitted.length, 'day')} without effort or time` : undefined,
      load.value === undefined ? undefined : `${soFar}${lead}${printNumber(load.value)} AU`,
      monotony.value === undefined ? undefined : `monotony ${printNumber(monotony.value, 2)}`,
      strain.value === undefined ? undefined : `strain ${printNumber(strain.value)}`,
    ]),
    numbers: [load, monotony, strain].map((result) => explainNumber(result)),
  };
}

/** `2 days since the last session · acute to chronic 1.12, no injury predictor · fitness less fatigue rising over 7 days`. */
function describeState(
  works: SessionWorks,
  athlete: string,
  untilDay: number,
  today: number,
): ReportFact | undefined {
  const since = computeDaysSince(works.practice, athlete, untilDay);
  const ratio = computeLoadRatio(works.practice, athlete, untilDay);
  const shape = computeLoadShape(works.practice, athlete, untilDay);
  const ends = untilDay < today ? ` by ${fromDayNumber(untilDay)}` : '';
  const results = [since, ratio, shape?.result].filter((result) => result !== undefined);
  return {
    of: 'state',
    text: joinFacts([
      since &&
        (since.value === 0
          ? `trained on ${fromDayNumber(untilDay)}`
          : `${count(since.value!, 'day')} since the last session${ends}`),
      ratio &&
        `acute to chronic ${ratio.value === undefined ? '' : `${printNumber(ratio.value, 2)}, `}${ratio.remark}`,
      shape?.result.value === undefined
        ? undefined
        : `fitness less fatigue ${shape.result.remark!.replace(/,.*/, '')}`,
    ]),
    numbers: results.map((result) => explainNumber(result)),
  };
}

interface SeriesTrend {
  readonly text: string;
  readonly hasVerdict: boolean;
  readonly numbers: readonly ReportNumber[];
}

function listTrends(series: readonly TimeSeries[], untilDay: number, unit: MassUnit): SeriesTrend[] {
  return rank(series).flatMap((one) => {
    const trend = computeTrend(one, untilDay);
    if (!trend) return [];
    return [
      {
        text: `${one.title} ${printTrend(trend, unit)}`,
        hasVerdict: trend.spread !== undefined,
        numbers: [trend, computeLineTrend(one, untilDay)]
          .filter((result) => result !== undefined)
          .map((result) => explainNumber(result, one.title)),
      },
    ];
  });
}

/** Estimated maxes, with the change between the last two tests and what a retest says of it. */
function listLifts(
  works: SessionWorks,
  athlete: string,
  untilDay: number,
  unit: MassUnit,
  { formula }: LensOptions,
): SeriesTrend[] {
  const { proven } = findMaxHistory(works, athlete, formula);
  return rank(listMaxSeries(works, athlete, untilDay, formula)).flatMap((one) => {
    const [found] = listTrends([one], untilDay, unit);
    if (!found) return [];
    const tests = (proven.get(one.key) ?? []).filter(({ kind, day }) => TESTS.has(kind) && day <= untilDay);
    const [before, after] = tests.slice(-2).map(toPoint);
    // A retest is of the plain movement: with another setting or tempo it says nothing.
    const isPlain = !one.key.includes(' | ');
    const error = isPlain ? computeRetestError(works.practice, athlete, one.key) : undefined;
    const ofGroup = isPlain ? computeGroupError(works.practice, one.key) : undefined;
    const change = before && after && judgeChange(before, after, one.unit, error);
    const worthwhile = computeWorthwhile(works, one.key, untilDay, formula);
    const results = [change, error, computeDetectable(error), ofGroup, worthwhile].filter(
      (result) => result !== undefined,
    );
    return [
      {
        ...found,
        text: change ? `${found.text}, last test ${printChange(change, error, unit)}` : found.text,
        numbers: [...found.numbers, ...results.map((result) => explainNumber(result, one.title))],
      },
    ];
  });
}

/** Maxes that were lifted, not estimated. */
const TESTS: ReadonlySet<MaxKind> = new Set(['stated', 'tested', 'retested']);

function toPoint({ day, result }: ValidMax): SeriesPoint {
  return { day, value: result.value!, bound: result.bound };
}

/** Series with the most rated points first, then with the most of any. */
function rank(series: readonly TimeSeries[]): TimeSeries[] {
  const rated = ({ points }: TimeSeries): number => points.filter(({ bound }) => bound === 'exact').length;
  return [...series].sort((a, b) => rated(b) - rated(a) || b.points.length - a.points.length);
}

/** Names trends that have a verdict, else the first that waits for one; the numbers have all. */
function describeTrends(of: string, trends: readonly SeriesTrend[], most: number): ReportFact {
  const judged = trends.filter(({ hasVerdict }) => hasVerdict);
  const shown = judged.length > 0 ? judged.slice(0, most) : trends.slice(0, 1);
  const rest = trends.length - shown.length;
  return {
    of,
    text: [...shown.map(({ text }) => text), ...(rest > 0 ? [`${rest} more`] : [])].join(' · '),
    numbers: trends.flatMap(({ numbers }) => numbers),
  };
}

function describeTotals(works: SessionWorks, athlete: string, untilDay: number, unit: MassUnit): ReportFact {
  const series = [
    computeVolumeSeries(works, athlete, untilDay),
    computeBodyMassSeries(works, athlete, untilDay),
  ];
  const trends = series.flatMap((one) => listTrends([one], untilDay, unit));
  return {
    of: 'totals',
    text: joinFacts(trends.map(({ text }) => text)),
    numbers: trends.flatMap(({ numbers }) => numbers),
  };
}

/** `+0.6 kg a week (-0.1 to 1.2), no clear change`. */
function printTrend({ value, spread, unit: rate, remark }: Result, unit: MassUnit): string {
  const perWeek = rate.replace(/\/week$/, '') as Unit;
  const decimals = perWeek.startsWith('kg') && Math.abs(value!) >= 10 ? 0 : 2;
  const shown = (number: number): number =>
    perWeek.startsWith('kg') ? fromGrams(number * 1000, unit) : number;
  const range = spread ? ` (${printRange(shown(spread.low), shown(spread.high), decimals)})` : '';
  return `${printSigned(shown(value!), decimals)} ${perWeek.replace('kg', unit)} a week${range}, ${remark}`;
}

/** `+2 kg, within the typical error`; without a retest the change alone. */
function printChange({ value, remark }: Result, error: Result | undefined, unit: MassUnit): string {
  const verdict = error?.value === undefined ? '' : `, ${remark}`;
  return `${printSigned(fromGrams(value! * 1000, unit), 1)} ${unit}${verdict}`;
}

/** `92 % of the planned sets, 110 of 120 reps, 4 810 of 5 020 kg, loads 2 % under the plan · Dip none of 3 sets`. */
function describePlan(
  works: SessionWorks,
  athlete: string,
  startDay: number,
  untilDay: number,
  unit: MassUnit,
  { formula }: LensOptions,
): ReportFact | undefined {
  const week = computeWeekAdherence(works, athlete, startDay, untilDay);
  if (!week || week.result.value === undefined) return undefined;
  const { result, days, slots } = week;
  const swaps = days.flatMap(({ adherence }) =>
    adherence.swapped.map(({ planned, done }) => `${done} for ${planned}`),
  );
  const added = days.flatMap(({ adherence }) => adherence.added.map(({ name }) => name));
  const lead = result.bound === 'at least' ? 'at least ' : '';
  const totals = computeDoneTotals(
    slots.flatMap((slot) => compareSlot(works, slot, { athlete, day: startDay, formula })),
  );
  return {
    of: 'plan',
    text: joinFacts([
      [`${lead}${printNumber(result.value!)} % of the planned sets`, ...printDoneTotals(totals, unit)].join(
        ', ',
      ),
      result.omitted.map(({ what, why }) => `${what} ${why}`).join(', '),
      swaps.length > 0 ? swaps.join(', ') : undefined,
      added.length > 0 ? `added ${added.join(', ')}` : undefined,
    ]),
    numbers: [result, ...listDoneResults(totals)].map((each) => explainNumber(each)),
  };
}
