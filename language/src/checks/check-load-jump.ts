import type { SessionEntry } from '../model/entry.ts';
import type { MassLoad } from '../model/quantity.ts';
import type { Problem } from '../model/source.ts';
import { printMass } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import { CHECKS } from './catalogue.ts';
import { type CheckContext, problem } from './check-context.ts';
import { findHistory, type LoadedSet, listLoaded, type MovementDay } from './training-history.ts';
import { printMassLoad } from './written-masses.ts';

const { percent: JUMP_PERCENT, days: WINDOW_DAYS, sessions: LEAST_SESSIONS } = CHECKS['load-jump'].numbers;

/** A working load far above what the athlete has done for as many reps; once for each movement. */
export function* checkLoadJump(entry: SessionEntry, context: CheckContext): Iterable<Problem> {
  const { practice, records } = context;
  for (const record of records) {
    const { movements, positions } = findHistory(practice, record.athlete);
    const position = positions.get(entry) ?? 0;
    for (const [key, { sets, onStack }] of listLoaded(practice, record)) {
      const days = movements.get(key) ?? [];
      const before = countBefore(days, position);
      if (before < LEAST_SESSIONS) continue;
      const place = onStack ? entry.place?.text.toLowerCase() : undefined;
      const recent = listRecent(days, before, record.day, place);
      const found = findJump(sets, recent);
      if (found) yield found;
    }
  }
}

/** How many of a movement's days come before a session; halving, for a history may hold thousands. */
function countBefore(days: readonly MovementDay[], position: number): number {
  let [low, high] = [0, days.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (days[middle]!.position < position) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The days within the window, of those before the session; on a machine, those at its place. */
function listRecent(
  days: readonly MovementDay[],
  before: number,
  day: number,
  place: string | undefined,
): readonly MovementDay[] {
  let from = before;
  while (from > 0 && days[from - 1]!.day >= day - WINDOW_DAYS) from--;
  const recent = days.slice(from, before);
  return place === undefined ? recent : recent.filter((other) => other.place === place);
}

function findJump(sets: readonly LoadedSet[], recent: readonly MovementDay[]): Problem | undefined {
  for (const { reps, load, group } of sets) {
    const best = findBest(reps, load, recent);
    if (best === 0 || load.other || load.mass.grams * 100 <= best * (100 + JUMP_PERCENT)) continue;
    const percent = printNumber((load.mass.grams / best - 1) * 100);
    const than = `the best of ${WINDOW_DAYS} days, ${printMass(best, load.mass.unit)} for ${reps} or more`;
    return problem(
      'load-jump',
      group.loadSpan ?? group.span,
      `${printMassLoad(load)} for ${reps} is ${percent} % over ${than}: is the load right?`,
    );
  }
  return undefined;
}

/** Grams of the heaviest implement for as many reps or more, with as many implements; 0 without any. */
function findBest(reps: number, load: MassLoad, recent: readonly MovementDay[]): number {
  let best = 0;
  for (const { sets } of recent) {
    for (const { reps: done, load: other } of sets) {
      const isComparable = done >= reps && other.implements === load.implements && !other.other;
      if (isComparable && other.mass.grams > best) best = other.mass.grams;
    }
  }
  return best;
}
