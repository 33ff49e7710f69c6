import { expect } from 'vitest';

/** For values computed from a formula in doubles and given to six or more digits. */
export const COMPUTED = 1e-4;

/** Compares by relative difference; an expected 0 must be met exactly. */
export function expectNear(actual: number | undefined, expected: number, tolerance = COMPUTED): void {
  if (expected === 0) {
    expect(actual).toBe(0);
    return;
  }
  expect(actual).toBeTypeOf('number');
  expect(Math.abs(actual! / expected - 1), `${actual} against ${expected}`).toBeLessThan(tolerance);
}
