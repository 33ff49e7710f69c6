import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { commitAll, git } from './git.ts';
import { useEditorWindow } from './harness.ts';

const plan = `plan Lantern Ebb
  weeks 2
  days Mon
  day 1 Squat
    Back Squat: 3x5 @ 60 kg
`;

let repository = '';

const editor = useEditorWindow((folder) => {
  repository = folder;
  writeFileSync(join(folder, 'ebb.plim'), plan);
  commitAll(folder);
});

const readRevision = async (): Promise<string | undefined> =>
  /since HEAD: [^|\n]+/.exec((await editor().readLenses()).join('\n'))?.[0].trim();

test('a plan as it was committed has its own lens alone', async () => {
  await editor().openFile('ebb.plim');
  await expect.poll(async () => (await editor().readLenses())[0]).toMatch(/week 1 of 2/);
  expect(await readRevision()).toBeUndefined();
});

test('changing a line shows what that costs a week', async () => {
  await editor().typeOver({ text: '3x5' }, '4x5');
  // One more set of 5 x 60 kg; 5 x 3 s and two minutes of rest (common practice).
  await expect.poll(readRevision).toBe('since HEAD: +1 set, +300 kg a week, +2 min a day');
  await editor().typeOver({ text: '4x5' }, '5x5');
  await expect.poll(readRevision).toBe('since HEAD: +2 sets, +600 kg a week, +5 min a day');
});

test('a command opens the whole comparison beside the plan', async () => {
  await editor().runCommand('Plimsoll: Show What This Revision Costs');
  const { page } = editor();
  await page.waitForSelector('.tab:has-text("ebb since HEAD.md")');
  const shown = async (): Promise<string> =>
    (await page.locator('.editor-instance .view-lines').allTextContents())
      .join('\n')
      .replaceAll('\u00a0', ' ');
  await expect.poll(shown).toContain('Back Squat: 3x5 → 5x5 @ 60 kg');
});

test('a commit of it ends the lens', async () => {
  await editor().page.keyboard.press('Control+1');
  await editor().page.keyboard.press('Control+S');
  await editor().page.waitForSelector('.tab.active:not(.dirty)');
  git(repository, 'commit', '-q', '-a', '-m', 'More squats');
  await expect.poll(readRevision).toBeUndefined();
});
