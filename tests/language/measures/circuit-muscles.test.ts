import { expect, test } from 'vitest';
import { findRepeatedMuscles } from '../../../language/src/measures/circuit-muscles.ts';
import { NAME, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
exercise Keel Squat
  muscles quads, glutes, hamstrings 1/2
exercise Plank Step
  muscles quadriceps, hamstrings 1/2
exercise Keel Hinge
  muscles hamstrings, glutes
exercise Barge Push
  muscles chest, triceps 1/2
exercise Hip Opener
  work mobility
  muscles glutes
`;

test.each([
  [
    'two lines for one muscle, whatever its spelling',
    'circuit, 3 rounds\n    Keel Squat: 8\n    Barge Push: 8\n    Plank Step: 8',
    ['quadriceps 2: Keel Squat, Plank Step'],
  ],
  [
    'several muscles, and only what is loaded directly',
    'circuit, 3 rounds\n    Keel Squat: 8\n    Plank Step: 8\n    Keel Hinge: 8',
    ['quadriceps 2: Keel Squat, Plank Step', 'glutes 2: Keel Squat, Keel Hinge'],
  ],
  [
    'one movement twice',
    'superset, 3 rounds\n    Barge Push: 8\n    Barge Push: 5',
    ['chest 2: Barge Push, Barge Push'],
  ],
  [
    'passes repeat every muscle and say nothing',
    'circuit, 3 rounds x 2 passes\n    Keel Squat: 8\n    Barge Push: 8',
    [],
  ],
  ['a skipped line is not done', 'circuit, 3 rounds\n    Keel Squat: 8\n    Plank Step: skipped', []],
  ['a stretch loads nothing', 'circuit, 3 rounds\n    Keel Squat: 8\n    Hip Opener: 30 s', []],
  ['straight sets have no rounds', 'straight\n    Keel Squat: 3x8\n    Plank Step: 3x8', []],
  [
    'taking turns they share none',
    'every 1:00 for 4:00, alternating\n    Keel Squat: 8\n    Plank Step: 8',
    [],
  ],
  ['warm-up lines are left out', 'circuit, 3 rounds\n    Keel Squat: 8\n    warmup Plank Step: 8', []],
  [
    'what has no definition is named',
    'circuit, 3 rounds\n    Keel Squat: 8\n    Sack Heave: 8\n    Plank Step: 8',
    ['quadriceps 2: Keel Squat, Plank Step', 'left out Sack Heave'],
  ],
])('%s', (_name, block, expected) => {
  const { works, sessions } = readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n  ${block}\n`);
  const find = (name: string) => works.practice.findMovement(name);
  const { muscles, omitted } = findRepeatedMuscles(find, sessions[0]!.blocks[0]!.block);
  expect([
    ...muscles.map(({ muscle, movements, result }) => `${muscle} ${result.value}: ${movements.join(', ')}`),
    ...omitted.map(({ what }) => `left out ${what}`),
  ]).toEqual(expected);
});
