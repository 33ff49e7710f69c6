import { describe, expect, test } from 'vitest';
import {
  estimateFromFiveRepMax,
  estimatePercentByDecay,
  REYNOLDS_EQUATIONS,
} from '../../../language/src/measures/reynolds.ts';
import { expectNear } from './expect-near.ts';

describe('Reynolds, Gordon & Robergs (2006) J Strength Cond Res 20(3):584-592', () => {
  test('the published coefficients and standard errors', () => {
    expect(REYNOLDS_EQUATIONS['chest press']).toMatchObject({
      slope: 1.1307,
      intercept: 0.6999,
      standardError: 2.98,
    });
    expect(REYNOLDS_EQUATIONS['leg press']).toMatchObject({
      slope: 1.097,
      intercept: 14.2546,
      standardError: 16.16,
    });
  });

  test.each([
    ['chest press', 80, 91.1559],
    ['leg press', 200, 233.6546],
  ] as const)('computed: %s, 5RM %d kg: %d kg', (lift, kilograms, expected) => {
    expectNear(estimateFromFiveRepMax(lift, kilograms), expected, 1e-9);
  });

  test.each([
    ['chest press', 1, 100.108],
    ['leg press', 1, 100.256],
    ['chest press', 10, 75.409],
    ['leg press', 10, 70.661],
  ] as const)('from memory: the non-linear form, %s, %i reps: %d %%', (lift, reps, expected) => {
    expectNear(estimatePercentByDecay(lift, reps), expected, 1e-5);
  });
});
