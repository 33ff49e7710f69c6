import { describe, expect, test } from 'vitest';
import { compareRounds } from '../../../language/src/measures/round-changes.ts';
import { printNumber, printSigned } from '../../../language/src/units/number.ts';
import { lastWork, practiceOf } from './practice-of.ts';

const NAME = 'Lavinia Thimble';
const DEFINITIONS = `
athlete Lavinia Thimble
  bodyweight 60 kg on 2026-01-01
exercise Bar Press
  needs barbell
exercise Press Up
  bodyweight 50%, for the sums of this test
exercise Stack Pull
  needs cable
exercise Ring Fold
  position prone
`;

/** `1 -10 s, +9.09 %` for each round that can be compared, and why the others cannot. */
function changes(before: string, now: string): string[] {
  const { works } = practiceOf(
    `${DEFINITIONS}\nsession 2026-03-02 ${NAME}\n${before}\nsession 2026-03-09 ${NAME}\n${now}\n`,
  );
  const work = lastWork(works, NAME);
  const compared = compareRounds(works, work, work.record.entry.blocks[0]!);
  if (!compared) return ['nothing'];
  const rounds = compared.rounds.map(({ round, time, density }) => {
    const change = density ? `${printSigned(density.value!, 2)} %` : 'no density';
    return `${round} ${printNumber(time.value!)} s, ${change}`;
  });
  return [...rounds, ...compared.omitted.map(({ what, why }) => `${what}: ${why}`)];
}

const circuit = (press: string, times: string, rounds = 2): string =>
  `  circuit, ${rounds} rounds\n    Bar Press: ${press}\n    Press Up: 10\n    time ${times}`;

describe('round by round', () => {
  test.each<[string, string, string, string[]]>([
    [
      // The work is the same, so 120 / 110 = 1.0909 and 130 / 140 = 0.9286.
      'times and densities of equal work',
      circuit('10 @ 40 kg', '2:00, 2:10'),
      circuit('10 @ 40 kg', '1:50, 2:20'),
      ['1 -10 s, +9.09 %', '2 10 s, -7.14 %'],
    ],
    [
      // 700 kg against 800 kg in the same time: 8 / 7.
      'a heavier load',
      circuit('10 @ 40 kg', '2:00, 2:00'),
      circuit('10 @ 50 kg', '2:00, 2:00'),
      ['1 0 s, +14.29 %', '2 0 s, +14.29 %'],
    ],
    [
      'a round not timed today, or then',
      circuit('10 @ 40 kg', '2:00, ?, 2:00', 3),
      circuit('10 @ 40 kg', '?, 2:00, 2:00', 3),
      ['3 0 s, 0 %', 'round 1: not timed', 'round 2: not timed on 2026-03-02'],
    ],
    [
      'a round not done then',
      circuit('10 @ 40 kg', '2:00, 2:00'),
      circuit('10 @ 40 kg', '1:55, 2:00, 2:05', 3),
      ['1 -5 s, +4.35 %', '2 0 s, 0 %', 'round 3: not done on 2026-03-02'],
    ],
    [
      'no density where another line could be weighed',
      '  circuit, 1 rounds\n    Stack Pull: 10 @ 20 kg\n    Press Up: 10\n    time 2:00',
      '  circuit, 1 rounds\n    Stack Pull: 10 @ pin 4\n    Press Up: 10\n    time 1:50',
      ['1 -10 s, no density'],
    ],
    [
      'reps a minute where nothing is weighed: 30 / 2:00 against 33 / 2:00',
      '  circuit, 1 rounds\n    Ring Fold: 30\n    time 2:00',
      '  circuit, 1 rounds\n    Ring Fold: 33\n    time 2:00',
      ['1 0 s, +10 %'],
    ],
    [
      // 1 000 of 1 400 kg is known of the second round: at least, and more only if the bound says so.
      'a set not recorded now: less decides nothing',
      circuit('10 @ 40 kg', '2:00, 2:00'),
      circuit('10, ? @ 40 kg', '2:00, 2:00'),
      ['1 0 s, 0 %', '2 0 s, no density'],
    ],
    [
      'but more does: at least 300 kg in 0:50 against 700 kg in 2:00',
      circuit('10 @ 40 kg', '2:00, 2:00'),
      circuit('10, ? @ 40 kg', '2:00, 0:50'),
      ['1 0 s, 0 %', '2 -70 s, +2.86 %'],
    ],
    [
      'a set not recorded then: more decides nothing',
      circuit('10, ? @ 40 kg', '2:00, 2:00'),
      circuit('10 @ 40 kg', '2:00, 2:00'),
      ['1 0 s, 0 %', '2 0 s, no density'],
    ],
    [
      'nor do two lower bounds',
      circuit('10, ? @ 40 kg', '2:00, 2:00'),
      circuit('10, ? @ 40 kg', '2:00, 1:00'),
      ['1 0 s, 0 %', '2 -60 s, no density'],
    ],
    [
      'a time of nothing has no density',
      circuit('10 @ 40 kg', '2:00', 1),
      circuit('10 @ 40 kg', '0:00', 1),
      ['1 -120 s, no density'],
    ],
    [
      'another movement is another block',
      '  circuit, 1 rounds\n    Bar Press: 10 @ 40 kg\n    Ring Fold: 10\n    time 2:00',
      circuit('10 @ 40 kg', '2:00', 1),
      ['nothing'],
    ],
  ])('%s', (_name, before, now, expected) => {
    expect(changes(before, now)).toEqual(expected);
  });

  test('names what went in', () => {
    const { works } = practiceOf(
      `${DEFINITIONS}\nsession 2026-03-02 ${NAME}\n${circuit('10 @ 40 kg', '2:00', 1)}\nsession 2026-03-09 ${NAME}\n${circuit('10 @ 40 kg', '1:45', 1)}\n`,
    );
    const work = lastWork(works, NAME);
    const { earlier, rounds } = compareRounds(works, work, work.record.entry.blocks[0]!)!;
    expect(earlier.record.date).toBe('2026-03-02');
    expect(rounds[0]!.time.inputs).toEqual([
      { label: 'round 1', value: 105, unit: 's' },
      { label: '2026-03-02', value: 120, unit: 's' },
    ]);
    expect(rounds[0]!.density!.inputs).toEqual([
      { label: 'now', value: 400, unit: 'kg/min' },
      { label: '2026-03-02', value: 350, unit: 'kg/min' },
    ]);
  });
});

