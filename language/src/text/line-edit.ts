/** Lines of a text that others took the place of. */
export interface LineEdit {
  /** The first of them, from 0. */
  readonly first: number;
  readonly removed: number;
  readonly added: readonly string[];
}

/** The lines after an edit. */
export function replaceLines(lines: readonly string[], { first, removed, added }: LineEdit): string[] {
  // Most edits leave as many lines as there were: one copy will do.
  if (added.length === removed) {
    const changed = lines.slice();
    for (const [index, line] of added.entries()) changed[first + index] = line;
    return changed;
  }
  return lines.slice(0, first).concat(added, lines.slice(first + removed));
}
