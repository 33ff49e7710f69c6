import type { Entry, FileModel } from '@plimsoll/language/model/entry';
import { createEntryReader } from '@plimsoll/language/reading/read-entry';
import { type ReadFile, readFile } from '@plimsoll/language/reading/read-file';
import { createSyntaxServices } from '@plimsoll/language/syntax/syntax-services';

/** One reader for all tests: building the parser is the dear part. */
export const entryReader = createEntryReader(createSyntaxServices);

/** Reads a text as a file of its own, or again after a change with the reading before it. */
export function readWhole(text: string, previous?: ReadFile): ReadFile {
  return readFile(entryReader, 'memory:test.plim', text, previous);
}

/** Reads lines as one file. */
export function readText(...lines: readonly string[]): FileModel {
  return readWhole(lines.join('\n')).model;
}

/** Reads lines that are one entry, and gives that entry as the kind that it must be. */
export function readEntry<K extends Entry['kind']>(
  kind: K,
  ...lines: readonly string[]
): Extract<Entry, { kind: K }> {
  const entries = readText(...lines).entries.map(({ entry }) => entry);
  const found = entries.find((entry) => entry.kind === kind);
  if (!found)
    throw new Error(
      `expected an entry of kind ${kind}, found ${entries.map((entry) => entry.kind).join(', ')}`,
    );
  return found as Extract<Entry, { kind: K }>;
}
