import { describe, expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { describeLine, findLastLine } from '../../../language/src/measures/compare-lines.ts';
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

/** Sessions of two athletes, in the order of their days. */
function practiceWith(...sessions: readonly (readonly [date: string, lines: string])[]) {
  const practice = createPractice();
  const text = sessions.map(([date, lines]) => `session ${date} ${NAME}\n  ${lines}\n`).join('');
  practice.setFile('a.plim', text);
  return practice;
}

describe('what of a line is compared', () => {
  const facts = (lines: string) => {
    const block = practiceWith(['2026-02-02', lines]).sessionsOf(NAME)[0]!.entry.blocks[0]!;
    return describeLine(block, block.lines.at(-1)!, 0);
  };

  // Top in grams of one implement, and the sum of all sets, both sides.
  test.each<[string, ReturnType<typeof facts>]>([
    ['Back Squat: 2x5 @ 80 kg, 3 @ 90 kg', { top: 90_000, amount: 13, measure: 'reps', sets: 3 }],
    ['Back Squat: 5, ? @ 80 kg', { top: 80_000, amount: undefined, measure: 'reps', sets: 2 }],
    ['Back Squat: ?, 5 @ 80 kg', { top: 80_000, amount: undefined, measure: 'reps', sets: 2 }],
    ['Goblet Squat: 8/side @ 2x14 kg', { top: 14_000, amount: 16, measure: 'reps', sets: 1 }],
    ['Pull-up: 5', { top: 0, amount: 5, measure: 'reps', sets: 1 }],
    ['Pull-up: 5 @ bw, 4 @ bw+10 kg', { top: 10_000, amount: 9, measure: 'reps', sets: 2 }],
    ['Pull-up: 5 @ bw-20 kg', { top: -20_000, amount: 5, measure: 'reps', sets: 1 }],
    ['Pull-up: 5 @ bw-red band', { top: undefined, amount: 5, measure: 'reps', sets: 1 }],
    ['Pull-up: 5 @ bw-pin 4', { top: undefined, amount: 5, measure: 'reps', sets: 1 }],
    ['Back Squat: 5 @ 80 kg + 20 kg chain', { top: undefined, amount: 5, measure: 'reps', sets: 1 }],
    ['Back Squat: 5 @ 80 kg + red band', { top: undefined, amount: 5, measure: 'reps', sets: 1 }],
    ['Back Squat: 5 @ 24&16 kg', { top: undefined, amount: 5, measure: 'reps', sets: 1 }],
    ['Back Squat: 5 @ 70-80 kg', { top: undefined, amount: 5, measure: 'reps', sets: 1 }],
    ['Back Squat: 5 @ 80 kg, 5 @ ?', { top: undefined, amount: 10, measure: 'reps', sets: 2 }],
    ['Plank: 30 s, 8', { top: 0, amount: undefined, measure: 'seconds', sets: 2 }],
    ['circuit, 3 rounds\n    Dip: 4\n    Push-up: 10', { top: 0, amount: 30, measure: 'reps', sets: 3 }],
    ['Back Squat: skipped', undefined],
    ['Back Squat: ?', undefined],
  ])('%s', (lines, expected) => {
    expect(facts(lines)).toEqual(expected);
  });
});

describe('the last time', () => {
  const last = (...sessions: readonly (readonly [date: string, lines: string])[]) => {
    const practice = practiceWith(...sessions);
    const record = practice.sessionsOf(NAME).at(-1)!;
    const block = record.entry.blocks.at(-1)!;
    const found = findLastLine(practice, record, block, block.lines.at(-1)!);
    return found && `${found.record.date} line ${found.line.span.line}`;
  };

  test('is the nearest before, not the first', () => {
    expect(
      last(
        ['2026-02-02', 'Dip: 5'],
        ['2026-02-04', 'Dip: 6'],
        ['2026-02-06', 'Plank: 30 s'],
        ['2026-02-09', 'Dip: 7'],
      ),
    ).toBe('2026-02-04 line 1');
    expect(last(['2026-02-09', 'Dip: 7'])).toBeUndefined();
  });

  test('passes over a line that says nothing', () => {
    expect(last(['2026-02-02', 'Dip: 5'], ['2026-02-04', 'Dip: skipped'], ['2026-02-09', 'Dip: 7'])).toBe(
      '2026-02-02 line 1',
    );
  });

  test('passes over a warm-up of the same session', () => {
    expect(last(['2026-02-02', 'warmup Dip: 3\n  Dip: 5'], ['2026-02-09', 'Dip: 7'])).toBe(
      '2026-02-02 line 2',
    );
  });

  test('is of a block of like kind', () => {
    const straight = ['2026-02-02', 'straight\n    Dip: 5'] as const;
    const now = (header: string) => ['2026-02-09', `${header}\n    Dip: 7`] as const;
    expect(last(straight, now('superset, 1 rounds'))).toBe('2026-02-02 line 2');
    expect(last(straight, now('giant set, 1 rounds'))).toBe('2026-02-02 line 2');
    expect(last(straight, now('circuit, 1 rounds'))).toBeUndefined();
    const amrap = (minutes: number, date: string) => [date, `amrap ${minutes}:00\n    Dip: 5`] as const;
    expect(last(amrap(10, '2026-02-02'), amrap(10, '2026-02-09'))).toBe('2026-02-02 line 2');
    expect(last(amrap(12, '2026-02-02'), amrap(10, '2026-02-09'))).toBeUndefined();
  });

  test('is with as many implements and under any spelling', () => {
    expect(last(['2026-02-02', 'Hammer Curl: 5 @ 2x10 kg'], ['2026-02-09', 'hammer-curl: 5 @ 2x12 kg'])).toBe(
      '2026-02-02 line 1',
    );
    expect(
      last(['2026-02-02', 'Hammer Curl: 5 @ 2x10 kg'], ['2026-02-09', 'Hammer Curl: 5 @ 10 kg']),
    ).toBeUndefined();
    expect(last(['2026-02-02', 'Unlisted Thing: 5'], ['2026-02-09', 'unlisted thing: 6'])).toBe(
      '2026-02-02 line 1',
    );
  });

  test('knows of a movement that was defined meanwhile', () => {
    const practice = practiceWith(
      ['2026-02-02', 'Odd Press: 5 @ 20 kg'],
      ['2026-02-09', 'Strange Press: 5 @ 20 kg'],
    );
    const find = () => {
      const record = practice.sessionsOf(NAME).at(-1)!;
      return findLastLine(practice, record, record.entry.blocks[0]!, record.entry.blocks[0]!.lines[0]!);
    };
    expect(find()).toBeUndefined();
    practice.setFile('b.plim', 'exercise Odd Press\n  also Strange Press\n');
    expect(find()?.record.date).toBe('2026-02-02');
  });
});
