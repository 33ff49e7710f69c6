/** What one run of the benchmark is made with. */
export interface Plan {
  /** Only whether everything works: tiny practices, one run each, no verdict. */
  readonly smoke: boolean;
  /** Bytes of the smaller, the usual and (if asked for) the large practice, ascending. */
  readonly sizes: readonly number[];
  /** The size that the targets are for. */
  readonly usual: number;
  /** Bytes of the one large file. */
  readonly largeFile: number;
  /** How often a whole process is started. */
  readonly runs: number;
  readonly keystrokes: number;
}

/** One line of the table. */
export interface Row {
  readonly what: string;
  /** What each run gave, in the unit; none where there is nothing to measure. */
  readonly samples: readonly number[];
  readonly unit: 'ms' | 'MB/MB' | 'ratio';
  /** What the target is for: a number and its wording, such as `0.83 of ledger`. */
  readonly judged?: { readonly value: number; readonly words: string };
  readonly target?: number;
  readonly stretch?: number;
  /** Why there is no number, or what to know about it. */
  readonly note?: string;
}

/** How something grows with the practice: bytes and what was measured there. */
export interface Growth {
  readonly what: string;
  readonly points: readonly (readonly [bytes: number, value: number])[];
}

export interface Findings {
  readonly rows: readonly Row[];
  readonly growth: readonly Growth[];
}

/** Ratios are read from medians, or from the number that the target names. */
export function compare(value: number, other: number, whose: string): Row['judged'] {
  const ratio = value / other;
  return { value: ratio, words: `${ratio.toFixed(ratio < 0.1 ? 3 : 2)} of ${whose}` };
}

export const megabytes = (bytes: number): string => `${Number((bytes / 1e6).toPrecision(2))} MB`;
