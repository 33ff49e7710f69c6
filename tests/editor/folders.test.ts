import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { useEditorWindow } from './harness.ts';

const log = (day: string, kilograms: number) =>
  `session ${day} Quill Harrow\n  Back Squat: 5 @ ${kilograms} kg\n`;

const editor = useEditorWindow((folder) => {
  mkdirSync(join(folder, 'early'));
  writeFileSync(join(folder, 'early', 'a.plim'), log('2026-11-02', 60));
  writeFileSync(join(folder, 'quill.plim'), `athlete Quill Harrow\n\n${log('2026-11-09', 100)}`);
});

const change = async () => (await editor().readLenses()).find((text) => text.includes('kg')) ?? '';

test('a folder that is moved out beside the editor takes its sessions along', async () => {
  await editor().openFile('quill.plim');
  await expect.poll(async () => (await editor().readLenses()).join('\n')).toContain('2 Nov');
  const { folder } = editor();
  renameSync(join(folder, 'early'), join(folder, '..', 'early'));
  await expect.poll(async () => (await editor().readLenses()).join('\n')).not.toContain('2 Nov');
  expect(await change()).toContain('500');
});
