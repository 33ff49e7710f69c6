import { describe, expect, test } from 'vitest';
import { computePatternRatios } from '../../../language/src/measures/balance.ts';
import { NAME, printOmitted, printValue, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
exercise Barge Bench
  pattern horizontal push
  needs barbell
exercise Mast Press
  pattern vertical push
  needs barbell
exercise Barge Row
  pattern horizontal pull
  each rep moves one
  needs dumbbell
exercise Mast Pull
  pattern vertical pull
exercise Keel Squat
  pattern squat
  needs barbell
exercise Keel Hinge
  pattern hinge
  needs barbell
exercise Rail Hold
  work hold
`;

const sessionsOf = (lines: string) =>
  readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n${lines}\n`).sessions;

describe('sets of one pattern to sets of another', () => {
  test.each([
    [
      'push to pull, in all and by direction',
      '  Barge Bench: 4x5 @ 60 kg\n  Mast Press: 2x5 @ 40 kg\n  Barge Row: 3x8/side @ 20 kg\n  Mast Pull: 5x5',
      ['push : pull 0.75', 'horizontal push : pull 1.3333', 'vertical push : pull 0.4'],
    ],
    ['squat to hinge', '  Keel Squat: 6x3 @ 60 kg\n  Keel Hinge: 4x3 @ 60 kg', ['squat : hinge 1.5']],
    [
      'nothing to divide by gives no ratio',
      '  Keel Squat: 6x3 @ 60 kg\n  Barge Bench: 3x5 @ 60 kg',
      [
        'push : pull none, no pull',
        'horizontal push : pull none, no horizontal pull',
        'squat : hinge none, no hinge',
      ],
    ],
    ['nor does nothing to divide', '  Keel Hinge: 3x5 @ 60 kg', ['squat : hinge none, no squat']],
    ['and where neither was done there is no line', '  Rail Hold: 30 s', []],
  ])('%s', (_name, lines, expected) => {
    const ratios = computePatternRatios(sessionsOf(lines));
    expect(ratios.map(({ name, result }) => `${name} ${printValue(result)}`)).toEqual(expected);
  });

  test('names what it left out', () => {
    const [ratio] = computePatternRatios(sessionsOf('  Keel Squat: 3 @ 60 kg\n  Sack Heave: 5 @ 20 kg'));
    expect(printOmitted(ratio!.result)).toEqual(['Sack Heave: no definition, so its pattern is unknown']);
  });
});
