import { describe, expect, test } from 'vitest';
import {
  computeMovedMass,
  computePushUpShare,
  SEGMENT_MASSES,
  type SegmentMasses,
  SHARES_FROM_SEGMENTS,
  WEIGHED_PUSH_UPS,
} from '../../../language/src/measures/body-share.ts';
import { expectNear } from './expect-near.ts';

describe('push-ups weighed by Mier et al. (2014) Int J Exerc Sci 7(2):161-168', () => {
  test.each([
    ['push-up', 'men', 0.67, 0.746],
    ['push-up', 'women', 0.651, 0.703],
    ['knee push-up', 'men', 0.525, 0.601],
    ['knee push-up', 'women', 0.515, 0.566],
  ] as const)('%s, %s', (movement, sex, up, down) => {
    expect(WEIGHED_PUSH_UPS[movement][sex]).toEqual({ up, down });
  });

  test.each([
    [undefined, '0.69'],
    ['male', '0.71'],
    ['female', '0.68'],
  ] as const)('the share taken (sex %s) is %s, the mean of the figures', (sex, expected) => {
    expect(computePushUpShare('push-up', sex).toFixed(2)).toBe(expected);
  });

  test('on the knees it is the mean of four too', () => {
    expectNear(computePushUpShare('knee push-up'), 0.55175, 1e-12);
  });

  test('from memory of Suprak et al. (2011): 0.6916 up and 0.7504 down, within 0.03 of these', () => {
    const { men, women } = WEIGHED_PUSH_UPS['push-up'];
    expect(Math.abs((men.up + women.up) / 2 - 0.6916)).toBeLessThan(0.035);
    expect(Math.abs((men.down + women.down) / 2 - 0.7504)).toBeLessThan(0.03);
  });
});

describe('segment masses of de Leva 1996 and Winter 2009, table 4.1', () => {
  test.each([
    ['men', [0.0694, 0.4346, 0.0271, 0.0162, 0.0061, 0.1416, 0.0433, 0.0137], 1],
    ['women', [0.0668, 0.4257, 0.0255, 0.0138, 0.0056, 0.1478, 0.0481, 0.0129], 0.9999],
    ['winter', [0.081, 0.497, 0.028, 0.016, 0.006, 0.1, 0.0465, 0.0145], 1],
  ] as const)('%s add up to the body', (set, published, total) => {
    const { head, trunk, upperArm, forearm, hand, thigh, shank, foot }: SegmentMasses = SEGMENT_MASSES[set];
    expect([head, trunk, upperArm, forearm, hand, thigh, shank, foot]).toEqual(published);
    expectNear(head + trunk + 2 * (upperArm + forearm + hand + thigh + shank + foot), total, 1e-12);
  });
});

describe('shares from segments (computed)', () => {
  test.each([
    ['squat', 0.886, 0.878, 0.878],
    ['pull-up', 0.9554, 0.9612, 0.956],
    ['single-leg squat', 0.943, 0.939, 0.939],
    ['one leg', 0.1986, 0.2088, 0.161],
    ['head, arms and trunk', 0.6028, 0.5823, 0.678],
  ] as const)('%s', (movement, men, women, winter) => {
    const share = SHARES_FROM_SEGMENTS[movement];
    expectNear(share(SEGMENT_MASSES.men), men, 1e-12);
    expectNear(share(SEGMENT_MASSES.women), women, 1e-12);
    expectNear(share(SEGMENT_MASSES.winter), winter, 1e-12);
  });

  test.each([
    ['80 kg man, squat', 'squat', 'men', 80, 0, 70.88],
    ['80 kg man, pull-up + 10 kg', 'pull-up', 'men', 80, 10, 86.432],
    ['60 kg woman, squat', 'squat', 'women', 60, 0, 52.68],
  ] as const)('%s', (_name, movement, set, bodyMass, added, expected) => {
    const share = SHARES_FROM_SEGMENTS[movement](SEGMENT_MASSES[set]);
    expectNear(computeMovedMass(share, bodyMass, added), expected, 1e-12);
  });
});

test('help never takes more than the body gives', () => {
  expect(computeMovedMass(0.5, 80, -15)).toBe(25);
  expect(computeMovedMass(0.5, 80, -50)).toBe(0);
  expect(computeMovedMass(0.5, 80)).toBe(40);
});
