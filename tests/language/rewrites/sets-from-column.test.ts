import {
  turnRowsIntoKilograms,
  turnRowsIntoPounds,
  turnRowsIntoSets,
} from '@plimsoll/language/rewrites/sets-from-column';
import { describe, expect, test } from 'vitest';
import { applyRewrite, listErrors, rewriteLog } from '../support/apply-rewrite.ts';

const HEAD = 'units kg\n\nsession 2026-11-17\n';

const turn = (rows: string, head = HEAD): string | undefined =>
  rewriteLog(turnRowsIntoSets, `${head}${rows}`)?.slice(head.length);

describe('rows', () => {
  test.each([
    ['of reps and loads', '<|>5\t80\n5\t82,5\n3\t85<|>\n', '  5 @ 80, 5 @ 82.5, 3 @ 85\n'],
    [
      'behind a movement',
      '  Back Squat:\n<|>5\t80\n5\t85\n<|>  effort 7\n',
      '  Back Squat: 5 @ 80, 5 @ 85\n  effort 7\n',
    ],
    ['of reps alone', '  Dip:\n<|>5\n\n4\n3<|>', '  Dip: 5, 4, 3'],
    ['with RPE', '  Back Squat:\n<|>5\t80\t7,5\n5\t85\t8<|>', '  Back Squat: 5 @ 80 rpe 7.5, 5 @ 85 rpe 8'],
    ['with names', '<|>Row\t8\t40\nRow\t8\t40\nDip\t5\t\nDip\t4<|>', '  Row: 8 @ 40, 8 @ 40\n  Dip: 5, 4'],
    [
      'with units and other gaps',
      '  Row:\n<|>8; 40 kg\n8   45KG\n7 45<|>',
      '  Row: 8 @ 40 kg, 8 @ 45 kg, 7 @ 45',
    ],
  ])('%s', (_name, before, after) => {
    expect(turn(before)).toBe(after);
  });

  test.each([
    ['one row', '<|>5\t80<|>'],
    ['a row that is read already', '<|>Dip: 5\n5\t80<|>'],
    ['words', '<|>Reps\tLoad\n5\t80<|>'],
    ['four columns', '<|>5\t80\t7\t1\n5\t80\t7\t1<|>'],
    ['a third column that is no RPE', '<|>5\t80\t12\n5\t80\t7<|>'],
  ])('not %s', (_name, rows) => expect(turn(rows)).toBeUndefined());
});

test('the coach says the unit where nothing else does', () => {
  const text = 'session 2026-11-17\n  Row:\n<|>8\t40\n8\t45<|>\n';
  expect(applyRewrite(turnRowsIntoSets, text)).toBeUndefined();
  const kilograms = applyRewrite(turnRowsIntoKilograms, text)!;
  expect(kilograms).toMatchObject({ title: 'Turn these rows into sets, in kg', kind: 'quickfix' });
  expect(kilograms.files['log.plim']).toBe('session 2026-11-17\n  Row: 8 @ 40, 8 @ 45 kg\n');
  expect(rewriteLog(turnRowsIntoPounds, text)).toBe('session 2026-11-17\n  Row: 8 @ 40, 8 @ 45 lb\n');
  expect(listErrors(kilograms.files['log.plim']!)).toEqual([]);
  expect(applyRewrite(turnRowsIntoKilograms, HEAD + text.split('\n').slice(1).join('\n'))).toBeUndefined();
});
