import { describe, expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { describeBlockRounds } from '../../../language/src/summaries/block-rounds.ts';
import { makeReport, printReport } from '../../../language/src/summaries/report.ts';

const NAME = 'Hepzibah Crockle';
const DEFINITIONS = `
athlete ${NAME}
exercise Bar Press
  needs barbell
exercise Ring Plank
`;
const OPTIONS = { today: '2026-02-20', formula: 'epley', unit: 'kg', complete: true } as const;

function practiceWith(...sessions: readonly string[]) {
  const practice = createPractice();
  practice.setFile('a.plim', DEFINITIONS);
  const days = ['2026-02-02', '2026-02-09', '2026-02-16'];
  practice.setFile(
    'b.plim',
    sessions.map((lines, index) => `session ${days[index]} ${NAME}\n  ${lines}\n`).join(''),
  );
  return new SessionWorks(practice);
}

/** What stands behind the block of the last session. */
function factsOf(sessions: readonly string[], options: Partial<typeof OPTIONS | { complete: boolean }> = {}) {
  const works = practiceWith(...sessions);
  const work = works.of(works.practice.sessionsOf(NAME).at(-1)!);
  return describeBlockRounds(works, work, work.blocks[0]!.block, { ...OPTIONS, ...options });
}

const say = (...sessions: readonly string[]): string[] =>
  factsOf(sessions).map(({ of, text }) => `${of}: ${text}`);

const circuit = (times: string, reps = '10', rest = '') =>
  `B circuit, 3 rounds${rest}\n    Bar Press: ${reps} @ 40 kg\n    time ${times}`;

describe('round by round', () => {
  test('against the last time, time and density', () => {
    // 400 kg in 120 s, 200 kg/min, and in 100 s, 240: 20 % more. The second round took as long; the third has no time.
    expect(say(circuit('2:00, 2:00, 2:00'), circuit('1:40, 2:00, ?'))).toEqual([
      'rounds: since 2 Feb: round 1 -20 s (density +20 %), round 2 same time, round 3 not timed',
    ]);
  });

  test('names the rounds that were not done or not timed then', () => {
    const before = 'B circuit, 2 rounds\n    Bar Press: 10 @ 40 kg\n    time 2:00, ?';
    expect(say(before, circuit('2:05, 2:00, 2:00'))).toEqual([
      'rounds: since 2 Feb: round 1 +5 s (density -4 %), round 2 not timed on 2026-02-02, round 3 not done on 2026-02-02',
    ]);
  });

  test('counts the rest of many rounds', () => {
    const many = (clock: string) =>
      `B circuit, 10 rounds\n    Ring Plank: 5\n    time ${Array(10).fill(clock).join(', ')}`;
    const [rounds] = factsOf([many('1:00'), many('1:00')]);
    expect(rounds!.text).toContain('round 8 same time, 2 more');
    expect(rounds!.text).not.toContain('round 9');
    // The numbers have them all: ten times and ten densities.
    expect(rounds!.results).toHaveLength(20);
  });

  test('says nothing without a last time, without times, or before all is read', () => {
    expect(say(circuit('2:00, 2:00, 2:00'))).toEqual([]);
    expect(say(circuit('2:00, 2:00, 2:00'), 'B circuit, 3 rounds\n    Bar Press: 10 @ 40 kg')).toEqual([]);
    const two = [circuit('2:00, 2:00, 2:00'), circuit('2:00, 2:00, 2:00')];
    expect(factsOf(two, { complete: false })).toEqual([]);
  });
});

describe('the pace of a block', () => {
  test('work to rest, with both clocks', () => {
    // 6:00 of work and two rests of 1:30.
    expect(say(circuit('2:00, 2:00, 2:00', '10', ', rest 1:30'))).toEqual([
      'pace: work : rest 2 (6:00 : 3:00)',
    ]);
  });

  test('reps a minute of what has no kilograms', () => {
    // 3 x 8 reps in 6:00; the other 30 reps have kilograms.
    const lines = `${circuit('2:00, 2:00, 2:00')}`.replace('    time', '    Ring Plank: 8\n    time');
    expect(say(lines)).toEqual(['pace: 4 reps/min without kilograms']);
    expect(say(lines.replace('Ring Plank: 8', 'Ring Plank: 8, ?, 8'))).toEqual([
      'pace: at least 2.7 reps/min without kilograms',
    ]);
  });
});

test('the report shows both under their block, with numbers that explain themselves', () => {
  const works = practiceWith(
    circuit('2:00, 2:00, 2:00', '10', ', rest 1:30'),
    circuit('1:40, 2:00, 2:00', '10', ', rest 1:30'),
  );
  const report = makeReport(works, OPTIONS);
  const [session] = report.athletes[0]!.weeks[0]!.sessions;
  expect(session!.blocks.map(({ of }) => of)).toEqual(['B circuit', 'B circuit rounds', 'B circuit pace']);
  expect(session!.blocks[1]!.numbers[0]).toMatchObject({
    title: 'Change of a round',
    value: -20,
    unit: 's',
    source: 'arithmetic',
  });
  expect(printReport(report)).toContain(
    '      B circuit rounds  since 2 Feb: round 1 -20 s (density +20 %), round 2 same time, round 3 same time',
  );
  expect(printReport(report)).toContain('      B circuit pace    work : rest 1.89 (5:40 : 3:00)');
});
