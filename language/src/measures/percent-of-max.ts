/**
 * The NSCA Training Load Chart: the share of the max that goes with a number of reps. It says 70 % at 12 reps,
 * where a later table of the same body says 67 (from memory); 11 reps are not in it.
 */
export const NSCA_CHART: ReadonlyMap<number, number> = new Map([
  [1, 100],
  [2, 95],
  [3, 93],
  [4, 90],
  [5, 87],
  [6, 85],
  [7, 83],
  [8, 80],
  [9, 77],
  [10, 75],
  [12, 70],
]);

/** 5 reps → 87 (% of the max); undefined for what the chart does not list, half reps too. */
export function findChartPercent(reps: number): number | undefined {
  return NSCA_CHART.get(reps);
}

/** The max that a load for so many reps stands for: 100 and 5 → 114.94. */
export function estimateFromChart(load: number, reps: number): number | undefined {
  const percent = findChartPercent(reps);
  return percent === undefined ? undefined : (load * 100) / percent;
}

/** The load for so many reps at a max: 110 and 4 → 99. */
export function findChartLoad(max: number, reps: number): number | undefined {
  const percent = findChartPercent(reps);
  return percent === undefined ? undefined : (max * percent) / 100;
}

/** The most reps of the chart at that share of the max or more: 77 → 9, 76 → 9; undefined outside of 70 to 100 %. */
export function findChartReps(percent: number): number | undefined {
  if (percent < Math.min(...NSCA_CHART.values())) return undefined;
  return [...NSCA_CHART].findLast(([, share]) => share >= percent)?.[0];
}
