/** What a `test` in reps, time, distance or calories gave, and whether it is the best so far. A max has a module of its own. */
import type { Measure, SetGroup } from '../model/quantity.ts';
import { implementOf, type Movement } from '../practice/movement.ts';
import { printNumber } from '../units/number.ts';
import { findCell, numberOfSet } from './expand-sets.ts';
import { toSeries } from './max-candidates.ts';
import { type Input, type Result, toResult, type Unit } from './result.ts';
import { nameMovement } from './series-sets.ts';
import type { SessionWork, SessionWorks } from './session-work.ts';
import { measureAmount } from './set-work.ts';

/** The best result of one test of a session. */
export interface TestResult {
  readonly movement: string;
  /** `40 reps`, `500 m`: what was done, where the result is the time it took. */
  readonly of?: string;
  readonly result: Result;
  /** The best of all sessions before, of the same test; absent the first time. */
  readonly before?: { readonly value: number; readonly day: number; readonly date: string };
  /** Better than all before; absent the first time. */
  readonly isBest?: boolean;
}

interface Attempt {
  /** Only attempts of one test are compared: movement, settings, load, and what was asked. */
  readonly key: string;
  readonly movement: string;
  readonly of?: string;
  readonly value: number;
  readonly unit: Unit;
  /** Seconds for an amount that is given: the fewer the better. */
  readonly isTime: boolean;
  readonly setNumber: number;
}

const UNITS: Readonly<Record<Measure, Unit>> = { reps: 'reps', seconds: 's', metres: 'm', calories: 'cal' };

/**
 * The best result of each test of a session that is not a max: most reps, seconds, metres or calories; of an amount with
 * its time (`500 m in 1:40`) the shortest time for that amount. Loaded reps have an estimated max instead.
 */
export function findTestResults(works: SessionWorks, work: SessionWork): TestResult[] {
  const today = pickBest(listAttempts(work));
  if (today.size === 0) return [];
  const { record } = work;
  const earlier = works.practice.sessionsOf(record.athlete).slice(0, works.practice.indexOf(record));
  const before = new Map<string, { value: number; day: number; date: string }>();
  for (const past of earlier) {
    if (!hasTest(past.entry.blocks)) continue;
    for (const [key, { value, isTime }] of pickBest(listAttempts(works.of(past)))) {
      const best = before.get(key);
      if (!best || isBetter(value, best.value, isTime))
        before.set(key, { value, day: past.day, date: past.date });
    }
  }
  return [...today.values()].map((attempt) => toTestResult(attempt, before.get(attempt.key)));
}

function toTestResult(attempt: Attempt, before: TestResult['before']): TestResult {
  const { movement, of, value, unit, isTime, setNumber } = attempt;
  const inputs: Input[] = [{ label: `set ${setNumber}`, value, unit }];
  if (before) inputs.push({ label: `best before, ${before.date}`, value: before.value, unit });
  return {
    movement,
    ...(of !== undefined && { of }),
    result: toResult({ value, unit, method: 'test-result', inputs }),
    ...(before && { before, isBest: isBetter(value, before.value, isTime) }),
  };
}

function hasTest(blocks: SessionWork['record']['entry']['blocks']): boolean {
  return blocks.some(({ lines }) => lines.some(({ purpose }) => purpose === 'test'));
}

function isBetter(value: number, other: number, isTime: boolean): boolean {
  return isTime ? value < other : value > other;
}

function pickBest(attempts: readonly Attempt[]): Map<string, Attempt> {
  const best = new Map<string, Attempt>();
  for (const attempt of attempts) {
    const other = best.get(attempt.key);
    if (!other || isBetter(attempt.value, other.value, attempt.isTime)) best.set(attempt.key, attempt);
  }
  return best;
}

function listAttempts({ record, context }: SessionWork): Attempt[] {
  const { entry, index } = record;
  return entry.blocks
    .flatMap(({ lines }) => lines)
    .filter(({ purpose }) => purpose === 'test')
    .flatMap((line) => {
      const cell = findCell(line, index);
      const movement = context.findMovement(line.name.text);
      const { name } = nameMovement(movement, line.name.text);
      return (cell?.sets ?? []).flatMap((group, groupIndex): Attempt[] => {
        const done = group.amount && measureAmount(group.amount);
        if (!done || done.total <= 0) return [];
        const { measure } = done.quantity;
        const isTime = group.within !== undefined;
        if (measure === 'reps' && !isTime && !countsReps(group.load, movement)) return [];
        const amount = `${printNumber(done.total, 1)} ${UNITS[measure]}`;
        const load = JSON.stringify(toComparable(group.load)) ?? '';
        const series = toSeries(line, cell!.modifiers, group, movement, entry.place?.text);
        return [
          {
            key: [series.key, load, isTime ? `time of ${amount}` : measure].join(' | '),
            movement: name,
            ...(isTime && { of: amount }),
            value: isTime ? group.within!.value : done.total,
            unit: isTime ? 's' : UNITS[measure],
            isTime,
            setNumber: numberOfSet(cell!.sets, groupIndex),
          },
        ];
      });
    });
}

type Load = SetGroup['load'];

/** Reps say something by themselves: no kilograms, which have a max instead, and no load that is forgotten. */
function countsReps(load: Load, movement: Movement | undefined): boolean {
  switch (load?.kind) {
    case undefined:
      return implementOf(movement) === 'none';
    case 'bodyweight':
      return load.mass === undefined;
    case 'pin':
    case 'band':
    case 'setting':
      return true;
    default:
      return false;
  }
}

/** `bw` says no more than nothing; of a mass only its grams count, however they were written. */
function toComparable(load: Load): unknown {
  if (load?.kind === 'mass') return [load.mass.grams, load.implements, load.other?.grams];
  if (load?.kind !== 'bodyweight') return load;
  const { mass, sign, pin, band } = load;
  return mass || band || pin !== undefined ? [sign, mass?.grams, pin, band] : undefined;
}
