import { describe, expect, test } from 'vitest';
import { computeIntensity, tallyIntensity } from '../../../language/src/measures/intensity.ts';
import { NAME, printOmitted, printValue, readWorks } from './read-works.ts';

const DEFINITIONS = `
exercise Bar Press
  needs barbell
exercise Bar Pull
  needs barbell
exercise Hang Pull
  bodyweight 95%, for the sums of this test
exercise Hand Press
  needs dumbbell
exercise Stack Press
  needs cable
athlete ${NAME}
  bodyweight 80 kg on 2026-01-01
  max Bar Press: 100 kg on 2026-01-01
  max Hang Pull: bw+24 kg on 2026-01-01
  max Hand Press: 2x30 kg on 2026-01-01
`;

function intensityOf(lines: string, definitions = DEFINITIONS) {
  const { works, sessions } = readWorks(definitions, `session 2026-02-02 ${NAME}\n${lines}\n`);
  const { average, relative, zones } = computeIntensity(
    sessions.flatMap((work) => tallyIntensity(works, work)),
  );
  return {
    average: printValue(average),
    relative: printValue(relative),
    zones: zones.map(({ value }) => value),
    omitted: printOmitted(relative),
  };
}

// Each row is worked by hand from the line.
describe('the intensity of a session', () => {
  test.each([
    // 3 x 5 x 80 = 1 200 kg / 15.
    ['one load', 'Bar Press: 3x5 @ 80 kg', '80 kg', '80 %', [0, 0, 0, 15, 0]],
    // (10 x 50 + 5 x 80) / 15 = 60 kg, of 100 kg 60 %.
    ['several loads, weighted by reps', 'Bar Press: 10 @ 50, 5 @ 80 kg', '60 kg', '60 %', [10, 0, 0, 5, 0]],
    [
      'a zone begins at its floor',
      'Bar Press: 1 @ 59.9, 1 @ 60, 1 @ 69.9, 1 @ 70, 1 @ 80, 1 @ 89.9, 1 @ 90, 1 @ 104 kg',
      '77.9625 kg',
      '77.9625 %',
      [1, 2, 1, 2, 2],
    ],
    // (0.95 x 80 + 4) / (76 + 24) = 80 %; a rep moves 80 kg.
    ['the body counts in load and max alike', 'Hang Pull: 5 @ bw+4 kg', '80 kg', '80 %', [0, 0, 0, 5, 0]],
    ['help is taken off', 'Hang Pull: 5 @ bw-16 kg', '60 kg', '60 %', [0, 5, 0, 0, 0]],
    // Two of 24 kg ride on a rep: 48 kg; a hand 24 of 30.
    ['two implements are compared a hand', 'Hand Press: 5 @ 2x24 kg', '48 kg', '80 %', [0, 0, 0, 5, 0]],
    ['reps of both sides', 'Bar Press: 5/side @ 70 kg', '70 kg', '70 %', [0, 0, 10, 0, 0]],
    // (5 x 80 + 8 x 60) / 13 = 67.6923.
    [
      'a drop at its own load',
      'Bar Press: 5 @ 80 kg drop 8 @ 60 kg',
      '67.6923 kg',
      '67.6923 %',
      [0, 8, 0, 5, 0],
    ],
    ['only reps made', 'Bar Press: 1 of 3 @ 95 kg', '95 kg', '95 %', [0, 0, 0, 0, 1]],
    ['no warm-up', 'warmup Bar Press: 5 @ 40 kg', 'none', 'none', []],
  ])('%s', (_name, line, average, relative, zones) => {
    expect(intensityOf(`  ${line}`)).toEqual({ average, relative, zones, omitted: [] });
  });

  test('movements weigh by their reps, and without a max are left out and named', () => {
    // Bar Press 10 at 80 %, Hand Press 5 at 50 %: (800 + 250) / 15 = 70 %. Stack Press by pin has no kilograms.
    const found = intensityOf(
      '  Bar Press: 10 @ 80 kg\n  Hand Press: 5 @ 2x15 kg\n  Stack Press: 12 @ pin 4\n  Bar Pull: 5 @ 60 kg rir 6',
    );
    expect(found.relative).toBe('70 %');
    expect(found.zones).toEqual([5, 0, 0, 10, 0]);
    expect(found.omitted).toEqual([
      'Stack Press: no max known by that day',
      'Bar Pull: no max known by that day',
    ]);
  });

  test.each([
    ['unequal hands', 'Hand Press: 5 @ 24&16 kg', 'Hand Press: no one load in kilograms'],
    ['a load not recorded', 'Bar Press: 5 @ ?', 'Bar Press: no one load in kilograms'],
    ['a load not written', 'Bar Press: 5', 'Bar Press: no one load in kilograms'],
  ])('%s has no share', (_name, line, expected) => {
    expect(intensityOf(`  ${line}`)).toMatchObject({ relative: 'none', zones: [], omitted: [expected] });
  });

  test('of body weight without a weigh-in there is none', () => {
    const definitions = DEFINITIONS.replace('  bodyweight 80 kg on 2026-01-01\n', '');
    expect(intensityOf('  Hang Pull: 5 @ bw+4 kg', definitions).omitted).toEqual([
      'Hang Pull: no weigh-in on or before the day',
    ]);
  });

  // 60 x (1 + 5/30) = 70 at least: that five reps are 86 % of what five reps prove says nothing of the load.
  test('a max known as a lower bound only is none', () => {
    expect(intensityOf('  Bar Pull: 5 @ 60 kg')).toMatchObject({
      relative: 'none',
      omitted: ['Bar Pull: of its max only a lower bound is known'],
    });
  });

  test('but where one was once known, a higher bound gives shares at most', () => {
    const { works, sessions } = readWorks(
      DEFINITIONS,
      `session 2026-01-26 ${NAME}\n  Bar Pull: 1 @ 60 kg rpe 10\nsession 2026-02-02 ${NAME}\n  Bar Pull: 5 @ 60 kg\n`,
    );
    const [, later] = sessions;
    const { relative, zones } = computeIntensity(tallyIntensity(works, later!));
    // 60 of 70.
    expect(printValue(relative)).toBe('85.7143 %, at most, a max is a lower bound');
    expect(printValue(zones[3]!)).toBe('5 reps, 80-89 %, at most, a max is a lower bound');
  });
});

test('a later test does not change an earlier week', () => {
  const log = (date: string, line: string) => `session ${date} ${NAME}\n  ${line}\n`;
  const { works, sessions } = readWorks(
    DEFINITIONS,
    log('2026-02-02', 'Bar Press: 5 @ 80 kg') +
      log('2026-02-09', 'test Bar Press: 1 @ 160 kg') +
      log('2026-02-16', 'Bar Press: 5 @ 80 kg'),
  );
  const shares = sessions.map((work) => printValue(computeIntensity(tallyIntensity(works, work)).relative));
  expect(shares).toEqual(['80 %', '100 %', '50 %']);
});

test('zones name themselves', () => {
  const { works, sessions } = readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n  Bar Press: 5 @ 80 kg\n`);
  const { zones } = computeIntensity(tallyIntensity(works, sessions[0]!));
  expect(zones.map(printValue)).toEqual([
    '0 reps, below 60 %',
    '0 reps, 60-69 %',
    '0 reps, 70-79 %',
    '5 reps, 80-89 %',
    '0 reps, 90 % and over',
  ]);
});
