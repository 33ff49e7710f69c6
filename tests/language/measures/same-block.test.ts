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
