import { computePatternRatios } from '../measures/balance.ts';
import { splitByExercise, splitChange } from '../measures/exercise-work.ts';
import { computeIntensity, INTENSITY_ZONES, tallyIntensity } from '../measures/intensity.ts';
import { countSetsByMuscle, countSetsByPattern, type SetCounts } from '../measures/muscle-sets.ts';
import { findRecordsOf } from '../measures/records.ts';
import type { Omission, Result } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { compareSides } from '../measures/side-balance.ts';
import { findTestResults } from '../measures/test-results.ts';
import { computeTensionTime } from '../measures/time-under-tension.ts';
import type { WeekChange, WeekWork } from '../measures/week-work.ts';
import { printMinutes } from '../units/duration.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber, printSigned } from '../units/number.ts';
import type { LensOptions } from './lens.ts';
import { printRecordMax, printRecordSet } from './print-record.ts';
import { printTestResult } from './print-test.ts';
import { explainNumber, type ReportFact } from './report-fact.ts';
import { count, joinFacts, printKilograms } from './words.ts';

/** How many of a list a line names before it counts the rest. */
const NAMED = 6;

/** What a week was made of: muscles, patterns, sides, intensity, the change by movement, records. One line each. */
export function describeBalance(
  works: SessionWorks,
  week: WeekWork,
  change: WeekChange | undefined,
  unit: MassUnit,
  options: LensOptions,
): ReportFact[] {
  if (week.sessions.length === 0) return [];
  const facts = [
    describeCounts('hard sets', countSetsByMuscle(week.sessions)),
    describeCounts('patterns', countSetsByPattern(week.sessions)),
    describeRatios(week),
    describeIntensity(works, week, unit, options),
    change && describeChange(week, change, unit),
    describeRecords(works, week, unit, options),
    describeTests(works, week),
  ];
  return facts.filter((fact) => fact !== undefined && fact.numbers.length > 0) as ReportFact[];
}

/** `quadriceps 12, glutes 9.5 · without Sack Heave (not defined)`. */
function describeCounts(of: string, { counts, omitted }: SetCounts): ReportFact {
  return {
    of,
    text: joinFacts([
      listFirst(counts.map(({ name, result }) => `${name} ${printNumber(result.value!, 1)}`)),
      printWithout(omitted),
    ]),
    numbers: counts.map(({ name, result }) => explainNumber({ ...result, omitted }, name)),
  };
}

/** `push : pull 1.2 (12 : 10), squat : hinge none (4 : 0) · Cable Row left : right 1.1`. Of sides the kilograms, if any. */
function describeRatios({ sessions }: WeekWork): ReportFact {
  const ratios = computePatternRatios(sessions);
  const sides = compareSides(sessions);
  // Where all was done in one direction, that direction says the same as the whole.
  const whole = ratios[0]?.result.inputs.map(({ value }) => value).join();
  const shown = ratios.filter(
    ({ result }, index) => index === 0 || result.inputs.map(({ value }) => value).join() !== whole,
  );
  const print = (result: Result): string =>
    `${printRatio(result)} (${result.inputs.map(({ value }) => printNumber(value)).join(' : ')})`;
  return {
    of: 'ratios',
    text: joinFacts([
      shown.map(({ name, result }) => `${name} ${print(result)}`).join(', '),
      sides
        .map(({ movement, amount, volume }) => `${movement} left : right ${printRatio(volume ?? amount)}`)
        .join(', '),
    ]),
    numbers: [
      ...ratios.map(({ name, result }) => explainNumber(result, name)),
      ...sides.flatMap(({ movement, amount, volume }) =>
        [amount, ...(volume ? [volume] : [])].map((result) =>
          explainNumber(result, `${movement} left : right`),
        ),
      ),
    ],
  };
}

function printRatio({ value }: Result): string {
  return value === undefined ? 'none' : printNumber(value, 2);
}

/** `71 % of max, 84 kg a rep · reps: 20 below 60 %, 45 at 70-79 % · without Push-up (no max)`. */
function describeIntensity(
  works: SessionWorks,
  { sessions }: WeekWork,
  unit: MassUnit,
  { formula }: LensOptions,
): ReportFact {
  const { average, relative, zones } = computeIntensity(
    sessions.flatMap((work) => tallyIntensity(works, work, formula)),
  );
  const tension = computeTensionTime(sessions);
  const known = [average, relative, ...(tension ? [tension] : [])].filter(({ value }) => value !== undefined);
  const lead = relative.remark ? 'at most ' : '';
  const reps = zones.flatMap(({ value }, index) => {
    const { name } = INTENSITY_ZONES[index]!;
    return value! > 0 ? [`${printNumber(value!)} ${name.startsWith('below') ? '' : 'at '}${name}`] : [];
  });
  return {
    of: 'intensity',
    text: joinFacts([
      [
        relative.value === undefined ? '' : `${lead}${printNumber(relative.value)} % of max`,
        average.value === undefined ? '' : `${printKilograms(average.value, unit)} a rep`,
      ]
        .filter((part) => part !== '')
        .join(', '),
      reps.length > 0 ? `reps: ${reps.join(', ')}` : undefined,
      tension && `${printMinutes(tension.value!)} under tension`,
      printWithout(relative.omitted),
    ]),
    numbers: [
      ...known.map((result) => explainNumber(result)),
      ...zones.map((result, index) => explainNumber(result, INTENSITY_ZONES[index]!.name)),
    ],
  };
}

