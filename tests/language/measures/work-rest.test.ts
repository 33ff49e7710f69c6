import { describe, expect, test } from 'vitest';
import { findTimes } from '../../../language/src/measures/density.ts';
import { computeRepRate, computeWorkRest } from '../../../language/src/measures/work-rest.ts';
import { NAME, printOmitted, printValue, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
exercise Bar Press
  needs barbell
exercise Ring Plank
exercise Loft Rower
  work conditioning
`;

function firstBlock(lines: string) {
  const { sessions } = readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n  ${lines}\n`);
  const { blocks, record } = sessions[0]!;
  return [blocks[0]!, findTimes(blocks[0]!.block, record)] as const;
}

describe('work to rest', () => {
  test.each([
    // 3:00 + 5:00 of work, one rest of 2:00: 480 / 120.
    [
      'recorded rounds over written rests',
      'circuit, 2 rounds, rest 2:00\n    Ring Plank: 10\n    time 3:00, 5:00',
      '4',
      [480, 120],
    ],
    [
      'over the rests really taken',
      'circuit, 2 rounds, rest 2:00\n    Ring Plank: 10\n    time 3:00, 5:00\n    rest 4:00, 9:00',
      '2',
      [480, 240],
    ],
    // Twice 0:30 within the rounds: (480 - 60) / (120 + 60).
    [
      'rests within the rounds are rest',
      'circuit, 2 rounds, rest 2:00\n    Ring Plank: 10\n    rest 0:30\n    Bar Press: 5 @ 20 kg\n    time 3:00, 5:00',
      '2.3333',
      [420, 180],
    ],
    // The rest behind the last movement stands before the next block.
    [
      'but not the one before the next block',
      'circuit, 2 rounds, rest 2:00\n    Ring Plank: 10\n    rest 0:30\n    time 3:00, 5:00',
      '4',
      [480, 120],
    ],
    [
      'intervals by the clock',
      'intervals 0:40 on, 0:20 off, 8 rounds\n    Loft Rower: 150 m',
      '2',
      [320, 160],
    ],
    // 1:40 + 1:50 over one rest of 1:00.
    [
      'intervals with a time each',
      'intervals 2 x 500 m, rest 1:00\n    Loft Rower: 500 m in 1:40, 500 m in 1:50',
      '3.5',
      [210, 60],
    ],
  ])('%s', (_name, lines, expected, seconds) => {
    const result = computeWorkRest(...firstBlock(lines))!;
    expect(printValue(result)).toBe(expected);
    expect(result.inputs.map(({ value }) => value)).toEqual(seconds);
  });

  test.each([
    ['a round not timed', 'circuit, 2 rounds, rest 2:00\n    Ring Plank: 10\n    time 3:00, ?'],
    ['no times', 'circuit, 2 rounds, rest 2:00\n    Ring Plank: 10'],
    ['no rest written', 'circuit, 2 rounds\n    Ring Plank: 10\n    time 3:00, 5:00'],
    ['one round, and so no rest', 'circuit, 1 rounds, rest 2:00\n    Ring Plank: 10\n    time 3:00'],
    [
      'more rest within the rounds than they took',
      'circuit, 2 rounds, rest 2:00\n    Ring Plank: 10\n    rest 9:00\n    Bar Press: 5 @ 20 kg\n    time 3:00, 5:00',
    ],
    ['an amrap', 'amrap 5:00\n    Ring Plank: 10\n    done 3 rounds'],
  ])('with %s there is none', (_name, lines) => {
    expect(computeWorkRest(...firstBlock(lines))).toBeUndefined();
  });
});

