import { describe, expect, test } from 'vitest';
import { predictDuration } from '../../../language/src/measures/predicted-duration.ts';
import { dayOf, practiceOf, writeDays } from './practice-of.ts';

const NAME = 'Thaddeus Brine';
const DAY = dayOf('2026-06-01');

/** \`345 (288.75 to 401.25) by common practice\`, for the first block of a session on 1 June. */
function predict(block: string, history: readonly string[] = []): string {
  const { practice } = practiceOf(
    `exercise Loft Rower\n  work conditioning\n${writeDays('2026-05-04', NAME, history)}session 2026-06-01 ${NAME}\n${block}\n`,
  );
  const { entry } = practice.sessionsOf(NAME).at(-1)!;
  const result = predictDuration(practice, entry.blocks[0]!, { athlete: NAME, beforeDay: DAY });
  if (!result) return 'nothing';
  expect(result).toMatchObject({ unit: 's', bound: 'prediction', method: 'predicted-duration' });
  const omitted = result.omitted.map(({ what, why }) => ` [${what}: ${why}]`).join('');
  const { value, spread, remark } = result;
  return `${value} (${spread!.low} to ${spread!.high}) ${remark}${omitted}`;
}

/** 3 s a rep, 15 s a change-over, 2:00 between sets, 1:00 between rounds, a quarter either way: common practice. */
describe('by common practice', () => {
  test.each([
    [
      // A round is 20 × 3 + 15 = 75; three are 225, give or take 56.25, and two rests of 60.
      'a circuit',
      '  circuit, 3 rounds, rest 1:00\n    Press Up: 10\n    Bar Press: 10 @ 40 kg',
      '345 (288.75 to 401.25) by common practice',
    ],
    [
      'without a written rest a minute is taken',
      '  circuit, 3 rounds\n    Press Up: 10\n    Bar Press: 10 @ 40 kg',
      '345 (288.75 to 401.25) by common practice',
    ],
    [
      // 15 × 3 = 45, and two rests of 180; nobody changes over.
      'straight sets',
      '  straight, rest 3:00\n    Bar Press: 3x5 @ 100 kg',
      '405 (393.75 to 416.25) by common practice',
    ],
    ['without a rest: two of 2:00', '  Bar Press: 3x5 @ 100 kg', '285 (273.75 to 296.25) by common practice'],
    [
      'a line’s own rest goes before the block’s: 60 + 60 + 60 + 180',
      '  straight, rest 3:00\n    Long Hinge: 5 @ 60 kg, rest 1:00\n    Press Up: 2x5, rest 1:00\n    Bar Press: 2x5 @ 100 kg',
      // 25 × 3 = 75.
      '435 (416.25 to 453.75) by common practice',
    ],
    [
      // 15 × (3 + 1 + 1 + 0) = 75.
      'a tempo is taken where it is written',
      '  straight, rest 3:00\n    Bar Press: 3x5 @ 100 kg, tempo 3-1-X-0',
      '435 (416.25 to 453.75) by common practice',
    ],
    [
      'holds of both sides',
      '  straight, rest 1:00\n    Side Lean: 2x30 s/side',
      '180 (150 to 210) by common practice',
    ],
    [
      'warm-up sets take time too',
      '  straight, rest 1:00\n    warmup Bar Press: 5 @ 40 kg\n    Bar Press: 5 @ 80 kg',
      '90 (82.5 to 97.5) by common practice',
    ],
    [
      // 2:05 for 500 m; 20 reps and a change-over are 75; no rest between rounds.
      'for time, a round after another',
      '  for time, 2 rounds\n    Loft Rower: 500 m\n    Press Up: 10',
      // (125 + 30 + 15) × 2.
      '340 (255 to 425) by common practice',
    ],
    [
      'a cap ends it',
      '  for time, 2 rounds, cap 5:00\n    Loft Rower: 500 m\n    Press Up: 10',
      '300 (255 to 300) by common practice',
    ],
    [
      'something not recorded is named',
      '  straight, rest 1:00\n    Press Up: 10, ?',
      '90 (82.5 to 97.5) by common practice [a set: without a number of reps or a time]',
    ],
    [
      'a skipped line takes none',
      '  circuit, 2 rounds, rest 1:00\n    Press Up: 10\n    Bar Press: skipped',
      '120 (105 to 135) by common practice',
    ],
    ['nothing but skipped lines', '  Bar Press: skipped', 'nothing'],
    [
      'a rest between lines',
      '  circuit, 1 rounds\n    Press Up: 10\n    rest 0:20\n    Bar Press: 10 @ 40 kg',
      '95 (71.25 to 118.75) by common practice',
    ],
  ])('%s', (_name, block, expected) => {
    expect(predict(block)).toBe(expected);
  });
});

