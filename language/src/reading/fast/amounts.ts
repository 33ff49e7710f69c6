import type { Amount, Quantity, QuantityUnit } from '../../model/quantity.ts';
import { SECONDS_PER } from '../../units/duration.ts';
import { roundTo } from '../../units/number.ts';
import { LIMITS, type LimitName } from '../../vocabulary/limits.ts';
import { toQuantity } from '../build-values.ts';
import { giveUp, type LineCursor } from './line-cursor.ts';

const QUANTITY_UNITS: ReadonlyMap<string, QuantityUnit> = new Map(
  (['s', 'min', 'h', 'm', 'km', 'yd', 'mi', 'cal'] as const).map((unit) => [unit, unit]),
);
const TIME_UNITS: ReadonlyMap<string, 's' | 'min' | 'h'> = new Map(
  (['s', 'min', 'h'] as const).map((unit) => [unit, unit]),
);

/** The number, if it is within its limit; past it, a problem would have to be told. */
export function within(name: LimitName, value: number): number {
  const { low, high } = LIMITS[name];
  return value >= low && value <= high ? value : giveUp();
}

/** `1:30`, `90 s`, `58 min`: seconds. */
export function takeDuration(cursor: LineCursor): number {
  if (cursor.atClock) return within('seconds', cursor.takeSeconds());
  const value = cursor.takeNumber();
  const unit = cursor.takeFrom(TIME_UNITS) ?? giveUp();
  return within('seconds', roundTo(value * SECONDS_PER[unit], 3));
}

/** `8`, `30 s`, `4:05`, `40 m`, `15 cal`. */
export function takeQuantity(cursor: LineCursor): Quantity {
  if (cursor.atClock) return toQuantity(within('seconds', cursor.takeSeconds()), 'clock');
  return limitQuantity(cursor.takeNumber(), cursor.takeFrom(QUANTITY_UNITS) ?? 'rep');
}

function limitQuantity(written: number, unit: QuantityUnit): Quantity {
  const quantity = toQuantity(written, unit);
  if (unit === 'rep' && !Number.isInteger(written)) giveUp();
  within(quantity.measure, quantity.value);
  return quantity;
}

/** `/side` */
function takePerSide(cursor: LineCursor): boolean {
  if (!cursor.takes('/')) return false;
  return cursor.takesWord('side') || giveUp();
}

/** What one set counts. A bare number before `left` takes the unit of the one before `right`. */
export function takeAmount(cursor: LineCursor): Amount {
  if (cursor.takes('?')) return { kind: 'unrecorded' };
  if (cursor.takesWord('skipped')) return { kind: 'skipped' };
  if (cursor.takesWord('amrap')) return { kind: 'amrap', perSide: takePerSide(cursor) };
  if (cursor.takes('(')) return takeCluster(cursor);
  if (cursor.atClock) return finishReps(cursor, takeQuantity(cursor));
  const written = cursor.takeNumber();
  if (cursor.takesWord('of')) return takeAttempt(cursor, written);
  const unit = cursor.takeFrom(QUANTITY_UNITS);
  if (unit === undefined && cursor.takesWord('left')) {
    const right = takeRight(cursor);
    const left = limitQuantity(written, right.unit === 'clock' ? 'rep' : right.unit);
    return left.measure === right.measure ? { kind: 'sides', left, right } : giveUp();
  }
  return finishReps(cursor, limitQuantity(written, unit ?? 'rep'));
}

function finishReps(cursor: LineCursor, quantity: Quantity): Amount {
  if (!cursor.takesWord('left')) return { kind: 'quantity', quantity, perSide: takePerSide(cursor) };
  const right = takeRight(cursor);
  return quantity.measure === right.measure ? { kind: 'sides', left: quantity, right } : giveUp();
}

function takeRight(cursor: LineCursor): Quantity {
  const right = takeQuantity(cursor);
  return cursor.takesWord('right') ? right : giveUp();
}

/** `4 of 5` */
function takeAttempt(cursor: LineCursor, written: number): Amount {
  const tried = cursor.takeWhole(0, LIMITS.reps.high);
  const made = Number.isInteger(written) && written <= tried ? written : giveUp();
  return { kind: 'attempt', made, tried, perSide: takePerSide(cursor) };
}

/** `(2+2+2 rest 20 s)`, `(5x10 s/side rest 5 s)` */
function takeCluster(cursor: LineCursor): Amount {
  const parts: Quantity[] = [];
  let perSide = false;
  do {
    const count = takeCount(cursor);
    const quantity = takeQuantity(cursor);
    if (takePerSide(cursor)) perSide = true;
    for (let index = 0; index < (count ?? 1); index++) parts.push(quantity);
  } while (cursor.takes('+'));
  const rest = cursor.takesWord('rest') ? takeDuration(cursor) : undefined;
  if (!cursor.takes(')')) giveUp();
  if (takePerSide(cursor)) perSide = true;
  return { kind: 'cluster', parts, perSide, ...(rest !== undefined && { rest: toQuantity(rest, 'clock') }) };
}

const COUNT = /\d{1,2} *x *(?=[\d(?])/y;

/** `3x` before what is done three times, if it stands here. */
export function takeCount(cursor: LineCursor): number | undefined {
  COUNT.lastIndex = cursor.at;
  if (!COUNT.test(cursor.text)) return undefined;
  const count = cursor.takeWhole(LIMITS.sets.low, LIMITS.sets.high);
  cursor.takes('x');
  return count;
}
