/** Quotients of totals, absent wherever the divisor is missing or nothing: never Infinity, NaN or a false zero. */

/** One total over another; undefined unless the divisor is above zero. */
export function divide(amount: number | undefined, by: number | undefined): number | undefined {
  return amount === undefined || by === undefined || !(by > 0) ? undefined : amount / by;
}

/** Density: 1 560 kg in 2 700 seconds → 34.67 kg/min. */
export function computePerMinute(
  amount: number | undefined,
  seconds: number | undefined,
): number | undefined {
  return divide(amount, seconds === undefined ? undefined : seconds / 60);
}

/** Change in percent: 11 800 and 12 600 → 6.78; undefined from nothing. */
export function computePercentChange(
  before: number | undefined,
  now: number | undefined,
): number | undefined {
  const ratio = divide(now, before);
  return ratio === undefined ? undefined : (ratio - 1) * 100;
}

/** A part in percent of the whole: 18 of 24 sets → 75. */
export function computePercentOf(part: number | undefined, whole: number | undefined): number | undefined {
  const ratio = divide(part, whole);
  return ratio === undefined ? undefined : ratio * 100;
}