/** `since week 46: Back Squat +330 kg, Bench Press -200 kg (only week 46)`. */
function describeChange(week: WeekWork, { before }: WeekChange, unit: MassUnit): ReportFact {
  const changes = splitChange(splitByExercise(before.sessions), splitByExercise(week.sessions));
  const texts = changes.flatMap(({ name, presence, insteadOf, change: { value, unit: counted, bound } }) => {
    if (value === undefined || value === 0) return [];
    const size =
      counted === 'kg'
        ? `${printSigned(fromGrams(value * 1000, unit))} ${unit}`
        : `${printSigned(value)} ${counted}`;
    const lead = bound === 'at least' ? 'at least ' : '';
    const marks = [
      presence === 'only before' ? `only week ${before.week.week}` : presence === 'only now' ? 'new' : '',
      ...insteadOf.map((of) => `for ${of}`),
    ].filter((mark) => mark !== '');
    return [`${name} ${lead}${size}${marks.length > 0 ? ` (${marks.join(', ')})` : ''}`];
  });
  return {
    of: 'by movement',
    text: texts.length > 0 ? `since week ${before.week.week}: ${listFirst(texts, 4)}` : 'no change',
    numbers: changes.map(({ name, change }) => explainNumber(change, name)),
  };
}

/** `Back Squat 5 @ 85 kg, Back Squat e1RM 102 kg`. */
function describeRecords(
  works: SessionWorks,
  { sessions }: WeekWork,
  unit: MassUnit,
  { formula }: LensOptions,
): ReportFact {
  const found = sessions.map((work) => findRecordsOf(works, work, formula));
  const sets = found.flatMap((records) => records.sets);
  const maxes = found.flatMap((records) => records.maxes);
  return {
    of: 'records',
    text: listFirst([
      ...sets.map((set) => `${set.series.movement} ${printRecordSet(set, unit)}`),
      ...maxes.map((max) => `${max.series.movement} ${printRecordMax(max, unit)}`),
    ]),
    numbers: [
      ...sets.map((set) => explainNumber(set.result, `${set.series.movement}, ${count(set.reps, 'rep')}`)),
      ...maxes.map(({ series, result }) => explainNumber(result, series.movement)),
    ],
  };
}

/** `Plank 1:30 (before 1:15 on 2026-02-02), best so far, Rower 500 m in 1:40`. Maxes stand with the lifts. */
function describeTests(works: SessionWorks, { sessions }: WeekWork): ReportFact {
  const tests = sessions.flatMap((work) => findTestResults(works, work));
  return {
    of: 'tests',
    text: listFirst(tests.map(printTestResult)),
    numbers: tests.map(({ movement, result }) => explainNumber(result, movement)),
  };
}

function listFirst(texts: readonly string[], most = NAMED): string {
  const rest = texts.length - most;
  return [...texts.slice(0, most), ...(rest > 0 ? [`${rest} more`] : [])].join(', ');
}

/** `without Push-up, Band Row (no max)`: names by reason; the reasons in full stand with the numbers. */
function printWithout(omitted: readonly Omission[]): string | undefined {
  const byReason = new Map<string, Set<string>>();
  for (const { what, why } of omitted) {
    const reason = SHORT_REASONS.find(([start]) => why.startsWith(start))?.[1] ?? why;
    byReason.set(reason, (byReason.get(reason) ?? new Set()).add(what));
  }
  const texts = [...byReason].map(([reason, names]) => `${listFirst([...names], 3)} (${reason})`);
  return texts.length > 0 ? `without ${texts.join(', ')}` : undefined;
}

/** How a reason begins, and what fits a line of it. */
const SHORT_REASONS: readonly (readonly [start: string, short: string])[] = [
  ['no max known', 'no max'],
  ['of its max only a lower bound', 'max a lower bound only'],
  ['no one load', 'no load in kilograms'],
  ['no published share', 'no share of body mass'],
  ['no weigh-in', 'no weigh-in'],
  ['no definition', 'not defined'],
  ['its definition names no muscles', 'no muscles given'],
  ['its definition names no pattern', 'no pattern given'],
];
