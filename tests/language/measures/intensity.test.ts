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

describe('the numbers explain themselves', () => {
  const read = (lines: string, day = '2026-02-02') => {
    const { works, sessions } = readWorks(DEFINITIONS, `session ${day} ${NAME}\n${lines}\n`);
    return computeIntensity(sessions.flatMap((work) => tallyIntensity(works, work)));
  };

  test('the average load, with the body named where it is in it', () => {
    const { average } = read('  Bar Press: 10 @ 50, 5 @ 80 kg');
    expect(average).toEqual({
      value: 60,
      unit: 'kg',
      bound: 'exact',
      method: 'average-load',
      inputs: [
        { label: 'volume', value: 900, unit: 'kg' },
        { label: 'reps', value: 15, unit: 'reps' },
      ],
      omitted: [],
    });
    // 0.95 x 80 + 4 = 80 kg a rep.
    expect(read('  Hang Pull: 5 @ bw+4 kg').average.inputs).toEqual([
      { label: 'volume incl. body', value: 400, unit: 'kg' },
      { label: 'reps', value: 5, unit: 'reps' },
    ]);
    expect(read('  Bar Press: 5, ? @ 80 kg').average.omitted).toEqual([
      { what: 'Bar Press', why: 'a set not recorded' },
    ]);
  });

  test('the share of the max, movement by movement', () => {
    const { relative } = read('  Bar Press: 10 @ 80 kg\n  Hand Press: 5 @ 2x15 kg\n  Bar Pull: 5 @ 60 kg');
    expect(relative).toMatchObject({ method: 'relative-intensity', unit: '%' });
    expect(relative.inputs).toEqual([
      { label: 'Bar Press, 10 reps at', value: 80, unit: '%' },
      { label: 'Hand Press, 5 reps at', value: 50, unit: '%' },
    ]);
  });

  test('the zones, of how many reps', () => {
    const { zones } = read('  Bar Press: 10 @ 80 kg');
    expect(zones[3]).toMatchObject({
      method: 'intensity-zones',
      unit: 'reps',
      inputs: [
        { label: 'Bar Press', value: 10, unit: 'reps' },
        { label: 'reps with a share of a max', value: 10, unit: 'reps' },
      ],
    });
    // Nothing of it was in another zone.
    expect(zones[4]!.inputs).toEqual([{ label: 'reps with a share of a max', value: 10, unit: 'reps' }]);
  });

  test('only reps count: no seconds, none not made', () => {
    expect(read('  Bar Press: 30 s @ 80 kg').zones).toEqual([]);
    expect(read('  Bar Press: 0 of 1 @ 80 kg').zones).toEqual([]);
    expect(read('  Bar Press: ? @ 80 kg').zones).toEqual([]);
  });

  test('more help than the body weighs is no share', () => {
    expect(read('  Hang Pull: 5 @ bw-90 kg').relative.value).toBeUndefined();
  });

  test('at a zone’s floor to the last digit of a double', () => {
    // 63 of 90 kg is 70 %, which doubles make 69.99999….
    const { works, sessions } = readWorks(
      DEFINITIONS.replace('max Bar Press: 100 kg', 'max Bar Press: 90 kg'),
      `session 2026-02-02 ${NAME}\n  Bar Press: 5 @ 63 kg\n`,
    );
    const { zones } = computeIntensity(tallyIntensity(works, sessions[0]!));
    expect(zones.map(({ value }) => value)).toEqual([0, 0, 5, 0, 0]);
  });

  test('by each formula of an estimated max', () => {
    // 5 reps to failure at 60 kg: Epley 70, Brzycki 67.5 (published table, r = 5).
    const { works, sessions } = readWorks(
      DEFINITIONS,
      `session 2026-02-02 ${NAME}\n  Bar Pull: 5 @ 60 kg rpe 10\n`,
    );
    const share = (formula?: 'brzycki') =>
      computeIntensity(tallyIntensity(works, sessions[0]!, formula)).relative.value;
    expect(share()).toBeCloseTo(85.7143, 4);
    expect(share('brzycki')).toBeCloseTo(88.8889, 4);
    expect(share()).toBeCloseTo(85.7143, 4);
  });

  test('of a body share by sex', () => {
    // Push-up: 0.71 for men, 0.68 for women (Mier CM et al. 2014): (68 + 12) / (68 + 32) = 80 %.
    const definitions = `athlete ${NAME}\n  sex female\n  bodyweight 100 kg on 2026-01-01\n  max Push-up: bw+32 kg on 2026-01-01\n`;
    const { works, sessions } = readWorks(
      definitions,
      `session 2026-02-02 ${NAME}\n  Push-up: 5 @ bw+12 kg\n`,
    );
    expect(computeIntensity(tallyIntensity(works, sessions[0]!)).relative.value).toBeCloseTo(80, 9);
  });
});
