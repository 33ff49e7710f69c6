import type { Amount, Quantity } from '../model/quantity.ts';
import { printClock } from '../units/duration.ts';

/** A number as it is written in a file: no grouping, a decimal point, never an exponent. */
export function printPlain(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}

/** 75 → `1:15`; a part of a second needs its unit: 58.3 → `58.3 s`. */
export function printTime(seconds: number): string {
  return Number.isInteger(seconds) ? printClock(seconds) : `${printPlain(seconds)} s`;
}

/** `8`, `30 s`, `4:05`, `40 m`. */
export function printQuantity(quantity: Quantity): string {
  const { written, unit } = quantity;
  if (unit === 'clock') return printTime(written);
  return unit === 'rep' ? printPlain(written) : `${printPlain(written)} ${unit}`;
}

/** `8-12`, `30-45 s`, `45 s-1:30`: one unit is written once. */
export function printQuantityRange(low: Quantity, high: Quantity): string {
  const shared = low.unit === high.unit && low.unit !== 'clock';
  return `${shared ? printPlain(low.written) : printQuantity(low)}-${printQuantity(high)}`;
}

/** `8/side`, `8 left 7 right`, `8-12`, `5+`, `amrap`, `4 of 5`, `(2+2+2 rest 0:20)`, `?`, `skipped`. */
export function printAmount(amount: Amount): string {
  switch (amount.kind) {
    case 'quantity':
      return printQuantity(amount.quantity) + printSide(amount);
    case 'sides':
      return `${printQuantity(amount.left)} left ${printQuantity(amount.right)} right`;
    case 'range':
      return printQuantityRange(amount.low, amount.high) + printSide(amount);
    case 'at-least':
      return `${printQuantity(amount.quantity)}+${printSide(amount)}`;
    case 'amrap':
      return `amrap${printSide(amount)}`;
    case 'attempt':
      return `${printPlain(amount.made)} of ${printPlain(amount.tried)}${printSide(amount)}`;
    case 'cluster': {
      const rest = amount.rest ? ` rest ${printQuantity(amount.rest)}` : '';
      return `(${printClusterParts(amount.parts)}${rest})${printSide(amount)}`;
    }
    case 'unrecorded':
      return '?';
    case 'skipped':
      return 'skipped';
  }
}

function printSide(amount: { readonly perSide: boolean }): string {
  return amount.perSide ? '/side' : '';
}

/** Longer runs of equal mini-sets are counted. */
const LONGEST_SPELLED_RUN = 3;

/** `2+2+2`, `5x10 s`, `3+4x1`. */
function printClusterParts(parts: readonly Quantity[]): string {
  const runs: { readonly text: string; count: number }[] = [];
  for (const text of parts.map(printQuantity)) {
    const last = runs.at(-1);
    if (last?.text === text) last.count++;
    else runs.push({ text, count: 1 });
  }
  return runs
    .map(({ text, count }) =>
      count > LONGEST_SPELLED_RUN ? `${count}x${text}` : Array(count).fill(text).join('+'),
    )
    .join('+');
}