describe('the changes explain themselves', () => {
  const compare = (before: string, now: string) => {
    const { works } = practiceOf(
      `${DEFINITIONS}\nsession 2026-03-02 ${NAME}\n${before}\nsession 2026-03-09 ${NAME}\n${now}\n`,
    );
    const work = lastWork(works, NAME);
    return compareRounds(works, work, work.record.entry.blocks[0]!)!;
  };
  const plain = (times: string, press = '10 @ 40 kg') =>
    `  circuit, 1 rounds\n    Bar Press: ${press}\n    time ${times}`;

  test('seconds and percent, each with both days', () => {
    // 400 kg in 2:00 and in 1:40: 200 and 240 kg/min.
    const { earlier, rounds } = compare(plain('2:00'), plain('1:40'));
    expect(earlier.record.date).toBe('2026-03-02');
    expect(rounds[0]!.time).toEqual({
      value: -20,
      unit: 's',
      bound: 'exact',
      method: 'time-change',
      inputs: [
        { label: 'round 1', value: 100, unit: 's' },
        { label: '2026-03-02', value: 120, unit: 's' },
      ],
      omitted: [],
    });
    expect(rounds[0]!.density).toMatchObject({ unit: '%', method: 'change' });
    expect(rounds[0]!.density!.value).toBeCloseTo(20, 9);
    expect(rounds[0]!.density!.inputs).toEqual([
      { label: 'now', value: 240, unit: 'kg/min' },
      { label: '2026-03-02', value: 200, unit: 'kg/min' },
    ]);
  });

  test('in reps a minute where nothing has kilograms', () => {
    const fold = (reps: number) => `  circuit, 1 rounds\n    Ring Fold: ${reps}\n    time 1:00`;
    expect(
      compare(fold(10), fold(12)).rounds[0]!.density!.inputs.map(({ value, unit }) => [value, unit]),
    ).toEqual([
      [12, 'reps/min'],
      [10, 'reps/min'],
    ]);
  });

  test('what was left out of either is named', () => {
    const chained = '10 @ 40 kg + 10 kg chain';
    const why = { what: 'Bar Press', why: '10 kg of chain' };
    expect(compare(plain('2:00', chained), plain('1:40')).rounds[0]!.density!.omitted).toEqual([why]);
    expect(compare(plain('2:00'), plain('1:40', chained)).rounds[0]!.density!.omitted).toEqual([why]);
  });

  test('of the block that is asked for', () => {
    const second = `${plain('9:00')}\n  superset, 1 rounds\n    Bar Press: 10 @ 40 kg\n    time`;
    const { works } = practiceOf(
      `${DEFINITIONS}\nsession 2026-03-02 ${NAME}\n${second} 2:00\nsession 2026-03-09 ${NAME}\n${second} 1:30\n`,
    );
    const work = lastWork(works, NAME);
    expect(compareRounds(works, work, work.record.entry.blocks[1]!)!.rounds[0]!.time.value).toBe(-30);
  });
});
