/** Sets that reach a muscle, direct and indirect: Pelland JC et al. (2024) preprint, SportRxiv. */
import { sum } from './statistics.ts';

/** Hard sets of one exercise and how much of each counts for the muscle: 1 direct, less where indirect. */
export interface MuscleWork {
  readonly sets: number;
  readonly fraction: number;
}

export interface MuscleSets {
  readonly direct: number;
  /** Indirect sets at their fraction: the count that is shown. */
  readonly fractional: number;
  /** Every set as a whole one. */
  readonly total: number;
}

/** Four and three indirect sets at 1/2 and three direct ones → direct 3, fractional 6.5, total 10. */
export function countMuscleSets(work: readonly MuscleWork[]): MuscleSets {
  return {
    direct: sum(work.filter(({ fraction }) => fraction === 1).map(({ sets }) => sets)),
    fractional: sum(work.map(({ sets, fraction }) => sets * fraction)),
    total: sum(work.filter(({ fraction }) => fraction > 0).map(({ sets }) => sets)),
  };
}
