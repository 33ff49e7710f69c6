import { ChangeLog } from '@plimsoll/language/practice/change-log';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

describe('the days from which on sessions changed', () => {
  test('an edit says nothing of the days before it', () => {
    const log = new ChangeLog();
    log.note(1, 10);
    log.note(2, 20);
    expect([
      log.hasChanged(1, 19),
      log.hasChanged(1, 20),
      log.hasChanged(0, 10),
      log.hasChanged(2, 99),
    ]).toEqual([false, true, true, false]);
  });

  test('never misses a change, and tells few days exactly', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 300 }), { maxLength: 300 }),
        fc.nat(300),
        fc.nat(300),
        (days, since, lastDay) => {
          const log = new ChangeLog();
          for (const [edition, day] of days.entries()) log.note(edition + 1, day);
          const hasChanged = days.slice(since).some((day) => day <= lastDay);
          if (hasChanged || days.length <= 64) expect(log.hasChanged(since, lastDay)).toBe(hasChanged);
        },
      ),
    );
  });

  test('stays small however many edits follow one another in order of days', () => {
    const log = new ChangeLog();
    for (let day = 1; day <= 10_000; day++) log.note(day, day);
    expect(JSON.stringify(log).length).toBeLessThan(3000);
    expect([log.hasChanged(9_990, 9_990), log.hasChanged(9_990, 9_991)]).toEqual([false, true]);
  });
});
