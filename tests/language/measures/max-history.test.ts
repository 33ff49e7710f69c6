import { describe, expect, test } from 'vitest';
import { fromDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { findMaxHistory, toPlainKey, type ValidMax } from '../../../language/src/measures/max-history.ts';
import { NAME, printOmitted, printValue, readWorks } from './read-works.ts';

const MOVEMENTS = `
exercise Bar Press
  needs barbell
exercise Hang Pull
  bodyweight 95%, for the sums of this test
exercise Hand Press
  needs dumbbell
`;

function historyOf(athlete: string, log: string) {
  const { works } = readWorks(`${MOVEMENTS}\nathlete ${NAME}\n${athlete}`, log);
  return findMaxHistory(works, works.practice.sessionsOf(NAME)[0]?.athlete ?? 'ptolemy grubb', 'epley');
}

const session = (date: string, line: string): string => `session ${date} ${NAME}\n  ${line}\n`;

/** `stated 2026-01-05 100 kg` of each, in order of days. */
const list = (maxes: readonly ValidMax[] = []): string[] =>
  maxes.map(({ kind, day, result, added, perHand, boundOnly }) =>
    [
      kind,
      fromDayNumber(day),
      printValue(result),
      ...(added ? ['added'] : []),
      ...(perHand ? ['a hand'] : []),
      ...(boundOnly ? ['bounds only'] : []),
    ].join(' '),
  );

describe('maxes that were proven', () => {
  test('stated, retested and tested, in order of days', () => {
    const { proven } = historyOf(
      '  max Bar Press: 105 kg on 2026-03-01\n  max Bar Press: 100 kg on 2026-01-05\n  retest Bar Press: 101 kg, 102 kg on 2026-02-01\n',
      session('2026-02-10', 'test Bar Press: 1 @ 103 kg, 0 of 1 @ 106 kg'),
    );
    expect(list(proven.get('bar press'))).toEqual([
      'stated 2026-01-05 100 kg',
      'retested 2026-02-01 102 kg',
      'tested 2026-02-10 103 kg',
      'stated 2026-03-01 105 kg',
    ]);
  });

  test('each explains itself', () => {
    const { proven } = historyOf(
      '  max Bar Press: 100 kg on 2026-01-05\n  retest Bar Press: 102 kg, 101 kg on 2026-02-01\n',
      session('2026-02-10', 'test Bar Press: 1 @ 95 kg, 1 @ 103 kg, 1 @ 103 kg'),
    );
    expect(proven.get('bar press')!.map(({ result }) => result)).toEqual([
      {
        value: 100,
        unit: 'kg',
        bound: 'exact',
        method: 'stated-max',
        inputs: [{ label: 'stated on 2026-01-05', value: 100, unit: 'kg' }],
        omitted: [],
      },
      {
        value: 102,
        unit: 'kg',
        bound: 'exact',
        method: 'retested-max',
        inputs: [
          { label: 'test 1', value: 102, unit: 'kg' },
          { label: 'test 2', value: 101, unit: 'kg' },
        ],
        omitted: [],
      },
      {
        value: 103,
        unit: 'kg',
        bound: 'exact',
        method: 'tested-max',
        // Of two equal singles the first.
        inputs: [{ label: 'set 2: load', value: 103, unit: 'kg' }],
        omitted: [],
      },
    ]);
  });

  test('on top of the body, and of one hand', () => {
    const { proven } = historyOf(
      '  max Hang Pull: bw+20 kg on 2026-01-05\n  max Hand Press: 2x24 kg on 2026-01-05\n  max Hand Press: 26 kg on 2026-01-05\n  retest Hang Pull: 20 kg, 21 kg on 2026-02-01\n',
      '',
    );
    expect(list(proven.get('hang pull'))).toEqual([
      'stated 2026-01-05 20 kg added',
      'retested 2026-02-01 21 kg added',
    ]);
    expect(list(proven.get('hand press | two implements'))).toEqual(['stated 2026-01-05 24 kg a hand']);
    expect(list(proven.get('hand press'))).toEqual(['stated 2026-01-05 26 kg']);
    expect(toPlainKey('hand press', true)).toBe('hand press | two implements');
    expect(toPlainKey('hand press', false)).toBe('hand press');
  });

  test('of more reps than one an estimate, which a single of the same series goes before', () => {
    // 3 reps to failure: 90 x (1 + 3/30) = 99.
    const { proven } = historyOf('', session('2026-02-10', 'test Bar Press: 3 @ 90 kg'));
    expect(list(proven.get('bar press'))).toEqual(['estimated from test 2026-02-10 99 kg']);
    const both = historyOf('', session('2026-02-10', 'test Bar Press: 3 @ 90 kg, 1 @ 95 kg'));
    expect(list(both.proven.get('bar press'))).toEqual(['tested 2026-02-10 95 kg']);
    // What is no test in the same session proves nothing.
    const beside = historyOf('', session('2026-02-10', 'test Bar Press: 1 @ 90 kg\n  Bar Press: 1 @ 95 kg'));
    expect(list(beside.proven.get('bar press'))).toEqual(['tested 2026-02-10 90 kg']);
  });

  test('on one day: a proof before an estimate, else the higher', () => {
    const line = (load: number) => session('2026-02-10', `test Bar Press: 1 @ ${load} kg`);
    expect(list(historyOf('', line(100) + line(95)).proven.get('bar press'))).toEqual([
      'tested 2026-02-10 100 kg',
    ]);
    expect(list(historyOf('', line(95) + line(100)).proven.get('bar press'))).toEqual([
      'tested 2026-02-10 95 kg',
      'tested 2026-02-10 100 kg',
    ]);
    const estimated = session('2026-02-10', 'test Bar Press: 3 @ 100 kg');
    expect(list(historyOf('', estimated + line(100)).proven.get('bar press')).at(-1)).toBe(
      'tested 2026-02-10 100 kg',
    );
    expect(list(historyOf('', line(100) + estimated).proven.get('bar press'))).toEqual([
      'tested 2026-02-10 100 kg',
    ]);
  });

  test('none without a date or a load in kilograms', () => {
    const { proven } = historyOf('  max Bar Press: 100 kg\n  retest Bar Press: 100 kg, 101 kg\n', '');
    expect([...proven]).toEqual([]);
  });
});

describe('maxes that were estimated', () => {
  test('one a day, a lower one later too', () => {
    const { estimated, proven } = historyOf(
      '',
      session('2026-02-02', 'Bar Press: 3 @ 100 kg rpe 10') +
        session('2026-02-09', 'Bar Press: 3 @ 90 kg rpe 10'),
    );
    expect(list(estimated.get('bar press'))).toEqual([
      'estimated 2026-02-02 110 kg',
      'estimated 2026-02-09 99 kg',
    ]);
    expect([...proven]).toEqual([]);
    expect(printOmitted(estimated.get('bar press')![0]!.result)).toEqual([]);
  });

  test('a lower bound pushes out a higher max only after 90 days (common practice)', () => {
    const high = session('2026-01-01', 'Bar Press: 3 @ 100 kg rpe 10');
    const low = (date: string) => session(date, 'Bar Press: 3 @ 90 kg');
    expect(list(historyOf('', high + low('2026-04-01')).estimated.get('bar press'))).toEqual([
      'estimated 2026-01-01 110 kg',
    ]);
    expect(list(historyOf('', high + low('2026-04-02')).estimated.get('bar press'))).toEqual([
      'estimated 2026-01-01 110 kg',
      'estimated 2026-04-02 at least 99 kg',
    ]);
    expect(
      list(historyOf('', high + session('2026-01-08', 'Bar Press: 3 @ 110 kg')).estimated.get('bar press')),
    ).toEqual(['estimated 2026-01-01 110 kg', 'estimated 2026-01-08 at least 121 kg']);
  });

  test('known as lower bounds only, until one is rated', () => {
    const { estimated } = historyOf(
      '',
      session('2026-02-02', 'Bar Press: 3 @ 90 kg') +
        session('2026-02-09', 'Bar Press: 3 @ 100 kg') +
        session('2026-02-16', 'Bar Press: 3 @ 95 kg rpe 10') +
        session('2026-02-23', 'Bar Press: 3 @ 110 kg'),
    );
    expect(list(estimated.get('bar press'))).toEqual([
      'estimated 2026-02-02 at least 99 kg bounds only',
      'estimated 2026-02-09 at least 110 kg bounds only',
      'estimated 2026-02-16 104.5 kg',
      'estimated 2026-02-23 at least 121 kg',
    ]);
  });
});
