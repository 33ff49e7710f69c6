import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';
import { readWhole } from '../support/read-text.ts';

const ENTRIES = [
  ['athlete Ivo Brundt', '  born 1991', ''],
  ['session 2026-11-17 Ivo Brundt', '  Row: 5 @ 20 kg', ''],
  ['session 2026-11-18 Ivo Brundt', '  Row: 5 @ 22', ''],
];
const write = (...entries: readonly (readonly string[])[]): string => entries.flat().join('\n');
const entriesOf = (read: ReturnType<typeof readWhole>) => read.model.entries.map(({ entry }) => entry);

test('a file is cut at its headers, and knows where each entry begins', () => {
  const { model } = readWhole(write(['# a comment', ''], ...ENTRIES));
  expect(model.entries.map(({ line, entry }) => [line, entry.kind, entry.lineCount])).toEqual([
    [2, 'athlete', 3],
    [5, 'session', 3],
    [8, 'session', 3],
  ]);
});

test('lines before the first header are an entry of no kind; blank ones are none', () => {
  const { model } = readWhole('\n  Row: 5\nathlete Ivo');
  expect(model.entries.map(({ line, entry }) => [line, entry.kind])).toEqual([
    [1, 'unknown'],
    [2, 'athlete'],
  ]);
});

test('an entry that did not change is the same object', () => {
  const before = readWhole(write(...ENTRIES));
  const after = readWhole(
    write(ENTRIES[0]!, ['session 2026-11-17 Ivo Brundt', '  Row: 6 @ 20 kg', ''], ENTRIES[2]!),
    before,
  );
  const [a, b] = [entriesOf(before), entriesOf(after)];
  expect(b[0]).toBe(a[0]);
  expect(b[1]).not.toBe(a[1]);
  expect(b[2]).toBe(a[2]);
});

test('so is one that moved, also where the line ends are others', () => {
  const before = readWhole(write(...ENTRIES));
  const moved = readWhole(
    write(['# new', ''], ENTRIES[0]!, ENTRIES[1]!, ENTRIES[2]!).replaceAll('\n', '\r\n'),
    before,
  );
  expect(moved.model.entries.map(({ line }) => line)).toEqual([2, 5, 8]);
  expect(entriesOf(moved).every((entry, index) => entry === entriesOf(before)[index])).toBe(true);
});

test('two equal entries stay two', () => {
  const twice = readWhole(write(ENTRIES[1]!, ENTRIES[1]!));
  const again = readWhole(write(ENTRIES[0]!, ENTRIES[1]!, ENTRIES[1]!, ENTRIES[1]!), twice);
  const [first, second] = entriesOf(twice);
  const entries = entriesOf(again).slice(1);
  expect(new Set(entries).size).toBe(3);
  expect(entries).toEqual(expect.arrayContaining([first, second]));
  expect(entries.filter((entry) => entry === first || entry === second)).toHaveLength(2);
});

test('the unit of the file counts wherever it stands, and a change of it reads every entry anew', () => {
  const bare = readWhole(write(...ENTRIES));
  expect(bare.model.units).toBeUndefined();
  const pounds = readWhole(write(...ENTRIES, ['units lb']), bare);
  expect(pounds.model.units).toBe('lb');
  expect(entriesOf(pounds)[0]).not.toBe(entriesOf(bare)[0]);
  const grams = (read: ReturnType<typeof readWhole>): number | undefined => {
    const entry = entriesOf(read).findLast(({ kind }) => kind === 'session')!;
    const load = entry.kind === 'session' ? entry.blocks[0]!.lines[0]!.cells[0]!.sets[0]!.load : undefined;
    return load?.kind === 'mass' ? load.mass.grams : undefined;
  };
  expect([grams(bare), grams(pounds)]).toEqual([undefined, 9979]);
  const kilograms = readWhole(write(['units: kgs'], ...ENTRIES), pounds);
  expect(kilograms.model.units).toBe('kg');
  expect(grams(kilograms)).toBe(22_000);
});

test('of several units the first counts, and a word that is no unit none', () => {
  expect(readWhole('units kg\nunits lb').model.units).toBe('kg');
  expect(readWhole('units\nunits stone\nunits lb').model.units).toBe('lb');
  expect(readWhole('athlete Ivo\n  units lb').model.units).toBeUndefined();
});

test('what is read again gives what reading anew gives', () => {
  const texts = [
    write(...ENTRIES),
    write(ENTRIES[2]!, ENTRIES[0]!),
    write(['units kg'], ...ENTRIES),
    '',
    write(...ENTRIES),
  ];
  let read = readWhole('');
  for (const text of texts) {
    read = readWhole(text, read);
    const { model, lines } = readWhole(text);
    expect([read.model, read.text, read.lines]).toEqual([model, text, lines]);
  }
});

/** Headers, what is nearly one, and what may be one above it or not. */
const LINES = [
  'athlete Ivo Brundt',
  'units lb',
  'units kg',
  '  units lb',
  'session 2026-11-17 Ivo Brundt',
  'sesion 2026-11-18 Ivo Brundt',
  '\ufeffplace Shed',
  'exercise Row',
  '  Row: 5 @ 20',
  '  > a note',
  'Row: 6',
  '# a comment',
  '',
];
const someLines = fc.array(fc.constantFrom(...LINES), { maxLength: 12 });
const someEdit = fc.record({
  at: fc.nat(12),
  removed: fc.nat(4),
  added: fc.array(fc.constantFrom(...LINES), { maxLength: 3 }),
});

test(
  'after any edits a file says what it says when it is read afresh',
  () => {
    fc.assert(
      fc.property(someLines, fc.array(someEdit, { minLength: 1, maxLength: 5 }), (first, edits) => {
        const lines = [...first];
        let read = readWhole(lines.join('\n'));
        for (const { at, removed, added } of edits) {
          lines.splice(at, removed, ...added);
          read = readWhole(lines.join('\n'), read);
          expect(read.model).toEqual(readWhole(lines.join('\n')).model);
          expect(read.lines).toEqual(lines.length === 0 ? [''] : lines);
        }
      }),
      { ...RUNS, numRuns: 3 * RUNS.numRuns },
    );
  },
  PATIENCE,
);

test('an edit of one entry leaves the others the same objects, however many there are', () => {
  const many = Array.from({ length: 50 }, (_, index) => [
    `session 2026-01-01 ${index}:00 Ivo Brundt`,
    '  Row: 5 @ 20 kg',
    '',
  ]);
  const before = readWhole(write(...many));
  const changed = many.with(20, ['session 2026-01-01 Ivo Brundt', '  Row: 5', '  Row: 6', '']);
  const after = readWhole(write(...changed), before);
  const same = entriesOf(after).flatMap((entry, index) =>
    entry === entriesOf(before)[index] ? [] : [index],
  );
  expect(same).toEqual([20]);
  // Above the edit even the places are the same objects.
  expect(after.model.entries[18]).toBe(before.model.entries[18]);
});

test('the lines of a text come and go; what they say stays', () => {
  const read = readWhole('session 2026-01-01\r\n  Row: 5');
  expect(read.lines).toEqual(['session 2026-01-01', '  Row: 5']);
  expect(read.text).toBe('session 2026-01-01\r\n  Row: 5');
});
