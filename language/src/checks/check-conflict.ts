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

/** Hardly any file does, and each pause in typing asks. */
function mayHoldMarkers(file: ReadFile): boolean {
  return file.cut
    ? file.cut.some((line) => MARKERS.some((marker) => line.startsWith(marker)))
    : MARKERS.some((marker) => file.text.includes(marker));
}

function describeMarker(text: string): Problem {
  return problem(
    'merge-conflict',
    { line: 0, start: 0, end: text.length },
    'A merge left two versions here, and both are counted: keep one, then take out the lines that begin with <<<<<<<, ======= and >>>>>>>',
  );
}
