import { expect, test } from 'vitest';
import { rememberByHistory, rememberByWorks } from '../../../language/src/measures/remember.ts';
import { practiceOf } from './practice-of.ts';

const NAME = 'Ignatius Mossop';
const SESSION = `session 2026-03-02 ${NAME}\n  Press Up: 10\n`;

test('is computed once until a session or a definition changes', () => {
  const { practice } = practiceOf(SESSION);
  let times = 0;
  const read = rememberByHistory(({ sessionsOf }, athlete) => {
    times++;
    return sessionsOf.call(practice, athlete).length;
  });
  expect([read(practice, NAME), read(practice, NAME), times]).toEqual([1, 1, 1]);
  practice.setFile('log.plim', `${SESSION}session 2026-03-03 ${NAME}\n`);
  expect([read(practice, NAME), read(practice, NAME), times]).toEqual([2, 2, 2]);
  practice.setFile('other.plim', 'exercise Press Up\n');
  expect([read(practice, NAME), times]).toEqual([2, 3]);
  practice.setFile('third.plim', 'session 2026-03-03 Somebody Else\n');
  expect([read(practice, NAME), times]).toEqual([2, 3]);
});

test('variants and athletes are kept apart', () => {
  const { works } = practiceOf(`${SESSION}session 2026-03-03 Somebody Else\n`);
  let times = 0;
  const read = rememberByWorks((_works, athlete, variant) => `${athlete} ${variant} ${++times}`);
  const first = read(works, NAME, 'one');
  expect(read(works, NAME, 'two')).not.toBe(first);
  expect(read(works, 'Somebody Else', 'one')).not.toBe(first);
  expect(read(works, NAME, 'one')).toBe(first);
});
