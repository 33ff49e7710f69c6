import { describe, expect, test } from 'vitest';
import { type IsoDate, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { describeMovementMax } from '../../../language/src/summaries/movement-max.ts';

const NAME = 'Hepzibah Crockle';
const DEFINITIONS = `
exercise Bar Press
  needs barbell
exercise Hang Pull
  bodyweight 95%, for the sums of this test
exercise Hand Press
  needs dumbbell
`;

function factsOf(athlete: string, log: string, movement: string, day: IsoDate = '2026-03-01') {
  const practice = createPractice();
  practice.setFile('a.plim', `${DEFINITIONS}athlete ${NAME}\n  bodyweight 80 kg on 2026-01-01\n${athlete}`);
  practice.setFile('b.plim', log);
  const options = { today: day, formula: 'epley', unit: 'kg', complete: true } as const;
  return describeMovementMax(
    new SessionWorks(practice),
    'hepzibah crockle',
    movement,
    toDayNumber(day),
    options,
  );
}

const say = (...args: Parameters<typeof factsOf>): string[] => factsOf(...args).map(({ text }) => text);
const session = (line: string, date = '2026-02-02') => `session ${date} ${NAME}\n  ${line}\n`;

// Shares of the NSCA Training Load Chart: 95, 93, 87, 80, 75 and 70 %.
describe('the max of a movement on a day', () => {
  test('with the loads that go with it', () => {
    expect(say('  max Bar Press: 110 kg on 2026-01-05\n', '', 'bar press')).toEqual([
      'Max 110 kg (stated on 2026-01-05)',
      'By the NSCA chart: 2 reps 104.5, 3 reps 102.3, 5 reps 95.7, 8 reps 88, 10 reps 82.5, 12 reps 77 kg',
    ]);
  });

  test.each([
    ['Bar Press', '', session('Bar Press: 3 @ 100 kg'), 'Max at least 110 kg (estimated on 2026-02-02)'],
    [
      'Bar Press',
      '',
      session('test Bar Press: 3 @ 100 kg'),
      'Max 110 kg (estimated from a test on 2026-02-02)',
    ],
    [
      'Bar Press',
      '',
      session('Bar Press: 3 @ 95 kg rpe 10, 0 of 1 @ 100 kg'),
      'Max under 100 kg (estimated on 2026-02-02)',
    ],
    ['Bar Press', '', session('test Bar Press: 1 @ 105 kg'), 'Max 105 kg (tested on 2026-02-02)'],
    [
      'Bar Press',
      '  retest Bar Press: 100 kg, 101 kg on 2026-01-05\n',
      '',
      'Max 101 kg (tested twice on 2026-01-05)',
    ],
    ['Hang Pull', '  max Hang Pull: bw+20 kg on 2026-01-05\n', '', 'Max bw+20 kg (stated on 2026-01-05)'],
    ['Hang Pull', '  max Hang Pull: bw-20 kg on 2026-01-05\n', '', 'Max bw-20 kg (stated on 2026-01-05)'],
    [
      'Hand Press',
      '  max Hand Press: 2x24 kg on 2026-01-05\n',
      '',
      'Max 24 kg a hand (stated on 2026-01-05)',
    ],
  ])('of %s %s%s', (movement, athlete, log, expected) => {
    expect(say(athlete, log, movement)).toContain(expected);
  });

  test('in the unit of the athlete', () => {
    // 100 lb; 95 of them for two.
    const [max, loads] = say('  units lb\n  max Bar Press: 100 lb on 2026-01-05\n', '', 'Bar Press');
    expect(max).toBe('Max 100 lb (stated on 2026-01-05)');
    expect(loads).toMatch(/^By the NSCA chart: 2 reps 95, .* lb$/);
  });

  test('none before it was known, and no loads of what comes on top of the body', () => {
    expect(say('  max Bar Press: 110 kg on 2026-03-02\n', '', 'Bar Press')).toEqual([]);
    expect(say('  max Hang Pull: bw+20 kg on 2026-01-05\n', '', 'Hang Pull')).toHaveLength(1);
  });

  test('every number of the chart explains itself', () => {
    const [, loads] = factsOf('  max Bar Press: 110 kg on 2026-01-05\n', '', 'Bar Press');
    expect(loads!.results.map(({ method, unit }) => [method, unit])).toEqual(
      Array(10).fill(['nsca-chart', 'kg']),
    );
  });
});

test('the best sets: of each rep count the heaviest of as many reps or more', () => {
  const log =
    session('Bar Press: 5 @ 90 kg, 3 @ 100 kg, 8 @ 70 kg, 4 @ 85 kg') +
    session('Bar Press: 1 @ 105 kg, 10 @ 70 kg', '2026-02-09') +
    session('Bar Press: 5 @ 200 kg', '2026-03-02');
  expect(say('', log, 'Bar Press')[0]).toBe('Best sets: 1 @ 105 kg, 3 @ 100 kg, 5 @ 90 kg, 10 @ 70 kg');
  expect(say('', session('Hang Pull: 8 @ bw, 5 @ bw+10 kg'), 'Hang Pull')[0]).toBe(
    'Best sets: 5 @ bw+10 kg, 8 @ bw',
  );
  expect(factsOf('', log, 'Bar Press')[0]!.results.map(({ method, value }) => [method, value])).toEqual([
    ['rep-record', 105],
    ['rep-record', 100],
    ['rep-record', 90],
    ['rep-record', 70],
  ]);
});

// Reynolds JM, Gordon TJ, Robergs RA (2006): leg press 1.0970 x 200 + 14.2546 = 233.65, standard error 16.16.
test('the tested machine lifts have their own equations', () => {
  const log =
    session('Leg Press: 5 @ 190 kg') +
    session('Leg Press: 5 @ 200 kg', '2026-02-09') +
    session('Leg Press: 5 @ 220 kg', '2026-03-02');
  expect(say('', log, 'Leg Press').slice(3)).toEqual([
    'By Reynolds et al. (2006): max at least 233.7 kg (217.5 to 249.8) from 5 reps',
    'By Reynolds et al. (2006, from memory): 3 reps 92 %, 5 reps 85 %, 8 reps 76 %, 10 reps 71 % of the max',
  ]);
  // Another place has another machine; a lift that nobody tested so has no equation.
  const elsewhere = log.replaceAll(NAME, `${NAME} at Net Attic`);
  expect(say('', elsewhere, 'Leg Press')).toHaveLength(1);
  expect(say('', session('Lat Pulldown: 5 @ 50 kg'), 'Lat Pulldown')).toHaveLength(3);
  expect(say('', '', 'Leg Press')).toEqual([
    'By Reynolds et al. (2006, from memory): 3 reps 92 %, 5 reps 85 %, 8 reps 76 %, 10 reps 71 % of the max',
  ]);
});
