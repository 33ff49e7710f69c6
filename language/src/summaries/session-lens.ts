import { toDayNumber } from '../calendar/iso-date.ts';
import { findSlot } from '../measures/adherence.ts';
import { OTHER_WEIGH_IN, toChangeResult } from '../measures/change-result.ts';
import { computeSessionDensity } from '../measures/density.ts';
import { splitByExercise } from '../measures/exercise-work.ts';
import { findCell } from '../measures/expand-sets.ts';
import { type Input, type Result, toResult } from '../measures/result.ts';
import type { SessionWork, SessionWorks } from '../measures/session-work.ts';
import {
  compareWeeks,
  findFirst,
  startDayOf,
  type WeekChange,
  type WeekWork,
} from '../measures/week-work.ts';
import { volumeOf, type Work } from '../measures/work.ts';
import { toWorkResults } from '../measures/work-results.ts';
import type { Block, SessionEntry } from '../model/entry.ts';
import { listKeysOfDay } from '../plans/asked-memory.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { listKeysNamed } from '../practice/mentions.ts';
import type { Practice } from '../practice/practice.ts';
import { printMinutes } from '../units/duration.ts';
import type { MassUnit } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import { describeDone } from './done-against-planned.ts';
import type { Lens, LensOptions } from './lens.ts';
import { areSumsKnown, LOADING } from './loading.ts';
import { ON_WEEK, type Rest, recall, rememberSession } from './session-memory.ts';
import { count, joinFacts, printChange, printKilograms } from './words.ts';

/** `58 min · 26 working sets · 7 825 kg incl. body · week 47 so far 4 % over week 46`. */
export function describeSession(
  works: SessionWorks,
  records: readonly SessionRecord[],
  options: LensOptions,
): Omit<Lens, 'line'> {
  const { entry } = records[0]!;
  const memory = rememberSession(works.practice, entry, records, options);
  const findRest = (): Rest => ({ reach: 'day', ...findRestOnPlan(works.practice, entry) });
  const done = recall(memory, 'done', findRest, () =>
    records.length === 1 ? describeDone(works, records[0]!, options.formula) : undefined,
  );
  if (entry.missed) {
    return {
      kind: 'session',
      text: joinFacts([`missed${entry.missed.reason ? `: ${entry.missed.reason}` : ''}`, done?.text]),
      explain: () => done?.results ?? [],
    };
  }
  const parts = records.map((record) => works.of(record));
  if (parts.length > 1) return describeGroup(works, parts, options);
  const work = parts[0]!;
  const unit = unitFor(works, work.record.athlete, options);
  const isKnown = areSumsKnown(work, entry.blocks, options);
  const week = options.complete ? describeWeek(works, work.record, options) : undefined;
  const text = joinFacts([
    ...describeUnknowns(entry, work.record.index),
    work.lasted === undefined ? undefined : printMinutes(work.lasted, 0),
    done?.text ?? (work.total.sets > 0 ? count(work.total.sets, 'working set') : undefined),
    isKnown ? printSum(work.total, unit) : LOADING,
    options.complete ? week?.text : LOADING,
  ]);
  return {
    kind: 'session',
    text,
    explain: () => [
      ...(isKnown ? explainSession(work) : []),
      ...(done?.results ?? []),
      ...(week?.results ?? []),
    ],
  };
}

/** What the words of a session's lens rest on: the week's change on all of two weeks, the rest on what its plan asks. */
export function findRestOfSession(practice: Practice, records: readonly SessionRecord[]): Rest {
  const [record] = records;
  if (!record || records.length > 1 || isLastDone(practice, record)) return ON_WEEK;
  return { reach: 'week', ...findRestOnPlan(practice, record.entry) };
}

/** On the maxes of what the plan's day asks for that a session names, and on what it asks for and what was done. */
function findRestOnPlan(practice: Practice, entry: SessionEntry): Pick<Rest, 'movements' | 'defined'> {
  const slot = findSlot(practice, entry);
  const movements = slot ? listKeysOfDay(practice, slot.plan.entry, slot.day) : new Set<string>();
  return { movements, defined: new Set([...movements, ...listKeysNamed(practice, entry)]) };
}

/** Whether something can be said of an athlete's part in a session by itself, without its plan and its week. */
export function saysOfItself({ total, lasted, record: { entry, index, groupSize } }: SessionWork): boolean {
  return (
    groupSize > 1 ||
    lasted !== undefined ||
    total.sets > 0 ||
    printSum(total, 'kg') !== undefined ||
    describeUnknowns(entry, index).length > 0
  );
}

