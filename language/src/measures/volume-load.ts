/** Volume load of plain reps and masses; the rules for what a rep moves stand with the model. */
import { divide } from './quotients.ts';
import { sum } from './statistics.ts';

/** So many reps at one load; the load in any unit, which the sum keeps. */
export interface RepsAtLoad {
  readonly reps: number;
  readonly load: number;
}

/** 3 × 8 × 65 kg → 1 560 kg. */
export function sumVolumeLoad(sets: readonly RepsAtLoad[]): number {
  return sum(sets.map(({ reps, load }) => reps * load));
}

/** Volume load over reps; undefined without a rep. */
export function computeAverageLoad(sets: readonly RepsAtLoad[]): number | undefined {
  return divide(sumVolumeLoad(sets), sum(sets.map(({ reps }) => reps)));
}

/** Average load in percent of the max. */
export function computeRelativeIntensity(
  sets: readonly RepsAtLoad[],
  max: number | undefined,
): number | undefined {
  const share = divide(computeAverageLoad(sets), max);
  return share === undefined ? undefined : share * 100;
}

/** Standard gravity in m/s², exact by definition (3rd General Conference on Weights and Measures, 1901). */
const GRAVITY = 9.80665;

/** Joules to raise a load in kilograms by so many metres, the way up only: 10 × 100 kg × 0.5 m → 4 903 J. */
export function computeMechanicalWork(reps: number, kilograms: number, metres: number): number {
  return reps * kilograms * GRAVITY * metres;
}
