import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import { checkFile, type FileProblem } from '@plimsoll/language/checks/check-file';
import type { Severity } from '@plimsoll/language/model/source';
import { indexLibrary, Practice } from '@plimsoll/language/practice/practice';
import { readFile } from '@plimsoll/language/reading/read-file';
import { applyEdits } from '../support/print-problems.ts';
import { entryReader } from '../support/read-text.ts';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));

/** All `.plim` files below a folder of the repository, as `[path from that folder, text]`. */
export function readFolder(folder: string): [path: string, text: string][] {
  return readdirSync(`${ROOT}${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.plim'))
    .sort()
    .map((path) => [path, readFileSync(`${ROOT}${folder}/${path}`, 'utf8')]);
}

const LIBRARY = indexLibrary(
  readFolder('language/library').map(([name, text]) => [
    name,
    readFile(entryReader, name, text).model.entries,
  ]),
);
const EMPTY_LIBRARY = indexLibrary([]);

export const TODAY: IsoDate = '2026-11-24';

/** Files by name; one text alone is `log.plim`. */
export type Files = string | Readonly<Record<string, string>>;

/** A practice of those files over the built-in movements. */
export function openPractice(files: Files): Practice {
  return fillPractice(new Practice(entryReader, LIBRARY), files);
}

/** A practice that knows only what its files say: the library's own files are checked this way. */
export function openWithoutLibrary(files: Files): Practice {
  return fillPractice(new Practice(entryReader, EMPTY_LIBRARY), files);
}

function fillPractice(practice: Practice, files: Files): Practice {
  const named = typeof files === 'string' ? { 'log.plim': files } : files;
  for (const [name, text] of Object.entries(named)) practice.setFile(toUri(name), text);
  return practice;
}

export function lines(...written: readonly string[]): string {
  return written.join('\n');
}

export function toUri(name: string): string {
  return `memory:/${name}`;
}

/** The problems of every file of a practice, a line each: `log.plim:1:9 message [code] → title: the line after it`. */
export function listChecks(practice: Practice, today: IsoDate = TODAY): string[] {
  return [...practice.fileUris()].flatMap((uri) =>
    checkFile(practice, uri, { today }).map((found) => printChecked(practice, uri, found)),
  );
}

function printChecked(practice: Practice, uri: string, { entryLine, problem }: FileProblem): string {
  const { lines } = practice.file(uri)!;
  const place = `${uri.slice('memory:/'.length)}:${entryLine + problem.span.line + 1}:${problem.span.start + 1}`;
  const fixes = (problem.fixes ?? []).map(
    ({ title, edits }) =>
      ` → ${title}: ${applyEdits(lines, entryLine, edits).join(' ⏎ ').replace(/\n+/g, ' ⏎ ')}`,
  );
  return `${place} ${problem.message} [${problem.code}]${fixes.join('')}`;
}

/** Checks one text or several files, codes of `leaveOut` aside. */
export function check(files: Files, ...leaveOut: readonly string[]): string[] {
  return listChecks(openPractice(files)).filter(
    (line) => !leaveOut.some((code) => line.includes(`[${code}]`)),
  );
}

/** How many problems of each severity the files have together. */
export function countSeverities(practice: Practice): Record<Severity, number> {
  const counts = { error: 0, warning: 0, info: 0, hint: 0 };
  for (const uri of practice.fileUris()) {
    for (const { problem } of checkFile(practice, uri, { today: TODAY })) counts[problem.severity]++;
  }
  return counts;
}
