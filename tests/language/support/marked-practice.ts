import { createPractice } from '@plimsoll/language/create-practice';
import type { Practice } from '@plimsoll/language/practice/practice';

/** A practice read from files, and where in them the cursor `<|>` stood (lines and UTF-16 columns from 0). */
export interface MarkedPractice {
  readonly practice: Practice;
  /** The files without the mark. */
  readonly texts: Readonly<Record<string, string>>;
  readonly uri: string;
  readonly line: number;
  readonly column: number;
}

/** Reads files by name; one of them holds one cursor `<|>`. A text alone is the file `a.plim`. */
export function readMarked(files: string | Readonly<Record<string, string>>): MarkedPractice {
  const entries = Object.entries(typeof files === 'string' ? { 'a.plim': files } : files);
  const marked = entries.filter(([, text]) => text.includes('<|>'));
  if (marked.length !== 1) throw new Error(`expected one cursor, found ${marked.length}`);
  const [uri, text] = marked[0]!;
  const before = text.slice(0, text.indexOf('<|>')).split('\n');
  const texts = Object.fromEntries(entries.map(([name, whole]) => [name, whole.replace('<|>', '')]));
  return {
    practice: readFiles(texts),
    texts,
    uri,
    line: before.length - 1,
    column: before.at(-1)!.length,
  };
}

export function readFiles(files: Readonly<Record<string, string>>): Practice {
  const practice = createPractice();
  for (const [uri, text] of Object.entries(files)) practice.setFile(uri, text);
  return practice;
}
