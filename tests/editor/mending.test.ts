import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { useEditorWindow } from './harness.ts';

const FIRST_LOOK = 60_000;

const log = `athlete Quill Harrow

session 2026-11-23 Quill Harrow
  A straight
    Goblit Squat: 3x10 @ 20 kg
`;

const untidy = `athlete   Tamsin Wend
session 2026-11-23   Tamsin Wend
Back Squat:3x5@80kg   # as planned
  A   circuit,3 rounds
Push-up :12
> knees   hurt
`;

const tidy = `athlete Tamsin Wend

session 2026-11-23 Tamsin Wend
  Back Squat: 3x5 @ 80 kg  # as planned
  A circuit, 3 rounds
    Push-up: 12
    > knees   hurt
`;

const editor = useEditorWindow((folder) => {
  writeFileSync(join(folder, 'quill.plim'), log);
  writeFileSync(join(folder, 'tamsin.plim'), untidy);
});

test(
  'a quick fix writes the name that was meant, and the underline goes',
  async () => {
    await editor().openFile('quill.plim');
    // The first look of a fresh window: the server starts and reads the samples meanwhile.
    await expect
      .poll(() => editor().readSquiggles(), { timeout: FIRST_LOOK })
      .toEqual([{ severity: 'warning', text: 'Goblit Squat' }]);
    await editor().pickAction({ text: 'Goblit' }, 'Write Goblet Squat');
    await expect.poll(() => editor().readSaved('quill.plim')).toBe(log.replace('Goblit', 'Goblet'));
    await expect.poll(() => editor().readSquiggles()).toEqual([]);
  },
  3 * FIRST_LOOK,
);

test('Enter formats the line that it ends, and only that', async () => {
  await editor().typeAfter({ text: '20 kg' }, '\nBench Press:5,5 ,4@60kg\n');
  const written = log.replace('Goblit', 'Goblet').trimEnd();
  await expect
    .poll(() => editor().readSaved('quill.plim'))
    .toMatch(`${written}\n    Bench Press: 5, 5, 4 @ 60 kg\n`);
});

test('formatting a file spaces and indents it, and leaves comments and notes as they are', async () => {
  await editor().openFile('tamsin.plim');
  await expect.poll(async () => (await editor().readLenses()).length).toBeGreaterThan(0);
  await editor().runCommand('Format Document');
  await expect.poll(() => editor().readSaved('tamsin.plim')).toBe(tidy);
});
