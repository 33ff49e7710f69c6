import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { useEditorWindow } from './harness.ts';

// Today is Tuesday 2026-11-24, in week 48. Weights are chosen so that the totals are sums a reader can do.
const log = `athlete Quill Harrow

session 2026-11-23 Quill Harrow
  A straight
    Back Squat: 3x5 @ 80 kg
  B circuit, 4 rounds
    Goblet Squat: 10, 10, 10 @ 20 kg
`;

const editor = useEditorWindow((folder) => writeFileSync(join(folder, 'quill.plim'), log));

test('a lens over a session sums its working sets and kilograms', async () => {
  await editor().openFile('quill.plim');
  const session = /6 working sets · 1\s800 kg/; // 3 × 5 × 80 + 3 × 10 × 20
  await expect.poll(async () => (await editor().readLenses())[0]).toMatch(session);
});

test('three numbers in four rounds are underlined', async () => {
  await expect
    .poll(() => editor().readSquiggles())
    .toEqual([expect.objectContaining({ severity: 'warning' })]);
  await expect
    .poll(() => editor().readProblems())
    .toContainEqual(expect.objectContaining({ code: 'round-count' }));
});

test('typing the fourth round updates the lens and ends the underline', async () => {
  await editor().typeAfter({ text: '10, 10, 10' }, ', 10');
  await expect.poll(async () => (await editor().readLenses())[0]).toMatch(/7 working sets · 2\s000 kg/);
  await expect.poll(() => editor().readSquiggles()).toEqual([]);
});

test('pointing at a movement says what it is', async () => {
  expect(await editor().hover({ text: 'Goblet Squat' })).toMatch(/Goblet Squat[\s\S]*quadriceps/i);
});

test('pointing at a load says it in pounds', async () => {
  expect(await editor().hover({ text: '80 kg' })).toMatch(/176\.4 lb/); // 80 / 0.453 592 37
});

test('pointing at a date says its week', async () => {
  expect(await editor().hover({ text: '2026-11-23' })).toMatch(/week 2026-W48/);
});

test('the sample for the first day has lenses and nothing is underlined', async () => {
  await editor().openFile('first-day.plim');
  await expect.poll(async () => (await editor().readLenses()).length).toBeGreaterThanOrEqual(3);
  expect(await editor().readSquiggles()).toEqual([]);
});
