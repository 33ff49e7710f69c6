import { LIBRARY_FILES } from '@plimsoll/language/library';
import { LIBRARY_SCHEME } from '@plimsoll/language/practice/practice';

/** The text of a file of the built-in library, for the read-only document that a definition leads to. */
export function provideLibraryText(uri: string): string | undefined {
  return LIBRARY_FILES.find(([name]) => uri === `${LIBRARY_SCHEME}${name}.plim`)?.[1];
}
