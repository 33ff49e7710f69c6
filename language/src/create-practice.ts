import { LIBRARY_FILES } from './library.ts';
import { type Library, Practice, readLibrary } from './practice/practice.ts';
import { createEntryReader, type EntryReader } from './reading/read-entry.ts';
import { createSyntaxServices } from './syntax/syntax-services.ts';

/** The parser and the built-in library never change: they are made when first asked for, and shared. */
let foundation: { readonly reader: EntryReader; readonly library: Library } | undefined;

/**
 * The one factory behind the language server, the command line and the tests: an empty practice that knows the
 * notation and the built-in library. Files are given to it with {@link Practice.setFile}.
 */
export function createPractice(): Practice {
  if (!foundation) {
    const reader = createEntryReader(createSyntaxServices());
    foundation = { reader, library: readLibrary(reader, LIBRARY_FILES) };
  }
  return new Practice(foundation.reader, foundation.library);
}
