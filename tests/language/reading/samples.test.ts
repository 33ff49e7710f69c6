import { expect, test } from 'vitest';
import { printProblems } from '../support/print-problems.ts';
import { readWhole } from '../support/read-text.ts';
import { SAMPLES } from '../support/samples.ts';

test('there are samples of every kind of entry', () => {
  const kinds = new Set(
    SAMPLES.flatMap(({ text }) => readWhole(text).model.entries.map(({ entry }) => entry.kind)),
  );
  expect([...kinds].sort()).toEqual(
    expect.arrayContaining(['athlete', 'exercise', 'place', 'plan', 'session']),
  );
});

test.each(SAMPLES)('$name has no problem and no stray line', ({ text }) => {
  const { model, lines } = readWhole(text);
  expect(printProblems(lines, model)).toEqual([]);
  expect(model.entries.flatMap(({ entry }) => entry.strays)).toEqual([]);
  expect(model.entries.map(({ entry }) => entry.kind)).not.toContain('unknown');
});