describe('by the clock of the header', () => {
  test.each([
    ['amrap 12:00', '720 (720 to 720) the time that its header gives'],
    ['every 1:00 for 10:00', '600 (600 to 600) the time that its header gives'],
    // 8 × 40 + 7 × 20.
    ['intervals 0:40 on, 0:20 off, 8 rounds', '460 (460 to 460) the time that its header gives'],
  ])('%s', (header, expected) => {
    expect(predict(`  ${header}\n    Press Up: 10`)).toBe(expected);
  });
});

const circuit = (reps: number, times: string, rounds = 1, second = 'Bar Press'): string =>
  `  circuit, ${rounds} rounds, rest 1:00\n    Press Up: ${reps}\n    ${second}: ${reps} @ 40 kg\n    time ${times}`;
const ASKED = '  circuit, 3 rounds, rest 1:00\n    Press Up: 10\n    Bar Press: 10 @ 40 kg';

describe('from past rounds of the same block', () => {
  test.each<[string, string[], string]>([
    [
      // Median 130 × 3 + 2 × 60; range 120 and 150 × 3 + 120.
      'their median and range',
      [circuit(10, '2:00, 2:10, 2:30', 3)],
      '510 (480 to 570) from past rounds of this block',
    ],
    [
      'whatever the order of lines and the loads',
      ['  circuit, 3 rounds\n    Bar Press: 10 @ 90 kg\n    Press Up: 10\n    time 2:00, 2:10, 2:30'],
      '510 (480 to 570) from past rounds of this block',
    ],
    ['from three up', [circuit(10, '2:00, 2:10', 2)], '345 (288.75 to 401.25) by common practice'],
    [
      // At common pace 20 reps take 75 s, 26 take 93 (1.24 of it) and 28 take 99 (1.32).
      'that asked for about as much',
      [circuit(13, '2:00, 2:10, 2:30', 3)],
      '510 (480 to 570) from past rounds of this block',
    ],
    ['not for much more', [circuit(14, '2:00, 2:10, 2:30', 3)], '345 (288.75 to 401.25) by common practice'],
    ['nor for much less', [circuit(7, '2:00, 2:10, 2:30', 3)], '345 (288.75 to 401.25) by common practice'],
    [
      'the last twenty of them',
      [circuit(10, '9:00, 9:00', 2), ...Array(20).fill(circuit(10, '2:00'))],
      '480 (480 to 480) from past rounds of this block',
    ],
  ])('%s', (_name, history, expected) => {
    expect(predict(ASKED, history)).toBe(expected);
  });

  test('done before the day, by the same athlete', () => {
    const { practice } = practiceOf(
      `${writeDays('2026-06-01', NAME, [circuit(10, '2:00, 2:10, 2:30', 3)])}${writeDays('2026-05-01', 'Somebody Else', [circuit(10, '2:00, 2:10, 2:30', 3)])}`,
    );
    const [block] = practice.sessionsOf(NAME)[0]!.entry.blocks;
    const basis = (beforeDay: number) =>
      predictDuration(practice, block!, { athlete: NAME, beforeDay })!.remark;
    expect(basis(DAY)).toBe('by common practice');
    expect(basis(DAY + 1)).toBe('from past rounds of this block');
  });
});

