/** Lines of canonical text that differ, whatever their order: one that only has another value is paired with its former. */
import type { TextChange } from './revision.ts';

/** `['weeks 6', 'at Loft']`, `['weeks 8', 'at Loft']` → `weeks 6` became `weeks 8`. */
export function diffTexts(before: readonly string[], after: readonly string[]): TextChange[] {
  const gone = subtract(before, after);
  const added = subtract(after, before);
  const changes: TextChange[] = [];
  for (const text of gone) {
    const subject = subjectOf(text);
    const isOnly = [gone, added].every(
      (list) => list.filter((other) => subjectOf(other) === subject).length === 1,
    );
    const now = isOnly ? added.find((other) => subjectOf(other) === subject) : undefined;
    changes.push(now === undefined ? { before: text } : { before: text, after: now });
  }
  const paired = new Set(changes.map(({ after: now }) => now));
  return [...changes, ...added.filter((text) => !paired.has(text)).map((text) => ({ after: text }))];
}

/** As many of each line as the other side does not have. */
function subtract(lines: readonly string[], others: readonly string[]): string[] {
  const left = [...others];
  return lines.filter((line) => {
    const at = left.indexOf(line);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** What a line speaks of: its word, and what tells several of them apart (`max Back Squat:`, `deload week 4`, `day 2`). */
function subjectOf(text: string): string {
  if (/^\d+ rounds?\b/.test(text)) return 'rounds';
  const [, subject] = /^(\s*(?:(?:max|goal|retest) [^:]*:|(?:deload week|day) \d+|>|\S+))/.exec(text) ?? [];
  return subject ?? text;
}