/** Every number of a session, explained. */
export function explainSession(work: SessionWork): Result[] {
  const { bodyMass, record, total } = work;
  const aged = bodyMass && { ...bodyMass, age: record.day - bodyMass.day };
  const density = computeSessionDensity(total, work.lasted);
  const load =
    work.effort !== undefined && work.lasted !== undefined
      ? toResult({
          value: (work.effort * work.lasted) / 60,
          unit: 'AU',
          method: 'session-load',
          inputs: [
            { label: 'effort', value: work.effort, unit: 'RPE' },
            { label: 'time', value: work.lasted / 60, unit: 'min' },
          ],
        })
      : undefined;
  return [
    ...toWorkResults(total, { bodyMass: aged, exercises: splitByExercise([work]) }),
    ...(density ? [density] : []),
    ...(load ? [load] : []),
  ];
}

export function unitFor(works: SessionWorks, athlete: string, options: LensOptions): MassUnit {
  return works.practice.findAthlete(athlete)?.entry.units ?? options.unit;
}

/** A group is never summed over its athletes: each has a number. */
function describeGroup(
  works: SessionWorks,
  parts: readonly SessionWork[],
  options: LensOptions,
): Omit<Lens, 'line'> {
  const isKnown = (work: SessionWork): boolean => areSumsKnown(work, work.record.entry.blocks, options);
  const facts = parts.map((work) => {
    const name =
      works.practice.athleteName(work.record.athlete) || work.record.entry.athletes[work.record.index]!.text;
    const sum = printSum(work.total, unitFor(works, work.record.athlete, options));
    return `${name} ${isKnown(work) ? (sum ?? count(work.total.sets, 'working set')) : LOADING}`;
  });
  const shown = facts.length > 4 ? [...facts.slice(0, 3), `${facts.length - 3} more`] : facts;
  return {
    kind: 'session',
    text: joinFacts(shown),
    explain: () => parts.filter(isKnown).flatMap((work) => explainSession(work)),
  };
}

/** Metres that are never added, so each is said by itself. */
const DISTANCES: readonly { readonly of: string; readonly sumOf: (work: Work) => number }[] = [
  { of: ' carried', sumOf: ({ carriedMetres }) => carriedMetres },
  { of: ' on machines', sumOf: ({ machineMetres }) => machineMetres },
  { of: '', sumOf: ({ metres }) => metres },
];

/** The main sum of some work: kilograms, else what else there is. */
export function printSum(work: Work, unit: MassUnit): string | undefined {
  const lead = work.atLeast ? 'at least ' : '';
  const volume = volumeOf(work);
  if (volume > 0) return `${lead}${printKilograms(volume, unit)}${work.body > 0 ? ' incl. body' : ''}`;
  if (work.carried > 0) return `${lead}${printNumber(work.carried / 1000)} kg·m`;
  if (work.reps > 0) return `${lead}${count(work.reps, 'rep')}`;
  if (work.contacts > 0) return `${lead}${count(work.contacts, 'contact')}`;
  const distances = DISTANCES.flatMap(({ of, sumOf }) =>
    sumOf(work) > 0 ? [`${lead}${printNumber(sumOf(work))} m${of}`] : [],
  );
  if (distances.length > 0) return distances.join(', ');
  if (work.calories > 0) return `${lead}${printNumber(work.calories)} cal`;
  return work.seconds > 0 ? `${lead}${printMinutes(work.seconds)}` : undefined;
}

function describeUnknowns(entry: SessionEntry, index: number): string[] {
  const facts: string[] = [];
  const cut = entry.blocks.map(describeCut).filter((text) => text !== undefined);
  if (cut.length > 0) facts.push(`cut short: ${cut.join(', ')}`);
  const skipped = entry.blocks.flatMap((block) => describeSkipped(block, index));
  if (skipped.length > 0) facts.push(`skipped ${skipped.join(', ')}`);
  const unrecorded = entry.blocks
    .flatMap((block) => block.lines)
    .flatMap((line) => findCell(line, index)?.sets ?? [])
    .filter((set) => set.amount?.kind === 'unrecorded' || set.load?.kind === 'unrecorded').length;
  if (unrecorded > 0) facts.push(`${count(unrecorded, 'set')} not recorded`);
  return facts;
}

