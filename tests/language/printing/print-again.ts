import { expect } from 'vitest';
import type { Entry } from '../../../language/src/model/entry.ts';
import { printEntry } from '../../../language/src/printing/print-entry.ts';
import { createEntryReader } from '../../../language/src/reading/read-entry.ts';
import { readFile } from '../../../language/src/reading/read-file.ts';
import { createSyntaxServices } from '../../../language/src/syntax/syntax-services.ts';

const reader = createEntryReader(createSyntaxServices);

/** The entries of a file that names no unit. */
export function readEntries(text: string): readonly Entry[] {
  return readFile(reader, 'test.plim', text).model.entries.map(({ entry }) => entry);
}

/** Reads a text that is one entry. */
export function readOne(text: string): Entry {
  const entries = readEntries(text);
  expect(entries, text).toHaveLength(1);
  return entries[0]!;
}

/** Reads lines below a header and prints them, without the header and its indentation. */
export function printAgain(header: string, lines: string): string {
  const [first, ...rest] = printEntry(readOne(`${header}\n${lines}`)).split('\n');
  expect(first).toBe(header);
  return rest.map((line) => line.replace(/^ {2}/, '')).join('\n');
}

/** Prints what stands behind a movement's colon in a plan. */
export function printSets(sets: string): string {
  const printed = printAgain('plan Slow Tide', `day 1\n  Marsh Pull: ${sets}`);
  return printed.replace(/^day 1\n {2}Marsh Pull: /, '');
}
