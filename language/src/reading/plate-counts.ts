import type * as ast from '../syntax/generated/ast.ts';
import { type EntryReading, type Holed, present, replaceBy, spanOf, textOf } from './line-reading.ts';

/** What bumper and iron plates are sold as, in kilograms or pounds, of the weights that may be taken for a count: common practice. */
const SOLD: ReadonlySet<number> = new Set([5, 10, 15, 20, 25, 35, 45]);
/** A weight that may be a count: plates come in pairs. */
const PAIRS: ReadonlySet<number> = new Set([2, 4, 6, 8]);
/** Nobody has so many of a small plate. */
const MANY = 10;

interface Counted {
  readonly count: string;
  readonly weight: string;
  /** Its unit, with the space before it. */
  readonly unit: string;
}

/**
 * Counts of plates that read as something hardly meant: `20x2, 10x2 kg`, twenty plates of 2 kg, and `20, 10 kg`, one of each,
 * which no bar can take.
 */
export function reportPlateCounts(
  reading: EntryReading,
  { plates }: Holed<ast.PlatesLine>,
  hasBars: boolean,
): void {
  const written = plates.filter(present);
  const texts = written.map((plate) => readCounted(textOf(plate)));
  // Of a line that broke off there is more to say first.
  if (
    texts.length === 0 ||
    reading.broken.has(spanOf(written[0]!).line) ||
    !texts.every((text) => text !== undefined)
  )
    return;
  const [first] = written;
  const span = { ...spanOf(first!), end: spanOf(written.at(-1)!).end };
  const tell = (message: string, write: (text: Counted) => string): void => {
    const fixed = texts.map(write).join(', ');
    reading.report('plate-count', span, `${message}, write ${fixed}`, [replaceBy(span, fixed)]);
  };
  if (texts.every(isTurned) && texts.some(({ count }) => Number(count) >= MANY))
    tell(
      `${texts[0]!.count}x${texts[0]!.weight} says ${texts[0]!.count} plates. Where the weight stands first`,
      ({ count, weight, unit }) => `${weight}x${count}${unit}`,
    );
  else if (hasBars && texts.every(({ count }) => count === ''))
    tell(
      'Each of these plates is there once, and a bar takes two of a weight. Where they are pairs',
      ({ weight, unit }) => `2x${weight}${unit}`,
    );
}

function readCounted(text: string): Counted | undefined {
  const groups = /^(?:(\d+)\s*[x×]\s*)?(\d+(?:\.\d+)?)(\s*[a-z]*)$/i.exec(text);
  return groups ? { count: groups[1] ?? '', weight: groups[2]!, unit: groups[3]! } : undefined;
}

function isTurned({ count, weight }: Counted): boolean {
  return SOLD.has(Number(count)) && PAIRS.has(Number(weight));
}
