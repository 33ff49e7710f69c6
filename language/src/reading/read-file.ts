import type { Entry, FileModel, PlacedEntry } from '../model/entry.ts';
import { recogniseLine } from '../syntax/line-kind.ts';
import { countBefore } from '../text/count-before.ts';
import { type LineEdit, replaceLines } from '../text/line-edit.ts';
import { splitTexts } from '../text/lines.ts';
import { countSameEnds, type SameEnds } from '../text/same-ends.ts';
import type { MassUnit } from '../units/mass.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { FileText, type KnownText } from './file-text.ts';
import { type Chunk, findChunks } from './find-chunks.ts';
import { keepSame } from './keep-same.ts';
import type { EntryReader } from './read-entry.ts';

/** A file's model and the text of its lines, which lets the next reading keep every entry that did not change. */
export interface ReadFile {
  readonly model: FileModel;
  /** Its line ends may be others than those of the file. */
  readonly text: string;
  /** Its lines, where they are cut already. */
  readonly cut: readonly string[] | undefined;
  readonly lines: readonly string[];
}

/**
 * Reads a whole file. Entries are read one by one; with `previous` (an earlier reading of the same file) an entry
 * whose text is the same keeps its very model, wherever in the file it now stands, and what stands above and below all
 * changes is not even looked at.
 */
export function readFile(reader: EntryReader, uri: string, text: string, previous?: ReadFile): ReadFile {
  const lines = splitTexts(text);
  if (!previous) return new ReadText({ uri, ...readAnew(reader, lines) }, { text });
  const same = countSameEnds(previous.lines, lines);
  const read = readAgain(reader, lines, previous, same);
  // Lines that are kept weakly stay until all files are read that are read at one go; those of edits come soon again.
  return new ReadText({ uri, ...read }, { text, lines });
}

/** Reads a file of which an edit made some lines others; no other lines are looked at. */
export function readEdited(reader: EntryReader, previous: ReadFile, edit: LineEdit): ReadFile {
  const before = previous.lines;
  const lines = replaceLines(before, edit);
  const same = { front: edit.first, back: before.length - edit.first - edit.removed };
  const read = readAgain(reader, lines, previous, same);
  return new ReadText({ uri: previous.model.uri, ...read }, { lines });
}

type Read = Omit<FileModel, 'uri'>;

class ReadText extends FileText implements ReadFile {
  readonly model: FileModel;

  constructor(model: FileModel, known: KnownText) {
    super(known);
    this.model = model;
  }
}

function readAnew(reader: EntryReader, lines: readonly string[], previous?: ReadFile): Read {
  const chunks = [...findChunks(lines)];
  const units = findUnits(lines, chunks);
  const known =
    previous && previous.model.units === units
      ? indexEntries(previous.lines, previous.model.entries)
      : undefined;
  const entries = chunks.map((chunk) => readChunk(reader, lines, chunk, units, known));
  return { entries, ...(units && { units }) };
}

/**
 * Reads what stands between the lines that are the same from the top and from the bottom; all of the file where a `units`
 * entry may have changed, which concerns all of it.
 */
function readAgain(
  reader: EntryReader,
  lines: readonly string[],
  previous: ReadFile,
  { front: above, back: below }: SameEnds,
): Read {
  const { lines: before, model } = previous;
  const { entries, units } = model;
  const shift = lines.length - before.length;
  // An entry ends where a header follows: that must be there still.
  const first = countBefore(entries, ({ line, entry }) => line + entry.lineCount < above);
  const last = entries[first - 1];
  const chunks: Chunk[] = [];
  let rest = entries.length;
  for (const chunk of findChunks(lines, last ? last.line + last.entry.lineCount : 0)) {
    if (chunk.opens && chunk.from >= lines.length - below) {
      const stood = chunk.from - shift;
      const index = countBefore(entries, ({ line }) => line < stood);
      if (entries[index]?.line === stood) {
        rest = index;
        break;
      }
    }
    chunks.push(chunk);
  }
  const replaced = entries.slice(first, rest);
  if (
    chunks.some(({ context }) => context === 'units') ||
    replaced.some(({ entry }) => entry.kind === 'units')
  )
    return readAnew(reader, lines, previous);
  const known = indexEntries(before, replaced);
  const behind = entries.slice(rest);
  const read = chunks.map((chunk) => readChunk(reader, lines, chunk, units, known));
  const isOne = replaced.length === 1 && read.length === 1;
  const current = entries
    .slice(0, first)
    .concat(
      isOne ? { ...read[0]!, entry: keepSame(replaced[0]!.entry, read[0]!.entry) } : read,
      shift === 0 ? behind : behind.map(({ line, entry }) => ({ line: line + shift, entry })),
    );
  return { entries: current, ...(units && { units }) };
}

function readChunk(
  reader: EntryReader,
  lines: readonly string[],
  { from, to, opens }: Chunk,
  units: MassUnit | undefined,
  known: Map<string, Entry[]> | undefined,
): PlacedEntry {
  const entryLines = lines.slice(from, to);
  const entry = known?.get(entryLines.join('\n'))?.pop() ?? reader.read(entryLines, opens, units);
  return { line: from, entry };
}

/** The unit of the file's bare numbers: its first `units` entry, wherever it stands. */
function findUnits(lines: readonly string[], chunks: readonly Chunk[]): MassUnit | undefined {
  for (const { from, context } of chunks) {
    const line = context === 'units' ? recogniseLine(lines[from]!, 'unknown') : undefined;
    if (line?.kind !== 'header') continue;
    const word = /^[\p{L}\p{M}]+/u.exec(lines[from]!.slice(line.rest))?.[0].toLowerCase();
    const unit = word === undefined ? undefined : UNIT_WORDS.get(word);
    if (unit?.token === 'MASS_UNIT') return unit.unit as MassUnit;
  }
  return undefined;
}

function indexEntries(lines: readonly string[], entries: readonly PlacedEntry[]): Map<string, Entry[]> {
  const known = new Map<string, Entry[]>();
  for (const { line, entry } of entries) {
    const key = lines.slice(line, line + entry.lineCount).join('\n');
    const same = known.get(key);
    if (same) same.push(entry);
    else known.set(key, [entry]);
  }
  return known;
}
