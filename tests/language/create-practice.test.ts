import { createPractice } from '@plimsoll/language/create-practice';
import { LIBRARY_FACTS } from '@plimsoll/language/generated/library-facts';
import { LIBRARY_FILES } from '@plimsoll/language/library';
import { readFile } from '@plimsoll/language/reading/read-file';
import { expect, test } from 'vitest';
import { entryReader } from './support/read-text.ts';

test('the facts of the built-in library are those that its files say (npm run generate)', () => {
  const read = LIBRARY_FILES.map(([name, text]) => [name, readFile(entryReader, name, text).model.entries]);
  expect(JSON.parse(LIBRARY_FACTS)).toEqual(JSON.parse(JSON.stringify(read)));
});

test('an empty practice knows the built-in movements by every spelling', () => {
  const practice = createPractice();
  expect(practice.findMovement('press up')?.name).toBe('Push-up');
  expect([...practice.allMovements()].length).toBeGreaterThan(400);
});
