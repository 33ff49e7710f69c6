import type { Entry, PlacedEntry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { findConflicts } from '../revisions/find-conflicts.ts';
import type { FileProblem } from './check-calendar.ts';
import { problem } from './check-context.ts';

/** The lines that git left in a file where a merge could not choose. */
export function checkConflict(file: ReadFile): FileProblem[] {
  if (!mayHoldMarkers(file)) return [];
  const { lines } = file;
  return findConflicts(lines).flatMap(({ markers }) =>
    markers.map((line) => ({ entryLine: line, problem: describeMarker(lines[line]!) })),
  );
}

/** One of them stands in any conflict. */
const MARKERS = ['<<<<<<<', '>>>>>>>'];

/** Hardly any file does, and each pause in typing asks: of a file that is edited only entries not seen before are looked at. */
function mayHoldMarkers(file: ReadFile): boolean {
  const { cut, model } = file;
  return cut
    ? model.entries.some((placed) => holdsMarker(placed, cut))
    : MARKERS.some((marker) => file.text.includes(marker));
}

/** An entry's text stays the same as long as it is the same object. */
const holding = new WeakMap<Entry, boolean>();

function holdsMarker({ entry, line }: PlacedEntry, lines: readonly string[]): boolean {
  const known = holding.get(entry);
  if (known !== undefined) return known;
  const own = lines.slice(line, line + entry.lineCount);
  const holds = own.some((text) => MARKERS.some((marker) => text.startsWith(marker)));
  holding.set(entry, holds);
  return holds;
}

function describeMarker(text: string): Problem {
  return problem(
    'merge-conflict',
    { line: 0, start: 0, end: text.length },
    'A merge left two versions here, and both are counted: keep one, then take out the lines that begin with <<<<<<<, ======= and >>>>>>>',
  );
}
