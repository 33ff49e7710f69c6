import { expect, test } from 'vitest';
import { printAgain } from './print-again.ts';

test('an exercise prints in the order of the reference', () => {
  const lines = [
    'pattern squat',
    'work strength',
    'position standing',
    'trunk resists flexion, rotation',
    'trunk moves extension',
    'muscles quadriceps, adductors 1/2',
    'needs kettlebell, box',
    'each rep moves both',
    'bodyweight 69%, a table, second edition',
    'counts contacts',
    'also KB Sea Squat, Sea Squat',
    'easier Box Sea Squat',
    'harder Deep Sea Squat',
    'setup Heels on wedge #2, # is text',
    'cue In this order: elbows, knees',
    'caution Stop at knee pain',
    '> shown to the coach',
  ];
  expect(printAgain('exercise Kettlebell Sea Squat', lines.toReversed().join('\n'))).toBe(
    [...lines.slice(0, 3), lines[4], lines[3], ...lines.slice(5)].join('\n'),
  );
});
