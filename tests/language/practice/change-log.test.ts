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

  test('an edit of some movements says nothing of others, and one of all says something of each', () => {
    const log = new ChangeLog();
    const [rows, carries] = [new Set(['row']), new Set(['carry'])];
    log.note(1, 10, rows);
    expect([log.hasChanged(0, 10, rows), log.hasChanged(0, 10, carries), log.hasChanged(0, 10)]).toEqual([
      true,
      false,
      true,
    ]);
    log.note(2, 20);
    expect(log.hasChanged(0, 20, carries)).toBe(true);
    expect(log.hasChanged(0, 20, new Set())).toBe(true);
    expect(log.hasChanged(0, 19, carries)).toBe(false);
  });

  test('never misses a change, and tells few of them exactly', () => {
    const movements = fc.option(fc.uniqueArray(fc.constantFrom('a', 'b', 'c')), { nil: undefined });
    const change = fc.tuple(fc.integer({ min: 0, max: 300 }), movements);
    const toSet = (keys: string[] | undefined) => keys && new Set(keys);
    fc.assert(
      fc.property(
        fc.array(change, { maxLength: 300 }),
        fc.nat(300),
        fc.nat(300),
        movements,
        (changes, since, lastDay, asked) => {
          const log = new ChangeLog();
          for (const [index, [day, keys]] of changes.entries()) log.note(index + 1, day, toSet(keys));
          const hasChanged = changes
            .slice(since)
            .some(
              ([day, keys]) => day <= lastDay && (!keys || !asked || keys.some((key) => asked.includes(key))),
            );
          const found = log.hasChanged(since, lastDay, toSet(asked));
          if (hasChanged || changes.length <= 64) expect(found).toBe(hasChanged);
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
