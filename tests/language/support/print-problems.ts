import { checkEntry } from '@plimsoll/language/checks/entry-checks';
import type { FileModel } from '@plimsoll/language/model/entry';
import type { Edit, Problem } from '@plimsoll/language/model/source';

/** A problem with the line of the file on which its entry begins. */
export interface PlacedProblem {
  readonly entryLine: number;
  readonly problem: Problem;
}

/** All that reading and the checks of single entries find in a file, in order of line and column. */
export function listProblems(model: FileModel): PlacedProblem[] {
  return model.entries
    .flatMap(({ line, entry }) =>
      [...entry.problems, ...checkEntry(entry)].map((problem) => ({ entryLine: line, problem })),
    )
    .sort((a, b) => lineOf(a) - lineOf(b) || a.problem.span.start - b.problem.span.start);
}

/** `2:11 Expected a load such as 100 kg after @ [missing-load]`, lines and columns from 1; each fix as the line it gives. */
export function printProblems(lines: readonly string[], model: FileModel): string[] {
  return listProblems(model).map((placed) => {
    const { problem } = placed;
    const place = `${lineOf(placed) + 1}:${problem.span.start + 1}`;
    const fixes = (problem.fixes ?? []).map(
      (fix) =>
        ` → ${fix.title}: ${applyEdits(lines, placed.entryLine, fix.edits).join(' ⏎ ').replace(/\n+/g, ' ⏎ ')}`,
    );
    return `${place} ${problem.message} [${problem.code}]${fixes.join('')}`;
  });
}

/** The lines that the edits touch, as they are afterwards, without the space around them. */
export function applyEdits(lines: readonly string[], entryLine: number, edits: readonly Edit[]): string[] {
  const changed = new Map<number, string>();
  for (const edit of edits.toSorted((a, b) => b.span.start - a.span.start)) {
    const at = entryLine + edit.span.line;
    const text = changed.get(at) ?? lines[at]!;
    changed.set(at, text.slice(0, edit.span.start) + edit.newText + text.slice(edit.span.end));
  }
  return [...changed].sort(([a], [b]) => a - b).map(([, text]) => text.trim());
}

function lineOf({ entryLine, problem }: PlacedProblem): number {
  return entryLine + problem.span.line;
}
