import { describeRpe, toRir, toRirRange, toRpe, toRpeRange } from '@plimsoll/language/measures/exertion';
import type { Rating } from '@plimsoll/language/model/quantity';
import { printNumber, printRange } from '@plimsoll/language/units/number';
import { joinLines } from '../../markdown.ts';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';

const SOURCE = 'Zourdos MC et al. (2016) J Strength Cond Res 30(1):267-275';

/** `rpe 8` → what it means, in reps in reserve and in words. */
export function hoverRating(
  _context: FeatureContext,
  _uri: string,
  { rating }: LocatedAs<'rating'>,
): string | undefined {
  const shown = printRange(rating.value, rating.high ?? rating.value, 2);
  switch (rating.scale) {
    case 'rpe':
      return describeEffort(`RPE ${shown}`, toOther(rating), describeRpe(rating.high ?? rating.value));
    case 'rir': {
      const rpe = toRpe(rating.value);
      return describeEffort(
        `RIR ${shown}: reps in reserve`,
        toOther(rating),
        rpe === undefined ? undefined : describeRpe(rpe),
      );
    }
    case 'hr':
      return `Heart rate: ${shown} beats a minute`;
    case 'v':
      return `Bar velocity: ${shown} m/s`;
  }
}

function describeEffort(title: string, other: string | undefined, words: string | undefined): string {
  return joinLines([`**${title}**${other ? ` = ${other}` : ''}`, words && capitalise(words), SOURCE]);
}

/** The same on the other scale, where it has a number. */
function toOther({ scale, value, high }: Rating): string | undefined {
  const isRpe = scale === 'rpe';
  const name = isRpe ? 'RIR' : 'RPE';
  if (high !== undefined) {
    const range = isRpe ? toRirRange({ low: value, high }) : toRpeRange({ low: value, high });
    return range && `${name} ${printRange(range.low, range.high, 1)}`;
  }
  const other = isRpe ? toRir(value) : toRpe(value);
  return other === undefined ? undefined : `${name} ${printNumber(other, 1)}`;
}

function capitalise(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
