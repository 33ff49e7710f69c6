import { describe, expect, test } from 'vitest';
import { compareSides } from '../../../language/src/measures/side-balance.ts';
import { NAME, printValue, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
  bodyweight 80 kg on 2026-01-01
exercise Barge Row
  each rep moves one
  needs dumbbell
exercise One Leg Rise
  bodyweight 50%, for the sums of this test
exercise Deck Carry
  work carry
exercise Rail Hold
  work hold
`;

const sessionsOf = (lines: string) =>
  readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n${lines}\n`).sessions;

describe('left to right', () => {
  test.each([
    // 8 left and 6 right at 30 kg: 8/6; 240 against 180 kg.
    [
      'other reps',
      '  Barge Row: 8 left 6 right @ 30 kg',
      ['Barge Row 8 : 6 reps, 1.3333', '240 : 180 kg, 1.3333'],
    ],
    // The even sets of the movement count too: 8 + 10 against 6 + 10.
    [
      'with the even sets of the same movement',
      '  Barge Row: 8 left 6 right, 10/side @ 30 kg',
      ['Barge Row 18 : 16 reps, 1.125', '540 : 480 kg, 1.125'],
    ],
    [
      'other loads',
      '  Barge Row: 10/side @ 30 kg left 20 kg right',
      ['Barge Row 10 : 10 reps, 1', '300 : 200 kg, 1.5'],
    ],
    // Half of 80 kg rides on each rep.
    [
      'the body counts on both',
      '  One Leg Rise: 5 left 4 right',
      ['One Leg Rise 5 : 4 reps, 1.25', '200 : 160 kg, 1.25'],
    ],
    [
      'less the help',
      '  One Leg Rise: 5 left 4 right @ bw-10 kg',
      ['One Leg Rise 5 : 4 reps, 1.25', '150 : 120 kg, 1.25'],
    ],
    ['holds in seconds', '  Rail Hold: 40 s left 30 s right', ['Rail Hold 40 : 30 s, 1.3333']],
    [
      'a side without a rep gives no ratio',
      '  Barge Row: 8 left 0 right @ 30 kg',
      ['Barge Row 8 : 0 reps, none', '240 : 0 kg, none'],
    ],
    // 24 x 30 = 720 against 20 x 30 = 600 kg·m.
    [
      'carries in kilogram-metres',
      '  Deck Carry: 30 m/side @ 24 kg left 20 kg right',
      ['Deck Carry 30 : 30 m, 1', '720 : 600 kg·m, 1.2'],
    ],
    ['what evens out is no difference', '  Barge Row: 8 left 6 right, 6 left 8 right @ 30 kg', []],
    ['even sides are no difference', '  Barge Row: 8/side @ 30 kg', []],
    ['reps without sides say nothing', '  Barge Row: 8 @ 30 kg', []],
    ['nor do warm-ups', '  warmup Barge Row: 8 left 6 right @ 30 kg', []],
  ])('%s', (_name, lines, expected) => {
    const shown = compareSides(sessionsOf(lines)).flatMap(({ movement, amount, volume }) =>
      [amount, volume].flatMap((result, index) => {
        if (!result) return [];
        const [left, right] = result.inputs;
        const ratio = printValue({ ...result, remark: undefined });
        const lead = index === 0 ? `${movement} ` : '';
        return `${lead}${left!.value} : ${right!.value} ${left!.unit}, ${ratio}`;
      }),
    );
    expect(shown).toEqual(expected);
  });
});

describe('the sides explain themselves', () => {
  test('in the unit of what was done, and in kilograms', () => {
    const [row] = compareSides(sessionsOf('  Barge Row: 8 left 6 right @ 30 kg'));
    expect(row).toMatchObject({ key: 'barge row', movement: 'Barge Row' });
    expect(row!.amount).toMatchObject({
      method: 'left-right',
      unit: '',
      inputs: [
        { label: 'left', value: 8, unit: 'reps' },
        { label: 'right', value: 6, unit: 'reps' },
      ],
    });
    expect(row!.volume).toMatchObject({
      method: 'left-right',
      inputs: [
        { label: 'left', value: 240, unit: 'kg' },
        { label: 'right', value: 180, unit: 'kg' },
      ],
    });
  });

  test('of a hold in seconds alone, whatever was held', () => {
    const [row] = compareSides(sessionsOf('  Rail Hold: 30 s left 20 s right @ 10 kg'));
    expect(row!.amount.inputs.map(({ value, unit }) => [value, unit])).toEqual([
      [30, 's'],
      [20, 's'],
    ]);
    expect(row!.volume).toBeUndefined();
  });

  test('each measure of a movement by itself', () => {
    const rows = compareSides(
      sessionsOf('  Deck Carry: 20 m left 10 m right @ 20 kg, 8 left 6 right @ 20 kg'),
    );
    expect(rows.map(({ amount }) => amount.inputs[0]!.unit)).toEqual(['m', 'reps']);
    expect(rows[0]!.volume!.inputs[0]).toEqual({ label: 'left', value: 400, unit: 'kg·m' });
  });

  test('without the body where a band takes off nobody knows how much of it, or nobody weighed it', () => {
    const [helped] = compareSides(sessionsOf('  One Leg Rise: 5 left 4 right @ bw-red band'));
    expect(helped!.amount.value).toBeCloseTo(1.25, 12);
    expect(helped!.volume).toBeUndefined();
    const early = readWorks(
      DEFINITIONS,
      `session 2025-12-31 ${NAME}\n  One Leg Rise: 5 left 4 right\n`,
    ).sessions;
    expect(compareSides(early)[0]!.volume).toBeUndefined();
  });

  test('sets that are not written for each side say nothing', () => {
    expect(
      compareSides(sessionsOf('  Barge Row: 8 left 6 right @ 30 kg, 11 @ 30 kg'))[0]!.amount.inputs[0]!.value,
    ).toBe(8);
  });
});
