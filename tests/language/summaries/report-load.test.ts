import { describe, expect, test } from 'vitest';
import { addDays, type IsoDate, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { makeReport } from '../../../language/src/summaries/report.ts';
import { describeLoad } from '../../../language/src/summaries/report-load.ts';

const NAME = 'Hepzibah Crockle';
/** Monday of the first of seven weeks. */
const MONDAY = '2026-03-02';
const DEFINITIONS = `
exercise Bar Press
  needs barbell
athlete Hepzibah Crockle
  bodyweight 60 kg on 2026-03-01
  bodyweight 59 kg on 2026-03-15
  max Bar Press: 100 kg on 2026-02-20
  retest Bar Press: 100 kg, 101 kg on 2026-02-21
plan Gorse Winter
  day 1
    Bar Press: 2x1 @ 100%
    Press Up: 3x10
`;

/** Every Monday a single one kilo heavier, and a circuit of the same kilograms five seconds faster. */
function writeWeeks(count: number): string {
  return Array.from({ length: count }, (_, week) => {
    const seconds = 120 - 5 * week;
    const clock = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
    return `session ${addDays(MONDAY, 7 * week)} ${NAME}
  straight
    Bar Press: 1 @ ${100 + week} kg rpe 10
  circuit, 1 rounds
    Bar Press: 10 @ 40 kg
    time ${clock}
  effort 5
  lasted 60 min
`;
  }).join('');
}

function factsOf(text: string, startDay: IsoDate, today: IsoDate): string[] {
  const practice = createPractice();
  practice.setFile('log.plim', `${DEFINITIONS}${text}`);
  const options = { today, formula: 'epley', unit: 'kg', complete: true } as const;
  const facts = describeLoad(new SessionWorks(practice), NAME, toDayNumber(startDay), 'kg', options);
  return facts.map(({ of, text: said }) => `${of}: ${said}`);
}

describe('load over time', () => {
  test('of seven weeks', () => {
    // The retest's typical error is 1 / √2 = 0.71 kg, and chance alone makes up to 2.77 times as much, 1.96 kg.
    // Volume of a week 100 + week, and 400 of the circuit: +1 a week. 400 kg in 2:00, 1:55 … are 200, 208.70, 218.18,
    // 228.57, 240, 252.63, 266.67 kg/min. 300 AU on one day of seven: monotony 0.378 and strain 113.4.
    expect(factsOf(writeWeeks(7), '2026-04-13', '2026-04-20')).toEqual([
      'load: 300 AU · monotony 0.38 · strain 113',
      'state: 6 days since the last session by 2026-04-19 · acute to chronic 0.36, no injury predictor · fitness less fatigue rising over 7 days',
      'lifts: Bar Press +1 kg a week (1), rising, last test +1 kg, not called real: chance can do as much',
      'circuits: Bar Press +11 kg/min a week (10 to 13), rising',
      'totals: Volume +1 kg a week (1), rising · Body mass -0.5 kg a week, no verdict from 2 of 6 points',
    ]);
  });

  test('of a week that is not over, with a session that nobody rated', () => {
    const text = `session 2026-03-02 ${NAME}\n  effort 5\n  lasted 60 min\nsession 2026-03-03 ${NAME}\n  Press Up: 10\n`;
    expect(factsOf(text, MONDAY, '2026-03-04')).toEqual([
      'load: 1 day without effort or time · so far at least 300 AU',
      'state: 1 day since the last session · acute to chronic needs 28 days of known load, has 1',
    ]);
  });

  test('against the plan', () => {
    const text = `session 2026-03-02 ${NAME}, Gorse Winter week 1 day 1
  Bar Press: 2x1 @ 100 kg
  Ring Dip: 2x10, instead of Press Up
  Toe Walk: 2x10
`;
    // 2 of 2 and 2 of 3. Planned 2 x 100 kg and 30 x 69 % of 60 kg = 1 442, done 200 and 20 x 95.6 % of 60 kg = 1 347.2.
    expect(factsOf(text, MONDAY, '2026-03-08').at(-1)).toBe(
      'plan: 80 % of the planned sets, 22 of 32 reps, 1 347 of 1 442 kg, loads as planned · Press Up 2 of 3 sets · Ring Dip for Press Up · added Toe Walk',
    );
  });

  test('says nothing where there is nothing', () => {
    expect(factsOf('', MONDAY, '2026-03-08')).toEqual([]);
  });
});

test('the report carries the numbers with their formula and source', () => {
  const practice = createPractice();
  practice.setFile('log.plim', `${DEFINITIONS}${writeWeeks(7)}`);
  const options = { today: '2026-04-20', formula: 'epley', unit: 'kg', complete: true } as const;
  const [athlete] = makeReport(new SessionWorks(practice), options).athletes;
  const numbers = athlete!.weeks[0]!.load.flatMap((fact) => fact.numbers);
  expect(numbers.map(({ title }) => title)).toEqual(
    expect.arrayContaining(['Weekly load', 'Monotony', 'Strain', 'Acute to chronic load', 'Trend']),
  );
  // What the text has no room for: the straight line, and what a retest can tell apart.
  expect(numbers.map(({ method }) => method)).toEqual(
    expect.arrayContaining(['least-squares', 'retest-error', 'minimal-detectable-change', 'real-change']),
  );
  expect(numbers.every(({ formula, source }) => formula !== '' && source !== '')).toBe(true);
  expect(JSON.stringify(numbers)).not.toContain('null');
});
