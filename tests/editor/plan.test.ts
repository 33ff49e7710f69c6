import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { commitAll } from './git.ts';
import { useEditorWindow } from './harness.ts';

const plans = 'practice/plans.plim';
const log = 'perrin-oakumby/2026-11.plim';
let folder = '';

const editor = useEditorWindow((samples) => {
  folder = samples;
  commitAll(samples);
});

/** All of the text that is on the screen, whichever editor it is in. */
const readText = async (): Promise<string> =>
  (await editor().page.locator('.editor-instance .view-line').allTextContents())
    .join('\n')
    .replaceAll('\u00a0', ' ');

const readLenses = async (): Promise<string> => (await editor().readLenses()).join('\n');

const header = 'session 2026-11-24 Perrin Oakumby at Saltglass Loft, Winter Swell week 1 day 1';

test('a command writes the next session from the sample plan, and one undo takes it back', async () => {
  await editor().openFile(plans);
  await editor().select({ text: 'plan Winter Swell' });
  // Until all logs are read there is nothing to write from.
  await expect.poll(readLenses).toContain('week 1 of 6 · 31 sets');
  await editor().runCommand('Plimsoll: Write Next Session');
  await editor().page.waitForSelector(`.tab.active [aria-label^="${folder}/${log}"]`);
  await expect.poll(readText).toContain(header);
  // 97.5 kg at rpe 8 on 18 November is 107.25 kg for one by Epley, and that at rpe 8 97.5 kg again; 12 % less are 85.8.
  await expect.poll(readText).toContain('Bench Press: 1 @ 97.5 kg, 3x4 @ 85 kg');
  await expect.poll(readText).toContain('> rpe 8 of e1RM 107.3: 95-102.5 kg, the middle is written');
  await editor().page.keyboard.press('Control+Z');
  await expect.poll(readText).not.toContain(header);
  // The editor saves by itself, the session as well as its undoing.
  await expect.poll(() => readFileSync(join(folder, log), 'utf8')).not.toContain('Winter Swell');
});

test('editing the sample plan shows what that costs since the last commit', async () => {
  await editor().openFile(plans);
  await editor().select({ text: 'plan Winter Swell' });
  await expect.poll(readLenses).toContain('week 1 of 6 · 31 sets');
  expect(await readLenses()).not.toContain('since HEAD');
  await editor().typeOver({ text: '3x4 @ -12%' }, '4x4 @ -12%');
  // One set more in five weeks, 4 x 85 kg; in the deload 60 % of 4 sets and of 5 are both 3.
  await expect.poll(readLenses).toMatch(/since HEAD: \+0\.8 sets, \+283 kg a week on average/);
  await editor().typeOver({ text: '4x4 @ -12%' }, '3x4 @ -12%');
  await expect.poll(readLenses).not.toContain('since HEAD');
});
