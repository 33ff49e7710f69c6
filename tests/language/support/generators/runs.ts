/**
 * How a property is tried: the same inputs on every run and machine. `PLIMSOLL_RUNS` asks for more of them, and
 * `PLIMSOLL_SEED` for others.
 */
export const RUNS = {
  numRuns: Number(process.env.PLIMSOLL_RUNS ?? 100),
  seed: Number(process.env.PLIMSOLL_SEED ?? 20261117),
};

/** Milliseconds that a property may take: far above what it needs, for machines that do other work meanwhile. */
export const PATIENCE = 30_000 + 300 * RUNS.numRuns;
