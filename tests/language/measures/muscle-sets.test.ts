import { describe, expect, test } from 'vitest';
import {
  countSetsByMuscle,
  countSetsByPattern,
  type SetCounts,
} from '../../../language/src/measures/muscle-sets.ts';
import { NAME, printOmitted, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
exercise Barge Bench
  pattern horizontal push
  muscles chest, triceps 1/2, front deltoids 1/2
  needs barbell
exercise Pontoon Dip
  pattern vertical push
  muscles chest, triceps 1/2
exercise Elbow Line
  pattern isolation
  muscles Triceps
  needs cable
exercise Keel Squat
  pattern squat
  muscles quads, glutes, hamstrings 1/4
  needs barbell
exercise Plain Thing
`;

function read(
  count: (sessions: ReturnType<typeof readWorks>['sessions']) => SetCounts,
  log: string,
): string[] {
  const { sessions } = readWorks(DEFINITIONS, log);
  const found = count(sessions);
  return [...found.counts.map(({ name, result }) => `${name} ${result.value}`), ...printOmitted(found)];
}

const session = (lines: string, date = '2026-02-02'): string => `session ${date} ${NAME}\n${lines}\n`;

describe('hard sets of each muscle', () => {
  // Pelland JC et al. (2024), counted as in their method: 4 bench and 3 dip sets, both indirect, and 3 direct ones
  // give the triceps 3 direct, 6.5 fractional, 10 in all.
  test('by fractional counting', () => {
    const log = session('  Barge Bench: 4x8 @ 60 kg\n  Pontoon Dip: 3x8\n  Elbow Line: 3x12 @ 20 kg');
    expect(read(countSetsByMuscle, log)).toEqual(['chest 7', 'triceps 6.5', 'front deltoids 2']);
    const { counts } = countSetsByMuscle(readWorks(DEFINITIONS, log).sessions);
    const triceps = counts.find(({ name }) => name === 'triceps')!.result;
    expect(triceps.inputs.map(({ label, value }) => `${label} ${value}`)).toEqual([
      'Barge Bench (counts 0.5) 4',
      'Pontoon Dip (counts 0.5) 3',
      'Elbow Line 3',
      'direct 3',
      'direct and indirect 10',
    ]);
  });

  test.each([
    [
      'other spellings are one muscle',
      '  Keel Squat: 4x5 @ 60 kg',
      ['glutes 4', 'quadriceps 4', 'hamstrings 1'],
    ],
    [
      'only hard sets',
      '  Keel Squat: 5 @ 60 kg rir 5, 5 @ 80 kg rir 2',
      ['glutes 1', 'quadriceps 1', 'hamstrings 0.25'],
    ],
    ['no warm-up', '  warmup Keel Squat: 5 @ 40 kg', []],
    ['each round of a circuit', '  circuit, 3 rounds\n    Pontoon Dip: 8', ['chest 3', 'triceps 1.5']],
    [
      'what has no definition is named',
      '  Sack Heave: 3x5 @ 20 kg\n  Plain Thing: 2x5',
      [
        'Sack Heave: no definition, so its muscles are unknown',
        'Plain Thing: its definition names no muscles',
      ],
    ],
    [
      'and once',
      '  Sack Heave: 5 @ 20 kg\n  sack heave: 5 @ 20 kg',
      ['Sack Heave: no definition, so its muscles are unknown'],
    ],
    ['a skipped line counts nothing', '  Keel Squat: skipped', []],
  ])('%s', (_name, lines, expected) => {
    expect(read(countSetsByMuscle, session(lines))).toEqual(expected);
  });

  test('over the sessions of a week', () => {
    const log = session('  Pontoon Dip: 3x8') + session('  Pontoon Dip: 2x8', '2026-02-04');
    expect(read(countSetsByMuscle, log)).toEqual(['chest 5', 'triceps 2.5']);
  });
});

describe('working sets of each pattern', () => {
  test.each([
    [
      'rated far from failure too',
      '  Keel Squat: 2x5 @ 60 kg rir 6\n  Barge Bench: 3x5 @ 60 kg\n  Pontoon Dip: 3x8',
      ['horizontal push 3', 'vertical push 3', 'squat 2'],
    ],
    [
      'what has none is named',
      '  Plain Thing: 5\n  Sack Heave: 5 @ 20 kg',
      [
        'Plain Thing: its definition names no pattern',
        'Sack Heave: no definition, so its pattern is unknown',
      ],
    ],
  ])('%s', (_name, lines, expected) => {
    expect(read(countSetsByPattern, session(lines))).toEqual(expected);
  });
});
