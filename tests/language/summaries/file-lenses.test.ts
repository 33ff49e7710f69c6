import { expect, test } from 'vitest';
import { describeLens, listLensPlaces } from '../../../language/src/summaries/file-lenses.ts';
import type { LensOptions } from '../../../language/src/summaries/lens.ts';
import { practiceOf } from '../measures/practice-of.ts';

const OPTIONS: LensOptions = { today: '2026-11-09', formula: 'epley', unit: 'kg', complete: true };

const TEXT = `athlete Hesper Quillon
  max Back Squat: 100 kg on 2026-10-01
plan Copper Autumn
  for Hesper Quillon
  starts 2026-11-09
  weeks 1
  day 1
    Back Squat: 3x5 @ 80%
session 2026-11-02 Hesper Quillon
  Back Squat: 5 @ 80 kg rpe 8
`;

test('of a plan out of sight the places alone are told, and the words when somebody asks', () => {
  const { works } = practiceOf(TEXT);
  const list = (first: number, last: number) =>
    listLensPlaces(works, 'log.plim', OPTIONS, { worded: { first, last } }).filter(({ line }) => line < 8);
  const unseen = list(8, 9);
  expect(unseen.map(({ kind, line, nth, text }) => [kind, line, nth, text])).toEqual([
    ['plan', 2, 0, undefined],
    ['plan', 6, 0, undefined],
    ['line', 7, 0, undefined],
  ]);
  expect(describeLens(works, 'log.plim', unseen[2]!, OPTIONS)!.text).toContain('80 % of 100');
  // What was asked for once is known from then on.
  expect(list(8, 9).map(({ text }) => text !== undefined)).toEqual([false, false, true]);
  expect(list(0, 9).map(({ text }) => text !== undefined)).toEqual([true, true, true]);
});
