import { expect, test } from 'vitest';
import { describeLenses } from '../../../language/src/summaries/file-lenses.ts';
import { makeReport } from '../../../language/src/summaries/report.ts';
import { practiceOf } from '../measures/practice-of.ts';

const PLAN = `athlete Hesper Quillon
plan Copper Autumn
  weeks 4
  day 1
    A straight
      Back Squat: 5x3 @ 60 kg
    B superset, 3 rounds
      Split Squat: 8/side @ 2x10 kg
      Dip: 8
`;
const OPTIONS = { today: '2026-11-24', formula: 'epley', unit: 'kg', complete: true } as const;

function open(lines: readonly string[]) {
  const session = [
    'session 2026-11-02 Hesper Quillon, Copper Autumn week 1 day 1',
    ...lines.map((line) => `  ${line}`),
  ];
  return practiceOf(`${PLAN}${session.join('\n')}\n`);
}

const headline = (...lines: string[]): string | undefined =>
  describeLenses(open(lines).works, 'log.plim', OPTIONS).find(({ kind }) => kind === 'session')?.text;

const SQUAT = ['A straight', '  Back Squat: 5x3 @ 60 kg'];
const PAIR = ['B superset, 3 rounds', '  Split Squat: 8/side @ 2x10 kg', '  Dip: 8'];

// The plan asks for 5 + 3 + 3 sets.
test.each<[string, string[], RegExp]>([
  ['all of it', [...SQUAT, ...PAIR], /^done 11 of 11 planned sets · /],
  // 15 x 60 and 3 x 16 x 20 kg are planned, 1 860 kg; 180 kg are not done, or 960, or 720 of them with the goblet.
  [
    'a set less',
    ['A straight', '  Back Squat: 4x3 @ 60 kg', ...PAIR],
    /^done 10 of 11 planned sets, 10 % under the planned volume · /,
  ],
  [
    'as many sets, fewer reps',
    ['A straight', '  Back Squat: 3, 3, 3, 3, 2 @ 60 kg', ...PAIR],
    /, 3 % under the planned volume · /,
  ],
  [
    'one left out',
    [...SQUAT, 'B straight', '  Dip: 3x8'],
    /^done 8 of 11 planned sets, 52 % under the planned volume, Split Squat left out · /,
  ],
  [
    'one swapped',
    [...SQUAT, 'B superset, 3 rounds', '  Goblet Squat: 8 @ 10 kg, instead of Split Squat', '  Dip: 8'],
    /^done 11 of 11 planned sets, 39 % under the planned volume, Split Squat swapped · /,
  ],
  [
    'more than asked for',
    [...SQUAT, ...PAIR, 'C straight', '  Plank: 2x30 s'],
    /^done 11 of 11 planned sets, 2 sets more · /,
  ],
  ['missed', ['missed, cold'], /^missed: cold · done 0 of 11 planned sets$/],
])('%s', (_name, lines, expected) => {
  expect(headline(...lines)).toMatch(expected);
});

test('a session without a plan says its sets', () => {
  const { works } = practiceOf('session 2026-11-02\n  Dip: 3x8\n');
  expect(describeLenses(works, 'log.plim', OPTIONS)[0]!.text).toMatch(/^3 working sets/);
});

test('the report has it too, with how it was made', () => {
  const { works } = open([...SQUAT, 'B straight', '  Dip: 3x8']);
  const [session] = makeReport(works, { ...OPTIONS, today: '2026-11-02' }).athletes[0]!.weeks[0]!.sessions;
  expect(session!.text).toMatch(
    /^done 8 of 11 planned sets, 52 % under the planned volume, Split Squat left out/,
  );
  const [adherence, volume] = session!.numbers.filter(({ method }) => method === 'adherence');
  expect(adherence).toMatchObject({ unit: '%', omitted: [{ what: 'Split Squat', why: 'none of 3 sets' }] });
  expect(adherence!.value).toBeCloseTo((8 / 11) * 100, 10);
  expect(volume).toMatchObject({
    inputs: [
      { label: 'done', value: 900, unit: 'kg' },
      { label: 'planned', value: 1860, unit: 'kg' },
    ],
    omitted: [{ what: 'Dip', why: 'no kilograms are planned, or they are not known' }],
  });
  expect(session!.plan.map(({ of, text }) => `${of}: ${text}`)).toEqual([
    'plan B superset: Split Squat left out',
  ]);
});
