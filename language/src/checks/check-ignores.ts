import type { Problem } from '../model/source.ts';
import { replaceBy } from '../reading/line-reading.ts';
import type { ReadFile } from '../reading/read-file.ts';
import { findNearest } from '../text/edit-distance.ts';
import { CHECKS } from './catalogue.ts';
import type { FileProblem } from './check-calendar.ts';
import { problem } from './check-context.ts';
import { describeUnknown } from './severities.ts';

/** `# ignore lod-jump`: a code that no check has silences nothing. */
export function checkIgnores(file: ReadFile): FileProblem[] {
  return file.model.entries.flatMap(({ line: entryLine, entry }) =>
    entry.ignores.flatMap(({ line, codes }) =>
      codes
        .filter((code) => !Object.hasOwn(CHECKS, code))
        .map((code) => ({
          entryLine,
          problem: reportUnknown(file.lines[entryLine + line] ?? '', line, code),
        })),
    ),
  );
}

function reportUnknown(text: string, line: number, code: string): Problem {
  const start = text.lastIndexOf(code);
  const span = { line, start, end: start + code.length };
  const nearest = findNearest(code, Object.keys(CHECKS), 2);
  return problem(
    'unknown-check',
    span,
    describeUnknown(code),
    nearest.map((near) => replaceBy(span, near)),
  );
}
