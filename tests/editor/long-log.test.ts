import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { useEditorWindow } from './harness.ts';

/** A session every third day for eight years; each is told from the others by its reps. */
const COUNT = 1000;
const sessions = Array.from({ length: COUNT }, (_, index) => {
  const day = new Date(Date.UTC(2018, 0, 1 + 3 * index)).toISOString().slice(0, 10);
  return `session ${day} Quill Harrow\n  A straight\n    Push-up: ${index + 1}\n`;
});

const editor = useEditorWindow((folder) =>
  writeFileSync(join(folder, 'years.plim'), `athlete Quill Harrow\n\n${sessions.join('\n')}`),
);

test('a log of many years has lenses at its top', async () => {
  await editor().openFile('years.plim');
  await expect.poll(async () => (await editor().readLenses()).length).toBeGreaterThanOrEqual(5);
});

test('scrolled to its end it has those of its last sessions', async () => {
  await editor().select({ text: `Push-up: ${COUNT}` });
  await expect
    .poll(async () => (await editor().readLenses()).filter((text) => /^1 working set/.test(text)).length)
    .toBeGreaterThanOrEqual(3);
});

test('typing there updates them', async () => {
  await editor().typeAfter({ text: `Push-up: ${COUNT}` }, ', 12, 12');
  await expect.poll(async () => (await editor().readLenses()).join('\n')).toMatch(/3 working sets/);
});
