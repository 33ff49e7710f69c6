import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { useEditorWindow } from './harness.ts';

/** Today's session of the sample practice, with the last round's time still to come. */
const session = `# The Tuesday circuit, a week after the squat test.

session 2026-11-24 06:30 Odalys Wrackfern at Saltglass Loft
  warmup
    Rower: 4:00 hr 109
    Couch Stretch: 45 s/side
  A straight, rest 3:00
    warmup Front Squat: 5 @ 40, 3 @ 60 kg
    Front Squat: 1 @ 85 kg rpe 8, 3x3 @ 77.5 kg rpe 8
  B circuit, 4 rounds, rest 1:30
    One-Arm Row: 10/side @ 24 kg
    Push-up: 15, 14, 14, 14
    Goblet Squat: 12 @ 24 kg
    time 3:55, 3:58, 4:02
  C straight, rest 1:00
    Suitcase Carry: 3x30 m/side @ 28 kg
  effort 7
  lasted 60 min
  > Rounds even to the last. The row may go up next week.
`;

const editor = useEditorWindow((folder) =>
  writeFileSync(join(folder, 'odalys-wrackfern', '2026-11-24.plim'), session),
);

test('typing one more round updates the density and its drift', async () => {
  await editor().openFile('odalys-wrackfern/2026-11-24.plim');
  const circuit = async () => (await editor().readLenses()).find((lens) => /rounds? \d/.test(lens)) ?? '';
  await expect.poll(circuit).toMatch(/round 4 not timed · 3 timed rounds 11:55/);
  await editor().typeAfter({ text: '3:58, 4:02' }, ', 4:05');
  // 3:55 + 3:58 + 4:02 + 4:05 = 16:00
  await expect.poll(circuit).toMatch(/^4 rounds 16:00 · \d{3} kg\/min incl\. body, \d % over 17 Nov$/);
  // The README's picture is made by this run: PLIMSOLL_SCREENSHOT names the file.
  const file = process.env.PLIMSOLL_SCREENSHOT;
  if (file) await editor().takeScreenshot(file);
});