describe('from the pace of other rounds', () => {
  /** 2 s a rep and 10 s a change-over: 40 × 2 + 10 = 90 and so on. */
  const history = [
    circuit(10, '0:50, 0:50', 2, 'Long Hinge'),
    circuit(15, '1:10, 1:10', 2, 'Long Hinge'),
    circuit(20, '1:30, 1:30', 2, 'Long Hinge'),
  ];

  test('reps and change-overs', () => {
    // A round is 20 × 2 + 10 = 50; three and two rests are 270.
    expect(predict(ASKED, history)).toBe('270 (270 to 270) from the pace of 6 timed rounds');
  });

  test('a tempo goes before the pace', () => {
    // 10 × 5 + 10 × 2 + 10 = 80.
    const block = `${ASKED.replace('40 kg', '40 kg, tempo 3-1-X-0')}`;
    expect(predict(block, history)).toBe('360 (360 to 360) from the pace of 6 timed rounds');
  });

  test('straight sets have no change-overs', () => {
    // 15 × 2 + 2 × 120.
    expect(predict('  Bar Press: 3x5 @ 100 kg', history)).toBe(
      '270 (270 to 270) from the pace of 6 timed rounds',
    );
  });

  test('as far as the rounds lay from it', () => {
    // The odd round took 140 s where 30 reps predict 70: twice as long.
    const odd = [...history, circuit(15, '2:20', 1, 'Long Hinge')];
    expect(predict(ASKED, odd)).toBe('270 (270 to 420) from the pace of 7 timed rounds');
  });
});

describe('a plan', () => {
  const planned = (lines: string) => {
    const { practice } = practiceOf(`plan Gorse Winter\n  day 1\n${lines}\n`);
    const [block] = practice.findPlan('Gorse Winter')!.entry.days[0]!.blocks;
    const { value, spread } = predictDuration(practice, block!, { athlete: NAME, beforeDay: DAY })!;
    return `${value} (${spread!.low} to ${spread!.high})`;
  };

  test.each([
    [
      // 3 × (8 to 12) × 3 s = 72 to 108, and two rests of 60 to 90 s.
      'ranges of reps and rests',
      '    straight, rest 1:00-1:30\n      Bar Press: 3x8-12 @ 60 kg',
      '240 (174 to 315)',
    ],
    [
      'an open end takes its number',
      '    straight, rest 1:00\n      Bar Press: 2x5+ @ 60 kg',
      '90 (82.5 to 97.5)',
    ],
  ])('%s', (_name, lines, expected) => {
    expect(planned(lines)).toBe(expected);
  });

  test('an amrap set is open', () => {
    const { practice } = practiceOf('plan Gorse Winter\n  day 1\n    Bar Press: 5, amrap @ 60 kg\n');
    const [block] = practice.findPlan('Gorse Winter')!.entry.days[0]!.blocks;
    expect(predictDuration(practice, block!, { athlete: NAME, beforeDay: DAY })!.omitted).toHaveLength(1);
  });
});

test('names what went in', () => {
  const { practice } = practiceOf(`session 2026-06-01 ${NAME}\n${ASKED}\n    Side Lean: 30 s\n`);
  const [block] = practice.sessionsOf(NAME)[0]!.entry.blocks;
  const { inputs } = predictDuration(practice, block!, { athlete: NAME, beforeDay: DAY })!;
  expect(inputs.map(({ label, value }) => `${label}: ${value}`)).toEqual([
    'reps: 60',
    'a rep (common practice): 3',
    'change-overs: 6',
    'a change-over (common practice): 15',
    'holds, tempos and rests written: 90',
    'rests between rounds: 120',
  ]);
});