describe('reps per minute', () => {
  test.each([
    // 2 x 10 reps in 2:00; what is weighed is in kilograms per minute.
    [
      'of what is not weighed',
      'circuit, 2 rounds\n    Ring Plank: 10\n    Bar Press: 5 @ 20 kg\n    time 0:50, 1:10',
      '10 reps/min',
      [],
    ],
    [
      'over the rounds that were timed',
      'circuit, 2 rounds\n    Ring Plank: 10\n    time 0:50, ?',
      '12 reps/min',
      ['round 2: not timed'],
    ],
    ['over the window of an amrap', 'amrap 5:00\n    Ring Plank: 10\n    done 3 rounds', '6 reps/min', []],
    [
      'at least, with a set not recorded',
      'circuit, 2 rounds\n    Ring Plank: 10, ?\n    time 0:50, 1:10',
      'at least 5 reps/min',
      [],
    ],
  ])('%s', (_name, lines, expected, omitted) => {
    const result = computeRepRate(...firstBlock(lines))!;
    expect(printValue(result)).toBe(expected);
    expect(printOmitted(result)).toEqual(omitted);
  });

  test.each([
    ['everything weighed', 'circuit, 1 rounds\n    Bar Press: 5 @ 20 kg\n    time 1:00'],
    ['no time', 'circuit, 1 rounds\n    Ring Plank: 10'],
    ['a time of nothing', 'circuit, 1 rounds\n    Ring Plank: 10\n    time 0:00'],
  ])('with %s there are none', (_name, lines) => {
    expect(computeRepRate(...firstBlock(lines))).toBeUndefined();
  });
});

describe('both explain themselves', () => {
  test('work to rest, with where the rests come from', () => {
    const labels = (lines: string) => computeWorkRest(...firstBlock(lines))!.inputs.map(({ label }) => label);
    const written = computeWorkRest(
      ...firstBlock('circuit, 2 rounds, rest 2:00\n    Ring Plank: 10\n    time 3:00, 5:00'),
    );
    expect(written).toEqual({
      value: 4,
      unit: '',
      bound: 'exact',
      method: 'work-rest',
      inputs: [
        { label: 'work', value: 480, unit: 's' },
        { label: 'rests at the written rest', value: 120, unit: 's' },
      ],
      omitted: [],
    });
    expect(labels('intervals 0:40 on, 0:20 off, 8 rounds\n    Loft Rower: 150 m')).toEqual([
      'work',
      'rests by the clock',
    ]);
    expect(
      labels('circuit, 3 rounds\n    Ring Plank: 10\n    time 3:00, 5:00, 3:00\n    rest 1:00, 1:30'),
    ).toEqual(['work', 'rests taken']);
  });

  test('reps a minute', () => {
    expect(
      computeRepRate(...firstBlock('circuit, 2 rounds\n    Ring Plank: 10\n    time 0:50, 1:10')),
    ).toEqual({
      value: 10,
      unit: 'reps/min',
      bound: 'exact',
      method: 'rep-density',
      inputs: [
        { label: 'reps', value: 20, unit: 'reps' },
        { label: 'time', value: 120, unit: 's' },
      ],
      omitted: [],
    });
    // The window of an amrap holds all of it, timed or not.
    const amrap = 'amrap 5:00\n    Ring Plank: 10\n    time 1:00, ?\n    done 3 rounds';
    expect(computeRepRate(...firstBlock(amrap))!.omitted).toEqual([]);
  });

  test('rests within a round are taken in each of its passes', () => {
    // Two passes of one rest of 0:30 in a round of 3:00: 120 of work; 60 within and none between.
    const lines =
      'circuit, 1 rounds x 2 passes\n    Ring Plank: 10\n    rest 0:30\n    Bar Press: 5 @ 20 kg\n    time 3:00';
    expect(computeWorkRest(...firstBlock(lines))!.inputs.map(({ value }) => value)).toEqual([120, 60]);
  });

  test.each([
    ['one timed interval', 'intervals 1 x 500 m, rest 1:00\n    Loft Rower: 500 m in 1:40'],
    ['an interval without a time', 'intervals 2 x 500 m, rest 1:00\n    Loft Rower: 500 m in 1:40, 500 m'],
    [
      'sets with a time that are no intervals',
      'straight, rest 1:00\n    Loft Rower: 500 m in 1:40, 500 m in 1:41',
    ],
    ['intervals without a pause', 'intervals 0:40 on, 8 rounds\n    Loft Rower: 150 m'],
    ['work that took no time', 'circuit, 2 rounds, rest 1:00\n    Ring Plank: 10\n    time 0:00, 0:00'],
  ])('no ratio of %s', (_name, lines) => {
    expect(computeWorkRest(...firstBlock(lines))).toBeUndefined();
  });
});
