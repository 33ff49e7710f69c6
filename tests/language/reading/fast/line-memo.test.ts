import { createPractice } from '@plimsoll/language/create-practice';
import type { MovementLine, SessionEntry } from '@plimsoll/language/model/entry';
import { LineMemo } from '@plimsoll/language/reading/fast/line-memo';
import { readRegularSession } from '@plimsoll/language/reading/fast/read-session';
import { expect, test } from 'vitest';

const memo = new LineMemo();

function readLines(text: string, unit: 'kg' | 'lb' | undefined = 'kg'): readonly MovementLine[] {
  const lines = text.split('\n');
  const frame = {
    lineCount: lines.length,
    header: { line: 0, start: 0, end: lines[0]!.length },
    ignores: [],
  };
  const entry = readRegularSession(lines, frame, unit, memo) as SessionEntry;
  return entry.blocks.flatMap((block) => block.lines);
}

test('the same text at the same place of two sessions is one fact', () => {
  const [first] = readLines('session 2026-11-03 Odalys Fenn\n  Back Squat: 3x5 @ 60 kg');
  const [second] = readLines('session 2026-11-10 Odalys Fenn\n  Back Squat: 3x5 @ 60 kg');
  expect(second).toBe(first);
});

test('a line further down is another fact, for its place is another', () => {
  const [first] = readLines('session 2026-11-03 Odalys Fenn\n  Back Squat: 3x5 @ 60 kg');
  const [second] = readLines('session 2026-11-10 Odalys Fenn\n  effort 7\n  Back Squat: 3x5 @ 60 kg');
  expect(second!.span.line).toBe(2);
  expect(second).toStrictEqual({
    ...first!,
    span: { ...first!.span, line: 2 },
    name: { ...first!.name, span: { ...first!.name.span, line: 2 } },
    cells: second!.cells,
  });
});

test('bare numbers are those of the file', () => {
  const text = 'session 2026-11-03 Odalys Fenn\n  Deadlift: 5 @ 100';
  const grams = (lines: readonly MovementLine[]): number | undefined => {
    const load = lines[0]!.cells[0]!.sets[0]!.load;
    return load?.kind === 'mass' ? load.mass.grams : undefined;
  };
  expect(grams(readLines(text, 'kg'))).toBe(100_000);
  expect(grams(readLines(text, 'lb'))).toBe(45_359);
  expect(grams(readLines(text, 'kg'))).toBe(100_000);
});

test('a note belongs to the line above it in its own session alone', () => {
  const [noted] = readLines(
    'session 2026-11-03 Odalys Fenn\n  Back Squat: 3x5 @ 60 kg\n    > Slow.\n    > Deep.',
  );
  const [bare] = readLines('session 2026-11-10 Odalys Fenn\n  Back Squat: 3x5 @ 60 kg');
  expect(noted!.notes.map(({ text }) => text)).toEqual(['Slow.', 'Deep.']);
  expect(bare!.notes).toEqual([]);
});

test('blocks with the same header keep their own lines', () => {
  const practice = createPractice();
  const session = (day: number, sets: string) =>
    `session 2026-11-0${day} Odalys Fenn\n  A circuit, 2 rounds\n    Push-up: ${sets}\n    time 1:10, 1:12`;
  practice.setFile('memory:a.plim', `${session(3, '10, 9')}\n\n${session(5, '11, 10')}\n`);
  const counts = practice
    .file('memory:a.plim')!
    .model.entries.map(
      ({ entry }) =>
        entry.kind === 'session' && entry.blocks.map(({ lines, times }) => [lines.length, times]),
    );
  expect(counts).toEqual([[[1, [[70, 72]]]], [[1, [[70, 72]]]]]);
});
