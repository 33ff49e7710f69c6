import { outlineRevision, type RevisionSection } from './outline-revision.ts';
import type { Revision } from './revision.ts';

/** A revision as text, a section for each thing that changed. Ends with a line end. */
export function printRevision(revision: Revision, since: string): string {
  const sections = outlineRevision(revision, since);
  if (sections.length === 0) return `Nothing that counts has changed since ${since}.\n`;
  return `${sections.map(printSection).join('\n')}`;
}

function printSection({ title, lines, tables }: RevisionSection): string {
  return [
    title,
    ...lines.map(({ depth, text }) => `${'  '.repeat(depth)}${text}`),
    ...tables.flatMap(({ head, rows }) => alignColumns([head, ...rows])),
    '',
  ].join('\n');
}

function alignColumns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows.map((row) =>
    `  ${row.map((cell, column) => cell.padEnd(widths[column]!)).join('  ')}`.trimEnd(),
  );
}
