import type { Entry, FileModel, PlacedEntry } from '../model/entry.ts';
import { recogniseLine } from '../syntax/line-kind.ts';
import { splitTexts } from '../text/lines.ts';
import type { MassUnit } from '../units/mass.ts';
import type { HeaderWord, LineContext } from '../vocabulary/keywords.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import type { EntryReader } from './read-entry.ts';

/** A file's model and the text of its lines, which lets the next reading keep every entry that did not change. */
export interface ReadFile {
  readonly model: FileModel;
  readonly lines: readonly string[];
}

/**
 * Reads a whole file. Entries are read one by one; with `previous` (an earlier reading of the same file) an entry
 * whose text is the same keeps its very model, wherever in the file it now stands.
 */
export function readFile(reader: EntryReader, uri: string, text: string, previous?: ReadFile): ReadFile {
  const lines = splitTexts(text);
  const chunks = findChunks(lines);
  const units = findUnits(lines, chunks);
  const known = previous && previous.model.units === units ? indexEntries(previous) : undefined;
  const entries = chunks.map(({ from, to, opens }): PlacedEntry => {
    const entryLines = lines.slice(from, to);
    const entry = known?.get(entryLines.join('\n'))?.pop() ?? reader.read(entryLines, opens, units);
    return { line: from, entry };
  });
  return { model: { uri, entries, ...(units && { units }) }, lines };
}

interface Chunk {
  readonly from: number;
  readonly to: number;
  /** Whether it begins with a header; only a file's first chunk may not. */
  readonly opens: boolean;
  readonly word?: HeaderWord;
  /** Where the header goes on behind its word. */
  readonly rest?: number;
}

/** Cuts a file at its headers. What stands before the first is a chunk of its own, if it says anything. */
function findChunks(lines: readonly string[]): Chunk[] {
  const chunks: Chunk[] = [];
  let context: LineContext = 'unknown';
  let open: Omit<Chunk, 'to'> | undefined;
  for (let index = 0; index < lines.length; index++) {
    const text = lines[index]!;
    if (open && !mayOpen(text.charCodeAt(0))) continue;
    const line = recogniseLine(text, context);
    if (line.kind === 'header' || line.kind === 'title') {
      if (open) chunks.push({ ...open, to: index });
      context = line.kind === 'header' ? line.word : 'unknown';
      open = {
        from: index,
        opens: true,
        ...(line.kind === 'header' && { word: line.word, rest: line.rest }),
      };
    } else if (!open && line.kind !== 'blank') {
      open = { from: index, opens: false };
    }
  }
  if (open) chunks.push({ ...open, to: lines.length });
  return chunks;
}

/** Whether a line that begins so may be a header: a letter of any script does, or a byte-order mark before it. */
function mayOpen(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code > 127;
}

/** The unit of the file's bare numbers: its first `units` entry, wherever it stands. */
function findUnits(lines: readonly string[], chunks: readonly Chunk[]): MassUnit | undefined {
  for (const chunk of chunks) {
    if (chunk.word !== 'units') continue;
    const word = /^[\p{L}\p{M}]+/u.exec(lines[chunk.from]!.slice(chunk.rest))?.[0].toLowerCase();
    const unit = word === undefined ? undefined : UNIT_WORDS.get(word);
    if (unit?.token === 'MASS_UNIT') return unit.unit as MassUnit;
  }
  return undefined;
}

function indexEntries(previous: ReadFile): Map<string, Entry[]> {
  const known = new Map<string, Entry[]>();
  for (const { line, entry } of previous.model.entries) {
    const key = previous.lines.slice(line, line + entry.lineCount).join('\n');
    const same = known.get(key);
    if (same) same.push(entry);
    else known.set(key, [entry]);
  }
  return known;
}
