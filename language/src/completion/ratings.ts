import { describeRpe, toRpe } from '../measures/exertion.ts';
import type { ScannedToken } from '../syntax/scanned-token.ts';
import { findHelp } from '../vocabulary/help.ts';
import type { Offer, Offers } from './item.ts';
import type { MovementSpot } from './movement-spot.ts';
import type { Spot } from './spot.ts';

export const RATING_WORDS: readonly string[] = ['rpe', 'rir', 'hr', 'v'];

/** Words of ratings that the set does not have yet; reps in reserve and RPE say the same. */
export function offerRatingWords(item: readonly ScannedToken[]): Offer[] {
  const drop = item.findLastIndex(({ keyword }) => keyword === 'drop');
  const used = new Set(item.slice(drop + 1).map(({ keyword }) => keyword));
  return RATING_WORDS.filter((word) => !used.has(word))
    .filter((word) => !(word === 'rir' && used.has('rpe')) && !(word === 'rpe' && used.has('rir')))
    .map((word) => ({
      label: word,
      kind: 'keyword',
      help: findHelp(word),
      insert: `${word} `,
      continues: true,
    }));
}

const RPES = [8, 7, 9, 7.5, 8.5, 9.5, 6, 10, 6.5, 5];
const RIRS = [2, 1, 3, 0, 4, 5];

/** Numbers behind `rpe`, `rir` and `hr`, in place of the one that stands there. */
export function offerRatingValues(spot: Spot, movement: MovementSpot, scale: string): Offers | undefined {
  const from = movement.item.at(-1)!.end;
  const numbers = movement.whole.filter(({ start }) => start >= from);
  const stop = numbers.findIndex(({ kind, keyword }) => kind !== 'NUMBER' && keyword !== '-');
  const written = stop < 0 ? numbers : numbers.slice(0, stop);
  const start = written[0]?.start ?? spot.column;
  if (start > spot.column) return undefined;
  const end = Math.max(spot.column, written.at(-1)?.end ?? 0);
  // The text behind must be what may follow a rating.
  if (scale === 'v' || !/^(?:$|[\s,|])/.test(spot.line.slice(end))) return undefined;
  const lead = /\s/.test(spot.line[start - 1] ?? '') ? '' : ' ';
  return {
    start,
    end,
    offers: listValues(movement, scale).map((offer) => ({ ...offer, insert: lead + offer.label })),
  };
}

function listValues({ facts }: MovementSpot, scale: string): Offer[] {
  if (scale === 'rpe')
    return RPES.map((rpe) => ({ label: String(rpe), kind: 'value', detail: describeRpe(rpe) }));
  if (scale === 'rir') {
    return RIRS.map((rir) => {
      const rpe = toRpe(rir);
      return { label: String(rir), kind: 'value', detail: rpe === undefined ? 'reps left' : `RPE ${rpe}` };
    });
  }
  const rated = facts()
    .last?.cell.sets.flatMap(({ ratings }) => ratings)
    .find((rating) => rating.scale === 'hr');
  return rated ? [{ label: String(rated.value), kind: 'value', detail: 'last time' }] : [];
}
