import { describe, expect, test } from 'vitest';
import { listPlannedSets, takeWeek } from '../../../language/src/measures/planned-sets.ts';
import { foldName } from '../../../language/src/text/names.ts';
import { practiceOf } from './practice-of.ts';

function planned(properties: string, lines: string, week: number): string[] {
  const { practice } = practiceOf(`plan Gorse Winter\n${properties}\n  day 1\n${lines}\n`);
  const { entry } = practice.findPlan('Gorse Winter')!;
  const { lines: found, omitted } = listPlannedSets(entry, entry.days[0]!, week, foldName);
  return [
    ...found.map(({ line, sets }) => `${line.name.text} ${sets ?? 'open'}`),
    ...omitted.map(({ what, why }) => `${what}: ${why}`),
  ];
}

describe('sets of a plan’s day', () => {
  test.each<[string, string, number, string[]]>([
    [
      'of each line',
      '    Bar Press: 3x5 @ 70%\n    Long Hinge: 8, 8 @ 60 kg',
      1,
      ['Bar Press 3', 'Long Hinge 2'],
    ],
    ['of the week’s cell', '    Bar Press: 3x5 @ 70% | 4x4 @ 75% | 1x2 @ 60%', 2, ['Bar Press 4']],
    [
      'from the first cell again when the plan is longer',
      '    Bar Press: 3x5 @ 70% | 4x4 @ 75%',
      5,
      ['Bar Press 3'],
    ],
    [
      'rounds times passes',
      '    circuit, 3 rounds x 2 passes\n      Bar Press: 5 @ 20 kg',
      1,
      ['Bar Press 6'],
    ],
    [
      'without warm-up',
      '    warmup\n      Bar Press: 5 @ 20 kg\n    straight\n      warmup Bar Press: 5 @ 40 kg\n      Bar Press: 2x5 @ 60 kg',
      1,
      ['Bar Press 2'],
    ],
    ['open in an amrap', '    amrap 10:00\n      Press Up: 10', 1, ['Press Up open']],
    [
      'a line for this week replaces the other',
      '    Bar Press: 3x5 @ 70%\n    week 3 test Bar Press: 1 @ 100%',
      3,
      ['Bar Press 1'],
    ],
    [
      'in its own week alone',
      '    Bar Press: 3x5 @ 70%\n    week 3 test Bar Press: 1 @ 100%',
      2,
      ['Bar Press 3'],
    ],
    [
      'or adds to it, under another name',
      '    Bar Press: 3x5 @ 70%\n    week 3 Long Hinge: 2x5 @ 60 kg',
      3,
      ['Bar Press 3', 'Long Hinge 2'],
    ],
    [
      'and its warm-up stays',
      '    Bar Press: 3x5 @ 70%\n    week 3 warmup Bar Press: 5 @ 40 kg',
      3,
      ['Bar Press 3'],
    ],
    [
      'with a set more each week: two steps before week 3',
      '    Bar Press: 3x5 @ 70%, +1 set each week',
      3,
      ['Bar Press 5'],
    ],
    ['up to a bound', '    Bar Press: 3x5 @ 70%, +1 set each week to 4', 6, ['Bar Press 4']],
    ['down to a bound', '    Bar Press: 5x5 @ 70%, -1 set each week to 2', 6, ['Bar Press 2']],
    ['never below one', '    Bar Press: 2x5 @ 70%, -1 set each week', 6, ['Bar Press 1']],
    ['or each session', '    Bar Press: 3x5 @ 70%, +1 set each session', 3, ['Bar Press 5']],
    [
      'a step of sets that does not say how often is named and not taken',
      '    Bar Press: 3x5 @ 70%, +1 set',
      3,
      ['Bar Press 3', 'Bar Press: its step of sets is not counted'],
    ],
    [
      'and so is one where rounds decide the sets',
      '    circuit, 2 rounds\n      Bar Press: 5 @ 20 kg, +1 set each week',
      3,
      ['Bar Press 2', 'Bar Press: its step of sets is not counted'],
    ],
    ['a step of reps changes no sets', '    Bar Press: 3x5 @ 70%, +1 rep each week', 3, ['Bar Press 3']],
  ])('%s', (_name, lines, week, expected) => {
    expect(planned('  weeks 8', lines, week)).toEqual(expected);
  });

  test.each<[string, string, number, string[]]>([
    // 5 × 50 % = 2.5 and 1 × 50 % = 0.5, both up; the same in rounds.
    ['takes its share, up', 'sets 50%', 4, ['Bar Press 3', 'Long Hinge 1', 'Press Up 2']],
    ['never less than one', 'sets 1%', 4, ['Bar Press 1', 'Long Hinge 1', 'Press Up 1']],
    ['of load alone keeps the sets', 'load 90%', 4, ['Bar Press 5', 'Long Hinge 1', 'Press Up 3']],
    ['is one week', 'sets 50%', 3, ['Bar Press 5', 'Long Hinge 1', 'Press Up 3']],
  ])('a deload %s', (_name, share, week, expected) => {
    const lines =
      '    Bar Press: 5x5 @ 70%\n    Long Hinge: 8 @ 60 kg\n    circuit, 3 rounds\n      Press Up: 10';
    expect(planned(`  weeks 8\n  deload week 4, ${share}`, lines, week)).toEqual(expected);
  });

  test('a deload takes no step', () => {
    // Before week 4 are weeks 1 and 3: two steps.
    const step = '    Bar Press: 3x5 @ 70%, +1 set each week';
    expect(planned('  weeks 8\n  deload week 2, sets 50%', step, 4)).toEqual(['Bar Press 5']);
  });
});

test('a week’s blocks have one cell for each line', () => {
  const { practice } = practiceOf(
    'plan Gorse Winter\n  day 1\n    Bar Press: 3x5 @ 60 kg | 4x4 @ 70 kg\n    week 2 Long Hinge: 5 @ 80 kg\n',
  );
  const [day] = practice.findPlan('Gorse Winter')!.entry.days;
  const cells = (week: number) =>
    takeWeek(day!, week, foldName).flatMap((block) =>
      block.lines.map(
        (line) => `${line.name.text} ${line.cells.map((cell) => cell.sets[0]!.count).join('|')}`,
      ),
    );
  expect(cells(1)).toEqual(['Bar Press 3']);
  expect(cells(2)).toEqual(['Bar Press 4', 'Long Hinge 1']);
});
