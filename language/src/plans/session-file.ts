/** Where an athlete's next session is written: behind the last one, or in a new file when the month is over. */
import type { IsoDate } from '../calendar/iso-date.ts';
import type { Practice } from '../practice/practice.ts';

/** Where a text goes in: right behind a place of a file, which may not be there yet. */
export interface SessionPlace {
  readonly uri: string;
  readonly isNew: boolean;
  /** From 0; of a new file 0. */
  readonly line: number;
  readonly column: number;
}

const MONTH_FILE = /^\d{4}-\d{2}$/;

/**
 * The file of the athlete's newest session that was theirs alone, else of their definition, else `fallback`. A file
 * that is called after its month (`2026-11.plim`) is followed by the next month's, in the same folder.
 */
export function findSessionPlace(
  practice: Practice,
  athlete: string,
  date: IsoDate,
  fallback: string | undefined,
): SessionPlace | undefined {
  const newest = practice.sessionsOf(athlete).findLast(({ groupSize }) => groupSize === 1);
  const uri = newest?.uri ?? practice.findAthlete(athlete)?.uri ?? fallback;
  if (uri === undefined) return undefined;
  const month = date.slice(0, 7);
  const [, folder = '', name = '', ending = ''] = /^(.*\/)?([^/]*?)(\.[^./]*)?$/.exec(uri) ?? [];
  const target = newest && MONTH_FILE.test(name) && name !== month ? `${folder}${month}${ending}` : uri;
  const file = practice.file(target);
  if (!file || file.lines.every((line) => line.trim() === ''))
    return { uri: target, isNew: !file, line: 0, column: 0 };
  const last = practice
    .sessionsOf(athlete)
    .findLast((record) => record.uri === target && record.groupSize === 1);
  const placed = last && file.model.entries.find((entry) => entry.line === last.line);
  const end = placed ? placed.line + placed.entry.lineCount : file.lines.length;
  const line = findLastLine(file.lines, end, placed !== undefined && end < file.lines.length);
  return { uri: target, isNew: false, line, column: file.lines[line]!.length };
}

/** The last line before `end` that says something; a comment there speaks about the entry below it, if there is one. */
function findLastLine(lines: readonly string[], end: number, skipsComments: boolean): number {
  let line = end - 1;
  while (line > 0 && (lines[line]!.trim() === '' || (skipsComments && lines[line]!.startsWith('#')))) line--;
  return line;
}
