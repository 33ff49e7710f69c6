import { expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { findLastSameBlock } from '../../../language/src/measures/same-block.ts';

const NAME = 'Ptolemy Grubb';
const BEFORE = ['A circuit, 4 rounds, rest 1:00', '  Push-up: 10', '  Goblet Squat: 10 @ 16 kg'];

/** What the block of a second session finds in a first: the same, what changed, or nothing. */
function compare(now: readonly string[], before: readonly string[] = BEFORE): string {
  const practice = createPractice();
  const session = (date: string, lines: readonly string[]) =>
    [`session ${date} ${NAME}`, ...lines.map((line) => `  ${line}`)].join('\n');
  practice.setFile('a.plim', `${session('2026-02-02', before)}\n${session('2026-02-09', now)}\n`);
  const record = practice.sessionsOf(NAME).at(-1)!;
  const { same, changed } = findLastSameBlock(practice, record, record.entry.blocks[0]!);
  if (same) return `same as ${same.record.date}`;
  return changed ? `${changed.now} in place of ${changed.before}` : 'nothing';
}

test.each([
  ['the same', BEFORE, 'same as 2026-02-02'],
  [
    'another letter, order, rounds, rest, reps and load',
    ['C circuit, 3 rounds', '  Goblet Squat: 12 @ 20 kg', '  Push-up: 8'],
    'same as 2026-02-02',
  ],
  [
    'another spelling of a movement',
    ['circuit, 4 rounds', '  press up: 10', '  DB Goblet Squat: 10 @ 16 kg'],
    'same as 2026-02-02',
  ],
  ['another kind', ['superset, 4 rounds', '  Push-up: 10', '  Goblet Squat: 10 @ 16 kg'], 'nothing'],
  ['more passes', ['circuit, 4 rounds x 2 passes', '  Push-up: 10', '  Goblet Squat: 10 @ 16 kg'], 'nothing'],
  [
    'one movement changed',
    ['circuit, 4 rounds', '  Push-up: 10', '  Front Squat: 10 @ 40 kg'],
    'front squat in place of goblet squat',
  ],
  [
    'a movement with a setting',
    ['circuit, 4 rounds', '  Push-up: 10, setting hands on box', '  Goblet Squat: 10 @ 16 kg'],
    'push up, hands on box in place of push up',
  ],
  ['two movements changed', ['circuit, 4 rounds', '  Plank: 30 s', '  Front Squat: 10 @ 40 kg'], 'nothing'],
  ['a movement more', [...BEFORE, '  Plank: 30 s'], 'nothing'],
])('a block that is %s', (_name, now, expected) => {
  expect(compare(now)).toBe(expected);
});

/** Days and blocks of a history, the last of which is asked for. */
function find(...sessions: readonly (readonly string[])[]) {
  const practice = createPractice();
  const text = sessions
    .map((lines, index) =>
      [`session 2026-02-0${index + 1} ${NAME}`, ...lines.map((line) => `  ${line}`)].join('\n'),
    )
    .join('\n');
  practice.setFile('a.plim', `${text}\n`);
  const record = practice.sessionsOf(NAME).at(-1)!;
  const { same, changed } = findLastSameBlock(practice, record, record.entry.blocks.at(-1)!);
  if (same) return `same as ${same.record.date}`;
  return changed ? `${changed.now} in place of ${changed.before} on ${changed.record.date}` : 'nothing';
}

const OTHER = ['circuit, 4 rounds', '  Push-up: 10', '  Front Squat: 10 @ 40 kg'];
const THIRD = ['circuit, 4 rounds', '  Plank: 30 s', '  Goblet Squat: 10 @ 16 kg'];

test('the latest of several, and the same before one that differs', () => {
  expect(find(BEFORE, BEFORE, BEFORE)).toBe('same as 2026-02-02');
  expect(find(BEFORE, OTHER, BEFORE)).toBe('same as 2026-02-01');
  expect(find(OTHER, THIRD, BEFORE)).toBe('push up in place of plank on 2026-02-02');
  expect(find(THIRD, OTHER, BEFORE)).toBe('goblet squat in place of front squat on 2026-02-02');
  // A block may stand anywhere in its session.
  expect(find(['Dip: 5', ...BEFORE], ['Dip: 5'], BEFORE)).toBe('same as 2026-02-01');
});

test.each([
  ['a kind of block', ['superset, 4 rounds', '  Push-up: 10', '  Front Squat: 10 @ 40 kg']],
  ['more passes', ['circuit, 4 rounds x 2 passes', '  Push-up: 10', '  Front Squat: 10 @ 40 kg']],
  ['a movement more', [...OTHER, '  Plank: 30 s']],
  ['two movements', ['circuit, 4 rounds', '  Plank: 30 s', '  Front Squat: 10 @ 40 kg']],
])('with %s another a changed movement is not told', (_name, before) => {
  expect(find(before, BEFORE)).toBe('nothing');
});

test('of a block of one movement another is no change of it', () => {
  expect(find(['circuit, 3 rounds', '  Push-up: 10'], ['circuit, 3 rounds', '  Dip: 10'])).toBe('nothing');
});

test('warm-up sets do not make a block another', () => {
  const warm = [
    'circuit, 4 rounds',
    '  warmup Front Squat: 5 @ 20 kg',
    '  Push-up: 10',
    '  Goblet Squat: 10 @ 16 kg',
  ];
  expect(find(BEFORE, warm)).toBe('same as 2026-02-01');
  expect(find(warm, BEFORE)).toBe('same as 2026-02-01');
});

test('the number of intervals is none of what makes them the same, their clock is', () => {
  const intervals = (header: string) => [`intervals ${header}`, '  Rower: 150 m'];
  expect(find(intervals('0:40 on, 0:20 off, 8 rounds'), intervals('0:40 on, 0:20 off, 6 rounds'))).toBe(
    'same as 2026-02-01',
  );
  expect(find(intervals('0:40 on, 0:20 off, 8 rounds'), intervals('0:30 on, 0:30 off, 8 rounds'))).toBe(
    'nothing',
  );
  expect(find(intervals('6 x 500 m'), intervals('4 x 500 m'))).toBe('same as 2026-02-01');
});

test('lines without a block, and a block without lines, have no last time', () => {
  expect(find(['Push-up: 10'], ['Push-up: 10'])).toBe('nothing');
  expect(find(['circuit, 3 rounds', '  > nobody came'], ['circuit, 3 rounds', '  > nobody came'])).toBe(
    'nothing',
  );
  expect(find(['Push-up: 10'], ['straight', '  Push-up: 10'])).toBe('nothing');
});
