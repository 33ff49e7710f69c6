import { describe, expect, test } from 'vitest';
import { findPercentMax } from '../../../language/src/plans/latest-max.ts';
import { practiceOf } from '../measures/practice-of.ts';

/** Days since 1970-01-01. */
const NINTH = 20766;

function findKilograms(text: string, day = NINTH) {
  const { works } = practiceOf(text);
  return findPercentMax(works, 'hesper quillon', 'Back Squat', day, 'epley')?.kilograms;
}

const tested = (date: string, kilograms: number): string =>
  `session ${date} Hesper Quillon\n  test Back Squat: 1 @ ${kilograms} kg\n`;
const stated = (kilograms: number, date: string): string =>
  `athlete Hesper Quillon\n  max Back Squat: ${kilograms} kg on ${date}\n`;

describe('the max that percentages of a day are taken of', () => {
  test.each([
    ['the last one tested before', `${tested('2026-11-02', 100)}${tested('2026-11-05', 104)}`, 104],
    [
      'not the one tested in its own session',
      `${tested('2026-11-02', 100)}${tested('2026-11-09', 110)}`,
      100,
    ],
    ['none where its own session is the first', tested('2026-11-09', 110), undefined],
    ['one stated for its own day', `${stated(105, '2026-11-09')}${tested('2026-11-02', 100)}`, 105],
    [
      'that one too where its own session tests more',
      `${stated(105, '2026-11-09')}${tested('2026-11-02', 100)}${tested('2026-11-09', 110)}`,
      105,
    ],
    ['not one stated for a later day', `${stated(105, '2026-11-10')}${tested('2026-11-02', 100)}`, 100],
  ])('%s', (_, text, kilograms) => {
    expect(findKilograms(text)).toBe(kilograms);
  });
});
