import { describe, expect, test } from 'vitest';
import {
  computeBlockDensity,
  computeSessionDensity,
  computeWorkDensity,
  findRests,
  findTimes,
  findWindow,
  splitRounds,
} from '../../../language/src/measures/density.ts';
import { NO_WORK } from '../../../language/src/measures/work.ts';
import { NAME, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
  bodyweight 80 kg on 2026-01-01
exercise Bar Press
  needs barbell
exercise Press Up
  bodyweight 50%, for the sums of this test
exercise Ring Plank
`;

function read(lines: string, header = `session 2026-02-02 ${NAME}`) {
  const { sessions } = readWorks(DEFINITIONS, `${header}\n  ${lines}\n`);
  const { blocks, record } = sessions[0]!;
  const work = blocks[0]!;
  return { work, block: work.block, record, times: findTimes(work.block, record) };
}

const workDensity = (lines: string) => {
  const { work, times } = read(lines);
  return computeWorkDensity(work, times);
};
const blockDensity = (lines: string) => {
  const { work, times } = read(lines);
  return computeBlockDensity(work, times);
};

const PRESS = '    Bar Press: 12 @ 100 kg\n';

// Rule: total over total. 1 200 kg in 3:00 and in 5:00 is 2 400 / 8 = 300 kg/min, not the mean of 400 and 240.
describe('work density', () => {
  test('is total over total, with what went in', () => {
    expect(workDensity(`circuit, 2 rounds, rest 2:00\n${PRESS}    time 3:00, 5:00`)).toEqual({
      value: 300,
      unit: 'kg/min',
      bound: 'exact',
      method: 'work-density',
      inputs: [
        { label: 'volume', value: 2400, unit: 'kg' },
        { label: 'time', value: 480, unit: 's' },
        { label: 'timed rounds', value: 2, unit: 'rounds' },
      ],
      omitted: [],
    });
  });

  test('leaves out and names a round that was not timed', () => {
    expect(workDensity(`circuit, 3 rounds\n${PRESS}    time 3:00, ?, 2:00`)).toMatchObject({
      value: 480, // 2 400 kg in 5:00
      inputs: [{}, { value: 300 }, { value: 2 }],
      omitted: [{ what: 'round 2', why: 'not timed' }],
    });
  });

  test('says that the body is in it, and how many reps have no kilograms', () => {
    // A round: 10 x 40 kg of the body = 400 kg; 6 reps of the plank are only counted. 800 kg in 4:00.
    const lines = 'circuit, 2 rounds\n    Press Up: 10\n    Ring Plank: 6\n    time 2:00, 2:00';
    expect(workDensity(lines)).toMatchObject({
      value: 200,
      inputs: [{ label: 'volume incl. body', value: 800, unit: 'kg' }, {}, {}],
      omitted: [{ what: '12 reps', why: 'without kilograms' }],
    });
  });

  test('counts reps where nothing has kilograms', () => {
    expect(workDensity('circuit, 1 rounds\n    Ring Plank: 30\n    time 2:00')).toMatchObject({
      value: 15,
      unit: 'reps/min',
      inputs: [{ label: 'reps', value: 30, unit: 'reps' }, { value: 120 }, { value: 1 }],
      omitted: [],
    });
  });

  test('is a lower bound where a set is not known, and says which', () => {
    expect(workDensity('circuit, 2 rounds\n    Bar Press: 10, ? @ 60 kg\n    time 2:00, 1:00')).toMatchObject(
      {
        value: 200, // 600 kg in 3:00
        bound: 'at least',
        omitted: [{ what: 'Bar Press', why: 'a set not recorded' }],
      },
    );
  });

  test.each([
    ['without times', `circuit, 2 rounds\n${PRESS}`],
    ['of no time', `circuit, 1 rounds\n${PRESS}    time 0:00`],
    ['of nothing done', 'circuit, 1 rounds\n    Bar Press: 0 of 1 @ 100 kg\n    time 2:00'],
    ['with no round timed', `circuit, 2 rounds\n${PRESS}    time ?, ?`],
  ])('is none %s', (_name, lines) => {
    expect(workDensity(lines)).toBeUndefined();
  });
});

describe('block density', () => {
  test('takes the rests between, never those before and after, and says they are the written ones', () => {
    // 2 400 kg / (3:00 + 5:00 + one rest of 2:00).
    expect(blockDensity(`circuit, 2 rounds, rest 2:00\n${PRESS}    time 3:00, 5:00`)).toEqual({
      value: 240,
      unit: 'kg/min',
      bound: 'exact',
      method: 'block-density',
      inputs: [
        { label: 'volume', value: 2400, unit: 'kg' },
        { label: 'time', value: 600, unit: 's' },
        { label: 'rests at the written rest', value: 120, unit: 's' },
      ],
      omitted: [],
    });
  });

  test('takes the rests that were recorded before those written', () => {
    const lines = `circuit, 2 rounds, rest 2:00\n${PRESS}    time 3:00, 5:00\n    rest 4:00, 9:00`;
    expect(blockDensity(lines)).toMatchObject({
      value: 200, // 2 400 kg / 12:00
      inputs: [{}, { value: 720 }, { label: 'rests taken', value: 240 }],
    });
  });

  test('of one round has no rest', () => {
    expect(blockDensity(`circuit, 1 rounds\n${PRESS}    time 4:00`)).toMatchObject({
      value: 300,
      inputs: [{}, {}, { label: 'rests between', value: 0, unit: 's' }],
    });
  });

  test.each([
    ['an amrap, its whole window', 'amrap 10:00\n    Bar Press: 10 @ 20 kg\n    done 5 rounds', 100, 600],
    ['every minute', 'every 1:00 for 5:00\n    Bar Press: 2 @ 50 kg', 100, 300],
    ['for time, its end', 'for time, 3 rounds\n    Bar Press: 10 @ 20 kg\n    done in 5:00', 120, 300],
  ])('of %s', (_name, lines, value, seconds) => {
    const density = blockDensity(lines)!;
    expect(density).toMatchObject({ value, method: 'block-density' });
    expect(density.inputs.map((input) => input.value)).toEqual([(value * seconds) / 60, seconds]);
  });

  test('of an amrap without its score is a lower bound', () => {
    expect(blockDensity('amrap 10:00\n    Bar Press: 10 @ 20 kg')).toMatchObject({
      value: 20,
      bound: 'at least',
      omitted: [{ what: 'amrap', why: 'its rounds are not written (done 4 rounds + 5)' }],
    });
  });

  test.each([
    ['a round not timed', `circuit, 2 rounds, rest 2:00\n${PRESS}    time 3:00, ?`],
    ['no rest written', `circuit, 2 rounds\n${PRESS}    time 3:00, 5:00`],
    [
      'a rest not recorded',
      `circuit, 3 rounds, rest 2:00\n${PRESS}    time 3:00, 5:00, 4:00\n    rest 1:00, ?`,
    ],
    [
      'too few rests',
      `circuit, 4 rounds, rest 2:00\n${PRESS}    time 3:00, 5:00, 5:00, 4:00\n    rest 1:00, 1:10`,
    ],
    ['no times', `circuit, 2 rounds, rest 2:00\n${PRESS}`],
    ['no end of a for time', `for time, 3 rounds\n${PRESS}`],
  ])('is none with %s', (_name, lines) => {
    expect(blockDensity(lines)).toBeUndefined();
  });
});

// Rule: working volume over the time the session lasted. BMJ Military Health, table 1: 1 560 kg / 45 min = 34.7.
test('session density', () => {
  const work = { ...NO_WORK, reps: 24, weighedReps: 24, external: 1_560_000 };
  const density = computeSessionDensity(work, 45 * 60)!;
  expect(density.value!.toFixed(1)).toBe('34.7');
  expect(density).toMatchObject({
    unit: 'kg/min',
    method: 'session-density',
    inputs: [
      { label: 'volume', value: 1560, unit: 'kg' },
      { label: 'time', value: 2700, unit: 's' },
    ],
  });
  expect(computeSessionDensity(work, undefined)).toBeUndefined();
  expect(computeSessionDensity(work, 0)).toBeUndefined();
  const omitted = [{ what: 'Dip', why: 'a set not recorded' }];
  expect(computeSessionDensity({ ...work, atLeast: true, omitted }, 2700)).toMatchObject({
    bound: 'at least',
    omitted,
  });
});

describe('parts of a density', () => {
  test('rounds with and without a time', () => {
    const { work, times } = read('circuit, 3 rounds\n    Ring Plank: 5\n    time 1:00, ?');
    expect(splitRounds(work, times)).toEqual({ timed: [0], untimed: [2, 3] });
    expect(splitRounds(work, [])).toEqual({ timed: [], untimed: [] });
  });

  test('rounds that nobody counted are those done, or timed', () => {
    const { work } = read('circuit\n    Ring Plank: 5, 5');
    expect(splitRounds(work, [60])).toEqual({ timed: [0], untimed: [2] });
    expect(splitRounds(work, [60, 61, 62])).toEqual({ timed: [0, 1, 2], untimed: [] });
  });

  test('times of each athlete of a group, or one list for all', () => {
    const header = `session 2026-02-02 ${NAME} | Wenna Flit`;
    const own = read('circuit, 1 rounds\n    Ring Plank: 5\n    time 1:00 | 2:00', header).block;
    expect([0, 1, 2].map((index) => findTimes(own, { index }))).toEqual([[60], [120], []]);
    const shared = read('circuit, 1 rounds\n    Ring Plank: 5\n    time 1:00', header).block;
    expect(findTimes(shared, { index: 1 })).toEqual([60]);
  });

  test('a clock that is written', () => {
    const window = (lines: string) => findWindow(read(lines).block);
    expect(window('amrap 12:00\n    Ring Plank: 5')).toBe(720);
    expect(window('every 1:00 for 5:00\n    Ring Plank: 5')).toBe(300);
    expect(window('for time, 2 rounds\n    Ring Plank: 5\n    done in 4:10')).toBe(250);
    expect(window('circuit, 2 rounds\n    Ring Plank: 5\n    done 2 rounds')).toBeUndefined();
  });

  test('the R - 1 rests between R rounds', () => {
    const rests = (header: string, rounds: number, taken = '') =>
      findRests(read(`${header}\n    Ring Plank: 5${taken}`).block, rounds);
    expect(rests('circuit, 4 rounds, rest 1:30', 4)).toEqual({
      seconds: 270,
      label: 'rests at the written rest',
    });
    expect(rests('circuit, 3 rounds', 3, '\n    rest 1:00, 1:10')).toEqual({
      seconds: 130,
      label: 'rests taken',
    });
    expect(rests('circuit, 3 rounds', 3)).toBeUndefined();
  });
});
