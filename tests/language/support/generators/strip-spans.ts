import type { Entry } from '../../../../language/src/model/entry.ts';

/** What says where something stands or how its line was written, rather than what it says. */
const PLACES: ReadonlySet<string> = new Set([
  'span',
  'amountSpan',
  'loadSpan',
  'timesSpan',
  'loadText',
  'header',
  'lastLine',
  'lineCount',
  'ignores',
  'problems',
]);

/** An entry without places in its text, and without what is absent: two entries that say the same become equal. */
export function stripSpans(entry: Entry): unknown {
  return strip(entry);
}

function strip(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(strip);
  if (typeof value !== 'object' || value === null) return value;
  const kept = Object.entries(value).filter(([key, child]) => !PLACES.has(key) && child !== undefined);
  return Object.fromEntries(kept.map(([key, child]) => [key, strip(child)]));
}
