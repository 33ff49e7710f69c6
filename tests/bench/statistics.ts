/** The value below which that share of the samples lies, by the nearest rank; samples must not be empty. */
export function findQuantile(samples: readonly number[], share: number): number {
  const sorted = [...samples].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))]!;
}

export const findMedian = (samples: readonly number[]): number => findQuantile(samples, 0.5);

/** The b of y = a · x^b by least squares on logarithms: 0 does not grow, 1 grows in step. */
export function fitExponent(points: readonly (readonly [x: number, y: number])[]): number | undefined {
  const known = points
    .filter(([x, y]) => x > 0 && y > 0)
    .map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  if (known.length < 2) return undefined;
  const mean = (at: 0 | 1) => known.reduce((sum, point) => sum + point[at], 0) / known.length;
  const [meanX, meanY] = [mean(0), mean(1)];
  const covariance = known.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  const variance = known.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  return variance > 0 ? covariance / variance : undefined;
}
