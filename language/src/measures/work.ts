import type { Omission } from './result.ts';

/**
 * What was done, in sums that are never mixed: kilograms lifted, kilogram-metres carried, seconds held, jumps, metres of
 * three kinds and calories. Masses are in grams, so that sums are exact. External load and the share of body mass stay apart.
 */
export interface Work {
  readonly sets: number;
  readonly hardSets: number;
  readonly reps: number;
  /** Reps that have kilograms, and those that are only counted. */
  readonly weighedReps: number;
  /** Grams times reps. */
  readonly external: number;
  readonly body: number;
  /** Grams times metres. */
  readonly carried: number;
  readonly seconds: number;
  readonly contacts: number;
  /** Run, walked, swum, and whatever is neither of the next two. */
  readonly metres: number;
  /** By a movement whose work is a carry: sleds too. */
  readonly carriedMetres: number;
  /** As a machine counts them. */
  readonly machineMetres: number;
  readonly calories: number;
  /** Something was done that is not known: the sums are lower bounds. */
  readonly atLeast: boolean;
  readonly omitted: readonly Omission[];
}

export const NO_WORK: Work = {
  sets: 0,
  hardSets: 0,
  reps: 0,
  weighedReps: 0,
  external: 0,
  body: 0,
  carried: 0,
  seconds: 0,
  contacts: 0,
  metres: 0,
  carriedMetres: 0,
  machineMetres: 0,
  calories: 0,
  atLeast: false,
  omitted: [],
};

/** Sums work; what was left out is named once. Each sum by its name: this runs for every set of a history. */
export function addWork(parts: readonly Work[]): Work {
  if (parts.length === 1) return parts[0]!;
  const total: { -readonly [K in keyof Work]: Work[K] } = { ...NO_WORK };
  for (const part of parts) {
    total.sets += part.sets;
    total.hardSets += part.hardSets;
    total.reps += part.reps;
    total.weighedReps += part.weighedReps;
    total.external += part.external;
    total.body += part.body;
    total.carried += part.carried;
    total.seconds += part.seconds;
    total.contacts += part.contacts;
    total.metres += part.metres;
    total.carriedMetres += part.carriedMetres;
    total.machineMetres += part.machineMetres;
    total.calories += part.calories;
    total.atLeast ||= part.atLeast;
  }
  total.omitted = joinOmitted(parts);
  return total;
}

function joinOmitted(parts: readonly Work[]): readonly Omission[] {
  const some = parts.filter(({ omitted }) => omitted.length > 0);
  if (some.length === 0) return NO_WORK.omitted;
  const omitted = new Map<string, Omission>();
  for (const part of some)
    for (const omission of part.omitted) omitted.set(`${omission.what}\n${omission.why}`, omission);
  return [...omitted.values()];
}

/** All metres, for whether there are any: as a sum they are never shown. */
export function hasMetres({ metres, carriedMetres, machineMetres }: Work): boolean {
  return metres + carriedMetres + machineMetres > 0;
}

/** Kilograms lifted, share of body mass included. */
export function volumeOf(work: Work): number {
  return (work.external + work.body) / 1000;
}
