import { diffTexts } from '@plimsoll/language/revisions/diff-texts';
import { printTextChange } from '@plimsoll/language/revisions/outline-revision';
import { expect, test } from 'vitest';

test.each<[title: string, before: string[], after: string[], expected: string[]]>([
  ['the same in another order', ['at Loft', 'weeks 6'], ['weeks 6', 'at Loft'], []],
  ['another value', ['weeks 6', 'at Loft'], ['weeks 8', 'at Loft'], ['weeks 6 → 8']],
  [
    'another word behind the same',
    ['deload week 4, sets 50%'],
    ['deload week 4, sets 60%'],
    ['deload week 4, sets 50% → 60%'],
  ],
  ['another number of rounds', ['3 rounds', 'rest 1:00'], ['4 rounds', 'rest 1:00'], ['3 rounds → 4 rounds']],
  ['more behind it', ['at Loft'], ['at Loft North'], ['at Loft → Loft North']],
  ['one that is new, one that is gone', ['born 1990'], ['units lb'], ['- born 1990', '+ units lb']],
  [
    'the max of each movement by itself',
    ['max Dip: bw+10 kg', 'max Back Squat: 100 kg'],
    ['max Back Squat: 105 kg', 'max Dip: bw+10 kg'],
    ['max Back Squat: 100 kg → 105 kg'],
  ],
  [
    'several of one word, which cannot be told apart',
    ['avoid Dip', 'avoid squat'],
    ['avoid lunge'],
    ['- avoid Dip', '- avoid squat', '+ avoid lunge'],
  ],
  ['one of two alike', ['> tired', '> tired'], ['> tired'], ['- > tired']],
])('%s', (_title, before, after, expected) => {
  expect(diffTexts(before, after).map(printTextChange)).toEqual(expected);
});
