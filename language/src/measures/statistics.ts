/** Means and spreads of plain numbers. Each is undefined where the numbers are too few to give it. */

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

export function computeMean(values: readonly number[]): number | undefined {
  return values.length > 0 ? sum(values) / values.length : undefined;
}

/** The middle value, or the mean of the two in the middle. */
export function computeMedian(values: readonly number[]): number | undefined {
  return values.length > 0 ? medianOfSorted(Float64Array.from(values).sort()) : undefined;
}

/** The median of numbers that already stand in order; at least one of them. */
export function medianOfSorted(sorted: ArrayLike<number>): number {
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Standard deviation of a sample (n - 1): what a spreadsheet's STDEV gives. From two values up. */
export function computeSampleDeviation(values: readonly number[]): number | undefined {
  return values.length > 1 ? Math.sqrt(sumOfSquares(values) / (values.length - 1)) : undefined;
}

/** Standard deviation of a whole population (n). From one value up. */
export function computePopulationDeviation(values: readonly number[]): number | undefined {
  return values.length > 0 ? Math.sqrt(sumOfSquares(values) / values.length) : undefined;
}

/** Squared distances from the mean, in a second pass: one pass loses all digits of large, close values. */
function sumOfSquares(values: readonly number[]): number {
  const mean = computeMean(values)!;
  return sum(values.map((value) => (value - mean) ** 2));
}