describe('a prediction names what it is made of', () => {
  const inputsOf = (block: string, history: readonly string[] = []): string[] => {
    const { practice } = practiceOf(
      `exercise Loft Rower\n  work conditioning\n${writeDays('2026-05-04', NAME, history)}session 2026-06-01 ${NAME}\n${block}\n`,
    );
    const { entry } = practice.sessionsOf(NAME).at(-1)!;
    const result = predictDuration(practice, entry.blocks[0]!, { athlete: NAME, beforeDay: DAY })!;
    return result.inputs.map(({ label, value, unit }) => `${label} ${value}${unit ? ` ${unit}` : ''}`);
  };

  test('reps, change-overs and rests by common practice', () => {
    expect(inputsOf('  circuit, 3 rounds\n    Press Up: 10\n    Bar Press: 10 @ 40 kg')).toEqual([
      'reps 60 reps',
      'a rep (common practice) 3 s',
      'change-overs 3',
      'a change-over (common practice) 15 s',
      'rests between rounds (common practice) 120 s',
    ]);
    expect(inputsOf('  circuit, 3 rounds, rest 1:30\n    Press Up: 10')).toEqual([
      'reps 30 reps',
      'a rep (common practice) 3 s',
      'rests between rounds 180 s',
    ]);
  });

  test('straight sets with the rests between them', () => {
    expect(inputsOf('  Bar Press: 3x5 @ 100 kg')).toEqual([
      'reps 15 reps',
      'a rep (common practice) 3 s',
      'rests between sets (common practice) 240 s',
    ]);
    expect(inputsOf('  straight, rest 3:00\n    Bar Press: 3x5 @ 100 kg').at(-1)).toBe(
      'rests between sets 360 s',
    );
    expect(inputsOf('  Bar Press: 3x5 @ 100 kg, rest 1:00').at(-1)).toBe('rests between sets 120 s');
    // One set has no rest behind it.
    expect(inputsOf('  Bar Press: 5 @ 100 kg')).toEqual(['reps 5 reps', 'a rep (common practice) 3 s']);
  });

  test('holds, where nothing is counted in reps', () => {
    expect(inputsOf('  straight, rest 1:00\n    Side Lean: 2x30 s/side')).toEqual([
      'holds, tempos and rests written 120 s',
      'rests between sets 60 s',
    ]);
  });

  test('a window and a single round have none', () => {
    expect(inputsOf('  amrap 12:00\n    Press Up: 10')).toEqual([]);
    expect(inputsOf('  circuit, 1 rounds\n    Press Up: 10')).toEqual([
      'reps 10 reps',
      'a rep (common practice) 3 s',
    ]);
  });

  test('past rounds of the same block', () => {
    const round = (times: string) => `  circuit, 3 rounds\n    Press Up: 10\n    time ${times}`;
    expect(inputsOf('  circuit, 4 rounds, rest 1:00\n    Press Up: 10', [round('0:40, 0:44, 0:50')])).toEqual(
      ['median of past rounds 44 s', 'past rounds 3 rounds', 'rounds 4 rounds', 'rests between rounds 180 s'],
    );
    // Three rounds of another block are no history of this one.
    const other = '  circuit, 3 rounds\n    Ring Fold: 10\n    time 0:40, 0:44, 0:50';
    expect(inputsOf('  circuit, 4 rounds, rest 1:00\n    Press Up: 10', [other])[0]).toBe('reps 40 reps');
  });
});

describe('a clock that is written is the time', () => {
  test.each([
    ['every minute for so long', '  every 1:00 for 6:00\n    Press Up: 10', 360],
    // Eight of 40 s and the seven pauses between them.
    ['intervals', '  intervals 0:40 on, 0:20 off, 8 rounds\n    Press Up: 10', 460],
    ['intervals without a pause', '  intervals 0:40 on, 8 rounds\n    Press Up: 10', 320],
  ])('%s', (_name, block, seconds) => {
    expect(predict(block)).toMatch(new RegExp(`^${seconds} \\(${seconds} to ${seconds}\\) the time`));
  });
});
