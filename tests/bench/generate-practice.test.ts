import { checkFile } from '@plimsoll/language/checks/check-file';
import { createPractice } from '@plimsoll/language/create-practice';
import { expect, test } from 'vitest';
import { TODAY, writePractice } from './generate-practice.ts';
import { findSpots } from './keystrokes.ts';
import { EDITED_MOVEMENT } from './practice-definitions.ts';

const files = writePractice(150_000);
const logs = [...files].filter(([name]) => !name.startsWith('practice/'));

test('a practice has the size asked for, in files of about 20 KB, and is always the same', () => {
  const sizes = [...files.values()].map((text) => text.length);
  const total = sizes.reduce((sum, size) => sum + size, 0);
  expect(total / 150_000).toBeGreaterThan(0.98);
  expect(total / 150_000).toBeLessThan(1.05);
  expect(Math.max(...sizes)).toBeLessThan(20_100);
  expect(writePractice(150_000)).toEqual(files);
});

test('every character is a byte', () => {
  for (const [name, text] of files) expect(text, name).toMatch(/^[\n -~]*$/);
});

test('a practice reads without errors and warnings', { timeout: 60_000 }, () => {
  const practice = createPractice();
  for (const [name, text] of files) practice.setFile(`file:///${name}`, text);
  const found = [...files.keys()].flatMap((name) =>
    checkFile(practice, `file:///${name}`, { today: TODAY })
      .filter(({ problem }) => problem.severity === 'error' || problem.severity === 'warning')
      .map(({ entryLine, problem }) => `${name}:${entryLine + problem.span.line + 1} ${problem.message}`),
  );
  expect(found).toEqual([]);
});

test('every log holds the movement whose definition is edited, and logs of one athlete a set to type into', () => {
  for (const [name, text] of logs) {
    expect(text, name).toContain(EDITED_MOVEMENT);
    if (!name.startsWith('sunday-group/')) expect(findSpots(text).length, name).toBeGreaterThan(0);
  }
});
