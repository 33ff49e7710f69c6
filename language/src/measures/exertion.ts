/**
 * Ratings of effort: RPE from 6 to 10 is 10 less the reps in reserve (RIR); Zourdos MC et al. (2016)
 * J Strength Cond Res 30(1):267-275.
 */

/** Either rating of a set, at most one of them given. */
export interface Rating {
  readonly rpe?: number;
  readonly rir?: number;
}

/** Low and high end of a rating that was given as a range. */
export interface RatingRange {
  readonly low: number;
  readonly high: number;
}

/** More in reserve than this cannot be judged well enough to estimate a max (Hackett DA et al. 2017). */
export const HIGHEST_USEFUL_RIR = 4;

/** RPE 8 → 2; a half point is a range by its authors, and 8.5 → 1.5 a convention; below 6 there is no number. */
export function toRir(rpe: number): number | undefined {
  return rpe >= 6 && rpe <= 10 ? 10 - rpe : undefined;
}

/** RIR 2 → RPE 8; more than 4 in reserve has no number on the scale. */
export function toRpe(rir: number): number | undefined {
  return rir >= 0 && rir <= 4 ? 10 - rir : undefined;
}

/** RIR 1 to 2 → RPE 8 to 9 (common practice): the ends change places. */
export function toRpeRange(rir: RatingRange): RatingRange | undefined {
  const low = toRpe(rir.high);
  const high = toRpe(rir.low);
  return low === undefined || high === undefined ? undefined : { low, high };
}

/** RPE 8 to 9 → RIR 1 to 2 (common practice). */
export function toRirRange(rpe: RatingRange): RatingRange | undefined {
  const low = toRir(rpe.high);
  const high = toRir(rpe.low);
  return low === undefined || high === undefined ? undefined : { low, high };
}

/** The reps in reserve that a rating says, whichever it is; undefined when unrated or off the scale. */
export function readReserve({ rpe, rir }: Rating): number | undefined {
  return rir ?? (rpe === undefined ? undefined : toRir(rpe));
}

/** The scale in words, for hovers; half points are ranges. From memory of Zourdos et al. (2016). */
const DESCRIPTIONS: readonly (readonly [lowestRpe: number, words: string])[] = [
  [10, 'maximal effort'],
  [9.5, 'no further rep, but a little more load'],
  [9, '1 rep left'],
  [8.5, '1 to 2 reps left'],
  [8, '2 reps left'],
  [7.5, '2 to 3 reps left'],
  [7, '3 reps left'],
  [5, '4 to 6 reps left'],
  [3, 'light effort'],
  [0, 'little or no effort'],
];

/** RPE 8.5 → `1 to 2 reps left`. */
export function describeRpe(rpe: number): string | undefined {
  return rpe > 10 ? undefined : DESCRIPTIONS.find(([lowest]) => rpe >= lowest)?.[1];
}
