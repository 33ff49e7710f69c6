import type { Problem } from '../model/source.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { findConflicts } from '../revisions/find-conflicts.ts';
import type { FileProblem } from './check-calendar.ts';
import { problem } from './check-context.ts';

/** The lines that git left in a file where a merge could not choose. */
export function checkConflict(file: ReadFile): FileProblem[] {
  const { text } = file;
  if (!text.includes('<<<<<<<') && !text.includes('>>>>>>>')) return [];
  const { lines } = file;
  return findConflicts(lines).flatMap(({ markers }) =>
    markers.map((line) => ({ entryLine: line, problem: describeMarker(lines[line]!) })),
  );
}

function describeMarker(text: string): Problem {
  return problem(
    'merge-conflict',
    { line: 0, start: 0, end: text.length },
    'A merge left two versions here, and both are counted: keep one, then take out the lines that begin with <<<<<<<, ======= and >>>>>>>',
  );
}
