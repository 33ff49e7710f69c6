/**
 * Equations for two machine lifts from 70 tested adults: Reynolds JM, Gordon TJ, Robergs RA (2006)
 * J Strength Cond Res 20(3):584-592. They hold for these lifts alone.
 */

export type ReynoldsLift = 'chest press' | 'leg press';

interface ReynoldsEquations {
  readonly slope: number;
  /** Kilograms. */
  readonly intercept: number;
  /** Standard error of estimate, kilograms. */
  readonly standardError: number;
  /** Coefficients of `scale × e^(-rate × reps) + floor`, in percent of the max; from memory. */
  readonly decay: { readonly scale: number; readonly rate: number; readonly floor: number };
}

export const REYNOLDS_EQUATIONS: Readonly<Record<ReynoldsLift, ReynoldsEquations>> = {
  'chest press': {
    slope: 1.1307,
    intercept: 0.6999,
    standardError: 2.98,
    decay: { scale: 55.51, rate: 0.0723, floor: 48.47 },
  },
  'leg press': {
    slope: 1.097,
    intercept: 14.2546,
    standardError: 16.16,
    decay: { scale: 78.17, rate: 0.0569, floor: 26.41 },
  },
};

/** The max in kilograms from a five-rep max in kilograms: chest press 80 → 91.16. */
export function estimateFromFiveRepMax(lift: ReynoldsLift, kilograms: number): number {
  const { slope, intercept } = REYNOLDS_EQUATIONS[lift];
  return slope * kilograms + intercept;
}

/** The share of the max, in percent, that can be lifted so many times; from memory of the paper. */
export function estimatePercentByDecay(lift: ReynoldsLift, reps: number): number {
  const { scale, rate, floor } = REYNOLDS_EQUATIONS[lift].decay;
  return scale * Math.exp(-rate * reps) + floor;
}
