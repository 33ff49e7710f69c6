import { describe, expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import type { SessionEntry } from '../../../language/src/model/entry.ts';

const TEXT = `session 2026-11-09 Hesper Quillon
  A straight
    Back Squat: 3x5 @ 80 kg
    Bench Press: 3x8 @ 50 kg
  B circuit, 3 rounds
    Push-up: 12
  C straight
    Plank: 30 s
`;

/** The session before and after an edit; nothing that makes reading faster lasts from the one to the other. */
function edit(from: string, to: string): [SessionEntry, SessionEntry] {
  const practice = createPractice();
  practice.setFile('log.plim', TEXT);
  const before = practice.file('log.plim')!.model.entries[0]!.entry as SessionEntry;
  practice.forgetReading();
  practice.setFile('log.plim', TEXT.replace(from, to));
  return [before, practice.file('log.plim')!.model.entries[0]!.entry as SessionEntry];
}

/** By their names, the blocks and lines that are the very objects of before. */
function listKept([before, after]: [SessionEntry, SessionEntry]): string[] {
  const old = new Set<unknown>(before.blocks.flatMap((block) => [block, ...block.lines]));
  return after.blocks.flatMap((block) => [
    ...(old.has(block) ? [`block of ${block.lines[0]!.name.text}`] : []),
    ...block.lines.flatMap((line) => (old.has(line) ? [line.name.text] : [])),
  ]);
}

describe('of a session, what an edit leaves is what it was', () => {
  const OTHERS = ['block of Push-up', 'Push-up', 'block of Plank', 'Plank'];

  test.each([
    ['a set', '3x8', '4x8', ['Back Squat', ...OTHERS]],
    ['a slip, which is read by the generated parser', '3x8', '3xx8', ['Back Squat', ...OTHERS]],
    [
      'the rounds of a block',
      '3 rounds',
      '4 rounds',
      ['block of Back Squat', 'Back Squat', 'Bench Press', 'Push-up', 'block of Plank', 'Plank'],
    ],
    // What stands below is on another line of its entry.
    ['a line more', '  B circuit', '    Deadlift: 5 @ 90 kg\n  B circuit', ['Back Squat', 'Bench Press']],
  ])('%s', (_, from, to, kept) => {
    expect(listKept(edit(from, to))).toEqual(kept);
  });

  test('what is typed counts', () => {
    const [before, after] = edit('3x8', '4x8');
    expect(before.blocks[0]!.lines[1]!.cells[0]!.sets[0]!.count).toBe(3);
    expect(after.blocks[0]!.lines[1]!.cells[0]!.sets[0]!.count).toBe(4);
  });
});
