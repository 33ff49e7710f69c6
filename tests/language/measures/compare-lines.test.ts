import { expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { describeFileHints } from '../../../language/src/summaries/file-lenses.ts';

const NAME = 'Ptolemy Grubb';

/** The hint at the end of the last line of a second session, given the first. */
function hint(before: readonly string[], now: readonly string[]): string {
  const practice = createPractice();
  const session = (date: string, lines: readonly string[]) =>
    [`session ${date} ${NAME}`, ...lines.map((line) => `  ${line}`)].join('\n');
  practice.setFile('a.plim', `${session('2026-02-02', before)}\n${session('2026-02-09', now)}`);
  const options = { today: '2026-02-10', formula: 'epley', unit: 'kg', complete: true } as const;
  // What a line's rounds make (`= 3 sets`) is a hint of its own.
  const hints = describeFileHints(new SessionWorks(practice), 'a.plim', options);
  return hints.findLast(({ text }) => !text.startsWith('='))?.text ?? 'none';
}

test.each([
  [
    'more load',
    ['Back Squat: 3x5 @ 80 kg'],
    ['Back Squat: 3x5 @ 82.5 kg'],
    '+2.5 kg since 2 Feb · record for 5 reps',
  ],
  [
    'more reps',
    ['Back Squat: 3x5 @ 80 kg'],
    ['Back Squat: 3x6 @ 80 kg'],
    '+3 reps since 2 Feb · record for 6 reps',
  ],
  ['both', ['Back Squat: 3x5 @ 80 kg'], ['Back Squat: 6, 5, 5 @ 75 kg'], '-5 kg, +1 rep since 2 Feb'],
  ['neither', ['Back Squat: 3x5 @ 80 kg'], ['back squat: 5, 5, 5 @ 80 kg'], 'same as 2 Feb'],
  ['longer holds', ['Plank: 30 s'], ['Plank: 45 s'], '+15 s since 2 Feb'],
  [
    'shorter carries',
    ['Farmer Carry: 40 m @ 2x24 kg'],
    ['Farmer Carry: 30 m @ 2x24 kg'],
    '-10 m since 2 Feb',
  ],
  [
    'all rounds of a circuit',
    ['circuit, 3 rounds', '  Push-up: 10'],
    ['circuit, 4 rounds', '  Push-up: 10, 10, 9, 8'],
    '+7 reps since 2 Feb',
  ],
  ['not a circuit with straight sets', ['circuit, 3 rounds', '  Push-up: 10'], ['Push-up: 3x10'], 'none'],
  [
    'not other intervals',
    ['intervals 6 x 500 m', '  Rower: 500 m'],
    ['intervals 0:40 on, 0:20 off, 8 rounds', '  Rower: 170 m'],
    'none',
  ],
  [
    'not another setting',
    ['Box Squat: 5 @ 60 kg, setting box 40 cm'],
    ['Box Squat: 5 @ 60 kg, setting box 45 cm'],
    'none',
  ],
  ['not warm-up sets', ['warmup Back Squat: 5 @ 40 kg'], ['Back Squat: 5 @ 80 kg'], 'none'],
  [
    'less help',
    ['Pull-up: 5 @ bw-20 kg'],
    ['Pull-up: 5 @ bw-15 kg'],
    '+5 kg since 2 Feb · record for 5 reps',
  ],
])('a hint compares %s', (_name, before, now, expected) => {
  expect(hint(before, now)).toBe(expected);
});
