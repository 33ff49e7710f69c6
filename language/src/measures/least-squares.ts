/** A straight line by ordinary least squares, checked against NIST StRD Norris. */
import { computeMean, sum } from './statistics.ts';
import { findStudentT } from './student-t.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface LineFit {
  readonly slope: number;
  readonly intercept: number;
  /** Share of the variance of y that the line explains, 0 to 1; absent where y does not vary. */
  readonly rSquared?: number;
  readonly residualSumOfSquares: number;
  /** What needs more than two points. */
  readonly errors?: {
    readonly residualDeviation: number;
    readonly slopeError: number;
    readonly interceptError: number;
    /** 95 % interval of the slope by Student's t with n - 2 degrees of freedom. */
    readonly low: number;
    readonly high: number;
  };
}

/** Undefined without two different x. */
export function fitLine(points: readonly Point[]): LineFit | undefined {
  const meanX = computeMean(points.map(({ x }) => x)) ?? 0;
  const meanY = computeMean(points.map(({ y }) => y)) ?? 0;
  const spreadX = sum(points.map(({ x }) => (x - meanX) ** 2));
  if (points.every(({ x }) => x === points[0]!.x) || spreadX === 0) {
    return undefined;
  }
  const slope = sum(points.map(({ x, y }) => (x - meanX) * (y - meanY))) / spreadX;
  const intercept = meanY - slope * meanX;
  const residualSumOfSquares = sum(points.map(({ x, y }) => (y - meanY - slope * (x - meanX)) ** 2));
  const spreadY = sum(points.map(({ y }) => (y - meanY) ** 2));
  const degreesOfFreedom = points.length - 2;
  const reach = findStudentT(0.95, degreesOfFreedom);
  const fit = {
    slope,
    intercept,
    residualSumOfSquares,
    ...(spreadY > 0 && { rSquared: 1 - residualSumOfSquares / spreadY }),
  };
  if (reach === undefined) {
    return fit;
  }
  const residualDeviation = Math.sqrt(residualSumOfSquares / degreesOfFreedom);
  const slopeError = residualDeviation / Math.sqrt(spreadX);
  return {
    ...fit,
    errors: {
      residualDeviation,
      slopeError,
      interceptError: residualDeviation * Math.sqrt(1 / points.length + meanX ** 2 / spreadX),
      low: slope - reach * slopeError,
      high: slope + reach * slopeError,
    },
  };
}
