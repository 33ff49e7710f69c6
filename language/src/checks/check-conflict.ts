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

/** Hardly any file does, and each pause in typing asks. */
function mayHoldMarkers(file: ReadFile): boolean {
  if (file.cut) return file.cut.some((line) => line.startsWith('<<<<<<<') || line.startsWith('>>>>>>>'));
  return file.text.includes('<<<<<<<') || file.text.includes('>>>>>>>');
}

function describeMarker(text: string): Problem {
  return problem(
    'merge-conflict',
    { line: 0, start: 0, end: text.length },
    'A merge left two versions here, and both are counted: keep one, then take out the lines that begin with <<<<<<<, ======= and >>>>>>>',
  );
}