function describeCut(block: Block): string | undefined {
  const { rounds, of } = block.done ?? {};
  const planned = of ?? (block.kind === 'amrap' ? undefined : block.rounds);
  return rounds !== undefined && planned !== undefined && rounds < planned
    ? `${rounds} of ${planned} rounds`
    : undefined;
}

function describeSkipped(block: Block, index: number): string[] {
  return block.lines.flatMap((line) => {
    const cell = findCell(line, index);
    if (!cell || cell.sets.length === 0 || !cell.sets.every((set) => set.amount?.kind === 'skipped'))
      return [];
    const pain = [...cell.modifiers, ...line.modifiers].find((modifier) => modifier.kind === 'pain');
    const why =
      pain?.kind === 'pain'
        ? ` (${[pain.where, pain.score].filter((part) => part !== undefined).join(' ')})`
        : '';
    return [`${line.name.text}${why}`];
  });
}

/** The week so far, or the whole one, against the last trained week; shown once, at the last session done in the week. */
function describeWeek(
  works: SessionWorks,
  record: SessionRecord,
  options: LensOptions,
): { text: string; results: Result[] } | undefined {
  const { practice } = works;
  if (!isLastDone(practice, record)) return undefined;
  // A session dated after today belongs to no week so far.
  if (record.day > toDayNumber(options.today)) return undefined;
  const { week, changes } = compareWeeks(practice, works, record.athlete, record.day, options.today);
  const said = changes.filter(({ percent }) => percent !== undefined);
  const text = printWeekChanges(week, changes);
  return text === undefined
    ? undefined
    : {
        text: `week ${week.week.week}${printMarks(week)} ${text}`,
        results: said.map((change) => toWeekResult(week, change)),
      };
}

/** Whether a session is the last of its week; a missed one shows that alone. */
function isLastDone(practice: Practice, record: SessionRecord): boolean {
  const records = practice.sessionsOf(record.athlete);
  let at = findFirst(records, startDayOf(record.day) + 7) - 1;
  // The lens is drawn on each keystroke, so the history is not copied.
  while (at >= 0 && records[at]!.entry.missed) at--;
  const last = records[at];
  return last?.entry === record.entry && last.line === record.line && last.uri === record.uri;
}

/** `so far 4 % over week 46`, `64 % over week 42 (deload), 1 % under week 41`; undefined with nothing to compare. */
export function printWeekChanges(week: WeekWork, changes: readonly WeekChange[]): string | undefined {
  const said = changes.filter(({ percent }) => percent !== undefined);
  if (said.length === 0) return undefined;
  const parts = said.map(
    ({ percent, atLeast, before }) => `${printChange(percent!, atLeast)} week ${nameWeek(before, week)}`,
  );
  return `${said[0]!.soFar ? 'so far ' : ''}${parts.join(', ')}`;
}

/** `46`, `46 (deload)`, and with its year where that is another: `52 of 2025`. */
function nameWeek(before: WeekWork, now: WeekWork): string {
  const year = before.week.year === now.week.year ? '' : ` of ${before.week.year}`;
  return `${before.week.week}${year}${printMarks(before)}`;
}

function printMarks({ marks }: WeekWork): string {
  return marks.length > 0 ? ` (${marks.join(', ')})` : '';
}

export function toWeekResult(week: WeekWork, { before, percent, atLeast, soFar }: WeekChange): Result {
  const toInput = (of: WeekWork, part: string): Input => ({
    label: `week ${of.week.week}${soFar ? part : ''}`,
    value: volumeOf(of.total),
    unit: 'kg',
    by: 'iso-week',
  });
  return toChangeResult({
    percent,
    atLeast,
    inputs: [toInput(week, ' so far'), toInput(before, ' to the same weekday')],
    omitted: [week.total.omitted, before.total.omitted, isWeighedAnew(week, before) ? [OTHER_WEIGH_IN] : []],
  });
}

/** Whether the body's share is in both weeks and the athlete weighs something else by now. */
function isWeighedAnew(...weeks: readonly [WeekWork, WeekWork]): boolean {
  const [now, then] = weeks.map(({ sessions }) =>
    sessions.filter(({ total }) => total.body > 0).map(({ bodyMass }) => bodyMass?.grams),
  );
  return now!.length > 0 && then!.length > 0 && new Set([...now!, ...then!]).size > 1;
}
