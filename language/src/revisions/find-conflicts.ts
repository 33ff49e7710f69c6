/** Where a merge left two versions of the same lines, between the markers that git writes. */

/** Lines from 0, markers included. `markers` are the lines that begin with one. */
export interface Conflict {
  readonly first: number;
  readonly last: number;
  readonly markers: readonly number[];
}

const OURS = /^<{7}(?: |$)/;
const BASE = /^\|{7}(?: |$)/;
const SEPARATOR = /^={7}$/;
const THEIRS = /^>{7}(?: |$)/;

/**
 * All conflicts of a file's lines. A marker that was left behind alone is one too; seven equals signs alone are what a
 * coach may have drawn.
 */
export function findConflicts(lines: readonly string[]): readonly Conflict[] {
  const conflicts: Conflict[] = [];
  let open: number[] | undefined;
  const close = (last: number): void => {
    if (open) conflicts.push({ first: open[0]!, last, markers: open });
    open = undefined;
  };
  for (const [index, line] of lines.entries()) {
    if (OURS.test(line)) {
      // Of an open one only the markers are certain.
      close(open?.at(-1) ?? index);
      open = [index];
    } else if (THEIRS.test(line)) {
      open = [...(open ?? []), index];
      close(index);
    } else if (open && (SEPARATOR.test(line) || BASE.test(line))) open.push(index);
  }
  close(open?.at(-1) ?? 0);
  return conflicts;
}
