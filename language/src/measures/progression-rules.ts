/** When to raise a load, and by how much: rules of the trade that a coach may be reminded of. */

/** Reps over the goal that the last set needs, in each of so many workouts in a row. */
export const TWO_FOR_TWO = { reps: 2, workouts: 2 } as const;

/**
 * The 2-for-2 rule: two reps over the goal in the last set, in the two latest workouts. Last sets oldest first.
 * Haff & Triplett (2016) Essentials of Strength Training and Conditioning, 4th ed. (from memory).
 */
export function isReadyForMoreLoad(lastSetReps: readonly number[], goal: number): boolean {
  const latest = lastSetReps.slice(-TWO_FOR_TWO.workouts);
  return latest.length === TWO_FOR_TWO.workouts && latest.every((reps) => reps >= goal + TWO_FOR_TWO.reps);
}

/**
 * The next load by a raise of 2 to 10 %, before it is rounded to what can be loaded: 60 → 61.2 to 66. Ratamess
 * NA et al. (2009) Med Sci Sports Exerc 41(3):687-708.
 */
export function suggestRaise(load: number): { readonly low: number; readonly high: number } {
  return { low: load * 1.02, high: load * 1.1 };
}

/** A goal's usual load, reps, sets and rest; an absent end is open. */
export interface LoadGoal {
  readonly goal: string;
  readonly percent: { readonly low?: number; readonly high?: number };
  readonly reps: { readonly low?: number; readonly high?: number };
  readonly sets: { readonly low: number; readonly high: number };
  /** Seconds. */
  readonly rest: { readonly low?: number; readonly high: number };
}

/**
 * Sheppard & Triplett, ch. 17 of Haff & Triplett (2016) Essentials, 4th ed. The power rows are for lifts of the
 * weightlifting kind; others use lighter loads.
 */
export const LOAD_GOALS: readonly LoadGoal[] = [
  {
    goal: 'strength',
    percent: { low: 85 },
    reps: { high: 6 },
    sets: { low: 2, high: 6 },
    rest: { low: 120, high: 300 },
  },
  {
    goal: 'power, single effort',
    percent: { low: 80, high: 90 },
    reps: { low: 1, high: 2 },
    sets: { low: 3, high: 5 },
    rest: { low: 120, high: 300 },
  },
  {
    goal: 'power, multiple effort',
    percent: { low: 75, high: 85 },
    reps: { low: 3, high: 5 },
    sets: { low: 3, high: 5 },
    rest: { low: 120, high: 300 },
  },
  {
    goal: 'hypertrophy',
    percent: { low: 67, high: 85 },
    reps: { low: 6, high: 12 },
    sets: { low: 3, high: 6 },
    rest: { low: 30, high: 90 },
  },
  {
    goal: 'muscular endurance',
    percent: { high: 67 },
    reps: { low: 12 },
    sets: { low: 2, high: 3 },
    rest: { high: 30 },
  },
];
