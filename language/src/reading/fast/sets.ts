import type { Drop, Load, Rating, SetGroup } from '../../model/quantity.ts';
import type { Span } from '../../model/source.ts';
import { toQuantity } from '../build-values.ts';
import { settle } from '../settle.ts';
import { takeAmount, takeCount, takeDuration, within } from './amounts.ts';
import { giveUp, type LineCursor } from './line-cursor.ts';
import { type LineMasses, takeLoad } from './loads.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const SCALES: ReadonlyMap<string, Rating['scale']> = new Map(
  (['rpe', 'rir', 'hr', 'v'] as const).map((scale) => [scale, scale]),
);

/** `3x5 in 1:30 rpe 8 @ 85 kg rpe 8 drop 8 @ 60 kg` */
export function takeSet(cursor: LineCursor, masses: LineMasses): SetGroup {
  const start = cursor.at;
  const count = takeCount(cursor);
  const amountStart = cursor.at;
  const amount = takeAmount(cursor);
  const amountSpan = cursor.spanFrom(amountStart);
  const time = cursor.takesWord('in') ? takeDuration(cursor) : undefined;
  const ratings: Rating[] = [];
  takeRatings(cursor, ratings);
  let own: Load | undefined;
  let loadSpan: Span | undefined;
  if (cursor.takes('@')) {
    const loadStart = cursor.at;
    own = takeLoad(cursor, masses);
    loadSpan = cursor.spanFrom(loadStart);
    takeRatings(cursor, ratings);
  }
  const drops: Drop[] = [];
  while (cursor.atWord && cursor.peekWord() === 'drop') drops.push(takeDrop(cursor, masses));
  // A set that is its amount alone stands at one place.
  const span = cursor.end === amountSpan.end && start === amountStart ? amountSpan : cursor.spanFrom(start);
  const set: Mutable<SetGroup> = {
    count: count ?? 1,
    counted: count !== undefined,
    amount,
    load: own,
    ownLoad: own !== undefined,
    loadSpan,
    loadText: loadSpan && cursor.text.slice(loadSpan.start, loadSpan.end),
    ratings: settle(ratings),
    drops: settle(drops),
    span,
    amountSpan,
  };
  if (time !== undefined) set.within = toQuantity(time, 'clock');
  return set;
}

function takeRatings(cursor: LineCursor, ratings: Rating[]): void {
  while (cursor.atWord) {
    const start = cursor.at;
    const scale = cursor.takeFrom(SCALES);
    if (!scale) return;
    const value = within(scale, cursor.takeNumber());
    // RPE goes in half points.
    if (scale === 'rpe' && !Number.isInteger(value * 2)) giveUp();
    if (scale === 'v' && !(cursor.takesWord('m') && cursor.takes('/') && cursor.takesWord('s'))) giveUp();
    ratings.push({ scale, value, span: cursor.spanFrom(start) });
  }
}

function takeDrop(cursor: LineCursor, masses: LineMasses): Drop {
  const start = cursor.at;
  cursor.takesWord('drop');
  const amount = takeAmount(cursor);
  if (!cursor.takes('@')) giveUp();
  const load = takeLoad(cursor, masses);
  return { amount, load, span: cursor.spanFrom(start) };
}
