import { Memo } from '@plimsoll/language/text/memo';
import { expect, test } from 'vitest';

/** What is asked for in turn, and how often each was made. */
function listMade(most: number, ...asked: string[]): string[] {
  const made: string[] = [];
  const memo = new Memo((text) => {
    made.push(text);
    return text === 'nothing' ? undefined : text.toUpperCase();
  }, most);
  for (const text of asked) expect(memo.of(text)).toBe(text === 'nothing' ? undefined : text.toUpperCase());
  return made;
}

test('each is made once, that there is none too', () => {
  expect(listMade(9, 'plank', 'dip', 'plank', 'nothing', 'nothing')).toEqual(['plank', 'dip', 'nothing']);
});

test('where there are too many all are made anew', () => {
  expect(listMade(2, 'plank', 'dip', 'row', 'dip', 'row')).toEqual(['plank', 'dip', 'row', 'dip']);
});

test('what was forgotten is made anew', () => {
  let made = 0;
  const memo = new Memo(() => ++made);
  expect([memo.of('plank'), memo.of('plank')]).toEqual([1, 1]);
  memo.forget();
  expect(memo.of('plank')).toBe(2);
});
