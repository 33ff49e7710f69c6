import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { useEditorWindow } from './harness.ts';

const editor = useEditorWindow((folder) => {
  writeFileSync(
    join(folder, 'smoke.plim'),
    'session 2026-11-17 Quill Harrow\n  Back Squat: 3x5 @ 80 kg\n  zzz: 3\n',
  );
});

test('a lens stands over a session', async () => {
  await editor().openFile('smoke.plim');
  await expect.poll(() => editor().readLenses()).toEqual(['3 bits, 2026-11-24 | second lens · 1 240 kg']);
});

test('typing one more round updates the lens', async () => {
  await editor().typeAfter({ text: '3x5 @ 80 kg' }, ', 5 @ 85 kg');
  await expect.poll(() => editor().readLenses()).toEqual(['4 bits, 2026-11-24 | second lens · 1 240 kg']);
  await editor().typeAfter({ text: '5 @ 85 kg' }, '\nzzz Two: 3');
});

test('others', async () => {
  expect(await editor().hover({ text: 'Back Squat' })).toBe('Hover Back');
  await expect.poll(() => editor().readHints()).toEqual(['+5 kg', '+5 kg', '+5 kg']);
  await expect
    .poll(() => editor().readSquiggles())
    .toEqual([
      { severity: 'warning', text: 'zzz' },
      { severity: 'warning', text: 'zzz' },
    ]);
  await expect
    .poll(() => editor().readProblems())
    .toEqual([
      { message: 'Zzz is no movement', code: 'zzz', line: 3 },
      { message: 'Zzz is no movement', code: 'zzz', line: 4 },
    ]);
  await editor().takeScreenshot('/tmp/stub/shot.png');
});
