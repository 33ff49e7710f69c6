import type { Drop, Rating, SetGroup } from '../model/quantity.ts';
import { printLoad, printRange } from './print-load.ts';
import { printAmount, printPlain, printQuantity } from './print-quantity.ts';

/**
 * `3x5 @ 85 kg rpe 8`. A load that a set shares with the next one that writes a load is not printed again; what could
 * not be read is printed as not recorded.
 */
export function printSetGroup(set: SetGroup): string {
  const amount = set.amount ? printAmount(set.amount) : '?';
  return [
    set.counted ? `${printPlain(set.count)}x${amount}` : amount,
    ...(set.within ? [`in ${printQuantity(set.within)}`] : []),
    ...(set.ownLoad && set.load ? [`@ ${printLoad(set.load)}`] : []),
    ...set.ratings.map(printRating),
    ...set.drops.map(printDrop),
  ].join(' ');
}

/** `rpe 7-8`, `v 0.45 m/s`. */
export function printRating(rating: Rating): string {
  const range = printRange({ low: rating.value, ...(rating.high !== undefined && { high: rating.high }) });
  return `${rating.scale} ${range}${rating.scale === 'v' ? ' m/s' : ''}`;
}

/** `drop 8 @ 2x14 kg`. */
export function printDrop(drop: Drop): string {
  return `drop ${printAmount(drop.amount)}${drop.load ? ` @ ${printLoad(drop.load)}` : ''}`;
}
