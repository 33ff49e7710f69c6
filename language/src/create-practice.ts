import { LIBRARY_FACTS } from './generated/library-facts.ts';
import type { PlacedEntry } from './model/entry.ts';
import { indexLibrary, type Library, Practice } from './practice/practice.ts';
import { createEntryReader, type EntryReader } from './reading/read-entry.ts';
import { createSyntaxServices } from './syntax/syntax-services.ts';

/** The parser and the built-in library never change: they are made when first asked for, and shared. */
let foundation: { readonly reader: EntryReader; readonly library: Library } | undefined;

/**
 * The one factory behind the language server, the command line and the tests: an empty practice that knows the
 * notation and the built-in library. Files are given to it with {@link Practice.setFile}.
 */
export function createPractice(): Practice {
  foundation ??= { reader: createEntryReader(createSyntaxServices), library: indexLibrary(readFacts()) };
  return new Practice(foundation.reader, foundation.library);
}

function readFacts(): [name: string, entries: PlacedEntry[]][] {
  return JSON.parse(LIBRARY_FACTS);
}
