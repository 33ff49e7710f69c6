import type { SessionEntry } from '../model/entry.ts';
import type { MassLoad } from '../model/quantity.ts';
import type { Problem } from '../model/source.ts';
import { printMass } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';
import { CHECKS } from './catalogue.ts';
import { type CheckContext, problem } from './check-context.ts';
import {
  haveAllLike,
  type LoadedSet,
  listLoaded,
  listLoadedBefore,
  type MovementDay,
} from './training-history.ts';
import { printMassLoad } from './written-masses.ts';

const { percent: JUMP_PERCENT, days: WINDOW_DAYS, sessions: LEAST_SESSIONS } = CHECKS['load-jump'].numbers;

/** A working load far above what the athlete has done for as many reps; once for each movement. */
export function checkLoadJump(entry: SessionEntry, { practice, records }: CheckContext): readonly Problem[] {
  const problems: Problem[] = [];
  for (const record of records) {
    for (const { key, sets, onStack } of listLoaded(practice, record)) {
      const place = onStack ? placeOf(entry) : undefined;
      const past = { record, key, sinceDay: record.day - WINDOW_DAYS };
      if (haveAllLike(practice, past, sets, (set, before, session) => isUsual(set, before, session, place)))
        continue;
      const recent = listRecent(listLoadedBefore(practice, record, key), record.day, place);
      const found = findJump(sets, recent);
      if (found) problems.push(found);
    }
  }
  return problems;
}

/** Whether a set done before, at the place if one counts, shows that this one's load is no jump. */
function isUsual(
  { reps, load }: LoadedSet,
  before: LoadedSet,
  session: SessionEntry,
  place: string | undefined,
): boolean {
  if (load.other) return true;
  const best = place === undefined || placeOf(session) === place ? gramsAs(reps, load, before) : 0;
  return best > 0 && !isJump(load, best);
}

/** The days within the window, on a machine those at its place alone; none where too few are known at all. */
function listRecent(
  before: Iterable<MovementDay>,
  day: number,
  place: string | undefined,
): readonly MovementDay[] {
  const recent: MovementDay[] = [];
  let count = 0;
  for (const each of before) {
    const isRecent = each.record.day >= day - WINDOW_DAYS;
    if (!isRecent && count >= LEAST_SESSIONS) break;
    count++;
    if (isRecent && (place === undefined || placeOf(each.record.entry) === place)) recent.push(each);
  }
  return count < LEAST_SESSIONS ? [] : recent;
}

function placeOf({ place }: SessionEntry): string | undefined {
  return place?.text.toLowerCase();
}

function findJump(sets: readonly LoadedSet[], recent: readonly MovementDay[]): Problem | undefined {
  for (const { reps, load, group } of sets) {
    const best = findBest(reps, load, recent);
    if (best === 0 || load.other || !isJump(load, best)) continue;
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
    for (const set of sets) best = Math.max(best, gramsAs(reps, load, set));
  }
  return best;
}

/** Grams of a set for as many reps or more, with as many implements as a load; 0 if it is none. */
function gramsAs(reps: number, load: MassLoad, { reps: done, load: other }: LoadedSet): number {
  return done >= reps && other.implements === load.implements && !other.other ? other.mass.grams : 0;
}

function isJump({ mass }: MassLoad, best: number): boolean {
  return mass.grams * 100 > best * (100 + JUMP_PERCENT);
}
