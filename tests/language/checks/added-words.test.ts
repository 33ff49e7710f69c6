import { expect, test } from 'vitest';
import { check, type Files, lines } from './workspace.ts';

/** What is told of one line, with the line that each fix gives. */
function tell(header: string, line: string, files: Exclude<Files, string> = {}): string[] {
  return check({ ...files, 'log.plim': lines(header, `  ${line}`) }, 'caution-max-test')
    .filter((told) => told.startsWith('log.plim'))
    .map((told) => told.replace('log.plim:', ''));
}

// Words and loads in a name that nothing defines with them.
test.each<[line: string, advice: string, fixed?: string]>([
  ['Warm up Back Squat: 5 @ 40 kg', 'the word warmup stands before the name', 'warmup Back Squat: 5 @ 40 kg'],
  [
    'Back Squat (warmup): 5 @ 40 kg',
    'the word warmup stands before the name',
    'warmup Back Squat: 5 @ 40 kg',
  ],
  [
    'Back Squat - warm up: 5 @ 40 kg',
    'the word warmup stands before the name',
    'warmup Back Squat: 5 @ 40 kg',
  ],
  ['Back Squat WU: 5 @ 40 kg', 'the word warmup stands before the name', 'warmup Back Squat: 5 @ 40 kg'],
  ['Back Squat test: 1 @ 80 kg', 'the word test stands before the name', 'test Back Squat: 1 @ 80 kg'],
  ['Back Squat (max test): 1 @ 80 kg', 'the word test stands before the name', 'test Back Squat: 1 @ 80 kg'],
  [
    'Back Squat 60 kg: 5, 5, 5',
    'a load stands behind the sets, such as Back Squat: 5 @ 60 kg',
    'Back Squat: 5, 5, 5 @ 60 kg',
  ],
  [
    'Back Squat (62.5kg): 3x5 rpe 8, rest 2:00 # slow',
    'a load stands behind the sets, such as Back Squat: 5 @ 62.5kg',
    'Back Squat: 3x5 @ 62.5kg rpe 8, rest 2:00 # slow',
  ],
  ['Back Squat 60 kg: 5 @ 65 kg', 'a load stands behind the sets, such as Back Squat: 5 @ 60 kg'],
])('%s', (line, advice, fixed) => {
  const [told, ...more] = tell('session 2026-11-17', line);
  expect(more).toEqual([]);
  expect(told).toContain(`: ${advice} [unknown-movement]`);
  expect(
    told
      ?.split(' → ')
      .map((fix) => fix.slice(fix.indexOf(': ') + 2))
      .slice(1),
  ).toEqual(fixed === undefined ? [] : [fixed]);
});

test('behind a label, and where it is said twice', () => {
  expect(tell('session 2026-11-17', 'A1 Back Squat warmup: 5 @ 40 kg')[0]).toContain(
    'A1 warmup Back Squat: 5 @ 40 kg',
  );
  expect(tell('session 2026-11-17', 'warmup Back Squat (warmup): 5 @ 40 kg')[0]).toContain(
    ': warmup Back Squat: 5 @ 40 kg',
  );
});

test('the week of a plan', () => {
  expect(tell('plan Brass Almanac', 'Back Squat (week 3): 1 @ 90%')[0]).toBe(
    '2:3 No movement is called Back Squat (week 3): the week stands before the name [unknown-movement] → Write week 3 Back Squat: week 3 Back Squat: 1 @ 90%',
  );
});

test('a movement that is called so', () => {
  const files = {
    'own.plim': lines('exercise Warm Up Walk', 'exercise Beep Test', 'exercise Sandbag 40 kg'),
  };
  for (const line of ['Warm Up Walk: 5:00', 'Beep Test: 8', 'Sandbag 40 kg: 5'])
    expect(tell('session 2026-11-17', line, files)).toEqual([]);
});

test('what would be lost has no fix', () => {
  expect(tell('session 2026-11-17', 'Bak Squat (60 kg): 5')[0]).toMatch(
    /did you mean .*\?$|\[unknown-movement\]$/,
  );
  expect(tell('session 2026-11-17', 'Warm up Bak Squat: 5 @ 60 kg')[0]).toMatch(/\[unknown-movement\]$/);
});
