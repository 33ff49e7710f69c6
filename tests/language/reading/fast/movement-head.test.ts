import { IRREGULAR } from '@plimsoll/language/reading/fast/line-cursor';
import { HeadMemo, readMovementHead } from '@plimsoll/language/reading/fast/movement-head';
import { expect, test } from 'vitest';

test.each([
  ['Back Squat', { purpose: 'work', name: 'Back Squat', nameStart: 0 }],
  ['warmup Back Squat', { purpose: 'warmup', name: 'Back Squat', nameStart: 7 }],
  ['B1  Push-up', { purpose: 'work', label: { text: 'B1', start: 0 }, name: 'Push-up', nameStart: 4 }],
  ['test A2 Row', { purpose: 'test', label: { text: 'A2', start: 5 }, name: 'Row', nameStart: 8 }],
])('%s', (text, head) => {
  expect(readMovementHead(text)).toEqual(head);
});

test.each(['', '12', 'warmup', 'warmup test Row', 'Row ', 'effort', 'A Row', 'Row, Ski', 'Pain Row'])(
  'leaves "%s" to the parser',
  (text) => {
    let thrown: unknown;
    try {
      readMovementHead(text);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBe(IRREGULAR);
  },
);

test('the same head is one fact', () => {
  const memo = new HeadMemo();
  expect(memo.of('Back Squat')).toBe(memo.of(['Back', 'Squat'].join(' ')));
});
