import { expect, test } from 'vitest';
import { computeTensionTime } from '../../../language/src/measures/time-under-tension.ts';
import { NAME, printOmitted, printValue, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
exercise Bar Press
  needs barbell
exercise Long Hold
  work hold
`;

// Worked: reps x (down + pause + up + pause); X counts one second by common practice.
test.each([
  ['3 x 5 x (3 + 1 + 1 + 0)', 'Bar Press: 3x5 @ 60 kg, tempo 3-1-1-0', '75 s', []],
  ['8 x (3 + 1 + X + 0)', 'Bar Press: 8 @ 60 kg, tempo 3-1-X-0', '40 s, X counted as 1 s', []],
  ['reps of both sides', 'Bar Press: 5/side @ 20 kg, tempo 2-0-2-0', '40 s', []],
  ['drops at the same tempo', 'Bar Press: 5 @ 60 kg drop 5 @ 40 kg, tempo 2-0-2-0', '40 s', []],
  ['only reps made', 'Bar Press: 4 of 5 @ 60 kg, tempo 2-0-2-0', '16 s', []],
  [
    'a set not recorded makes it at least',
    'Bar Press: 5, ? @ 60 kg, tempo 2-0-2-0',
    'at least 20 s',
    ['1 set: not recorded'],
  ],
  [
    'sets without a tempo are counted as left out',
    'Bar Press: 5 @ 60 kg, tempo 2-0-2-0\n  Bar Press: 2x5 @ 60 kg\n  Long Hold: 30 s',
    '20 s',
    ['2 sets: no tempo written'],
  ],
  [
    'skipped is nothing',
    'Bar Press: 5 @ 60 kg, tempo 2-0-2-0\n  Bar Press: skipped, tempo 3-0-3-0',
    '20 s',
    [],
  ],
])('%s', (_name, lines, expected, omitted) => {
  const { sessions } = readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n  ${lines}\n`);
  const result = computeTensionTime(sessions)!;
  expect(printValue(result)).toBe(expected);
  expect(printOmitted(result)).toEqual(omitted);
});

test.each([
  ['no tempo is written', 'Bar Press: 5 @ 60 kg'],
  ['only a warm-up has one', 'warmup Bar Press: 5 @ 40 kg, tempo 3-1-1-0'],
])('where %s there is none', (_name, lines) => {
  const { sessions } = readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n  ${lines}\n`);
  expect(computeTensionTime(sessions)).toBeUndefined();
});
