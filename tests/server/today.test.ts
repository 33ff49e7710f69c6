import { systemClock, toLocalDate } from '@plimsoll/server/today';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

beforeEach(() => {
  vi.useFakeTimers();
  vi.setSystemTime(new Date(2026, 10, 23, 23, 58, 30));
});
afterEach(() => {
  vi.useRealTimers();
});

test('today is the local day', () => {
  expect(toLocalDate(new Date(2026, 0, 5, 0, 0, 1))).toBe('2026-01-05');
  expect(systemClock({}).today()).toBe('2026-11-23');
});

test('a new day is told once, soon after midnight', () => {
  const callback = vi.fn();
  const stop = systemClock({}).onNewDay(callback);
  vi.advanceTimersByTime(60_000);
  expect(callback).not.toHaveBeenCalled();
  vi.advanceTimersByTime(10 * 60_000);
  expect(callback).toHaveBeenCalledOnce();
  stop();
  vi.advanceTimersByTime(48 * 3_600_000);
  expect(callback).toHaveBeenCalledOnce();
});

test('a day that the environment names never ends; what is no day is ignored', () => {
  const clock = systemClock({ PLIMSOLL_TODAY: '2026-11-24' });
  const callback = vi.fn();
  clock.onNewDay(callback);
  vi.advanceTimersByTime(48 * 3_600_000);
  expect(clock.today()).toBe('2026-11-24');
  expect(callback).not.toHaveBeenCalled();
  expect(systemClock({ PLIMSOLL_TODAY: '2026-02-30' }).today()).toBe('2026-11-25');
});
