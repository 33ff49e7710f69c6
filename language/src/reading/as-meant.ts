import type { Span, Written } from '../model/source.ts';

/** What one line was changed in: the columns in which both differ. */
interface Change {
  readonly start: number;
  readonly writtenEnd: number;
  readonly meantEnd: number;
}

/**
 * Facts of lines as they are meant, with the places of the text as it is written: what stands before and behind a
 * change keeps its own place, and what lies in it has the place of all that was changed.
 */
export function placeAsWritten<T>(facts: T, written: readonly string[], meant: readonly string[]): T {
  const changes = new Map<number, Change>();
  for (const [index, text] of written.entries())
    if (text !== meant[index]) changes.set(index, findChange(text, meant[index]!));
  return changes.size === 0 ? facts : (placeAll(facts, { changes, written }) as T);
}

function findChange(written: string, meant: string): Change {
  const most = Math.min(written.length, meant.length);
  let start = 0;
  while (start < most && written[start] === meant[start]) start++;
  let same = 0;
  while (same < most - start && written.at(-1 - same) === meant.at(-1 - same)) same++;
  return { start, writtenEnd: written.length - same, meantEnd: meant.length - same };
}

interface Places {
  readonly changes: ReadonlyMap<number, Change>;
  readonly written: readonly string[];
}

function placeAll(value: unknown, places: Places): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((item) => placeAll(item, places));
  if (isSpan(value)) return placeSpan(value, places.changes.get(value.line));
  const placed = Object.fromEntries(
    Object.entries(value).map(([key, item]) => [key, placeAll(item, places)]),
  );
  return isWritten(placed) ? placeName(placed, places) : placed;
}

function isWritten(value: object): value is Written {
  return 'text' in value && typeof value.text === 'string' && 'span' in value && isSpan(value.span as object);
}

/** A name within a change stands where the line has its text, if it stands there once. */
function placeName(name: Written, { changes, written }: Places): Written {
  const { line, start, end } = name.span;
  const text = written[line]!;
  if (!changes.has(line) || text.slice(start, end) === name.text) return name;
  const at = text.indexOf(name.text, start);
  const isOnce = at >= 0 && text.indexOf(name.text, at + 1) < 0;
  return isOnce ? { ...name, span: { line, start: at, end: at + name.text.length } } : name;
}

function isSpan(value: object): value is Span {
  return 'line' in value && 'start' in value && 'end' in value && typeof value.start === 'number';
}

function placeSpan(span: Span, change: Change | undefined): Span {
  if (!change) return span;
  const { start, writtenEnd, meantEnd } = change;
  const shift = writtenEnd - meantEnd;
  return {
    ...span,
    start: span.start >= meantEnd ? span.start + shift : Math.min(span.start, start),
    end: span.end <= start ? span.end : Math.max(span.end, meantEnd) + shift,
  };
}
