import type { Done, RoundTime, SessionFacts } from '../../model/entry.ts';
import type { Quantity } from '../../model/quantity.ts';
import type { Span } from '../../model/source.ts';
import type { MassUnit } from '../../units/mass.ts';
import { LIMITS } from '../../vocabulary/limits.ts';
import { settle } from '../settle.ts';
import type { TrainingPiece } from '../training-fold.ts';
import { takeDuration, takeQuantity, within } from './amounts.ts';
import { giveUp, LineCursor } from './line-cursor.ts';
import { LineMasses } from './loads.ts';

type Reader = (cursor: LineCursor, start: number, fileUnit: MassUnit | undefined) => TrainingPiece;

/** A line that begins with a property's word; undefined where none does. */
export function readPropertyLine(
  text: string,
  index: number,
  start: number,
  fileUnit: MassUnit | undefined,
): TrainingPiece | undefined {
  const cursor = new LineCursor(text, index, start);
  const read = cursor.takeFrom(PROPERTY_READERS);
  return read?.(cursor, start, fileUnit);
}

/** The whole line's place; anything left on it gives up. */
function finish(cursor: LineCursor, start: number): Span {
  return cursor.isDone ? cursor.spanFrom(start) : giveUp();
}

function takeList<T>(cursor: LineCursor, separator: string, take: (cursor: LineCursor) => T): readonly T[] {
  const values: T[] = [];
  do values.push(take(cursor));
  while (cursor.takes(separator));
  return settle(values);
}

const takeTime = (cursor: LineCursor): RoundTime => (cursor.takes('?') ? undefined : takeDuration(cursor));
const takeTimes = (cursor: LineCursor): readonly RoundTime[] => takeList(cursor, ',', takeTime);
const takeScore = (cursor: LineCursor): number | undefined =>
  cursor.takes('?') ? undefined : within('effort', cursor.takeNumber());

/** How long a session was: 1:05 may be hours or minutes. */
function takeLasted(cursor: LineCursor): number | undefined {
  if (cursor.takes('?')) return undefined;
  return cursor.atClock ? giveUp() : takeDuration(cursor);
}

function takeDone(cursor: LineCursor): Omit<Done, 'span'> {
  if (cursor.takesWord('in')) return { seconds: takeDuration(cursor), plus: [] };
  const takeRounds = () => cursor.takeWhole(LIMITS.roundsDone.low, LIMITS.roundsDone.high);
  const rounds = takeRounds();
  const of = cursor.takesWord('of') ? takeRounds() : undefined;
  if (!cursor.takesWord('rounds') && !cursor.takesWord('round')) giveUp();
  const plus: Quantity[] = [];
  while (cursor.takes('+')) plus.push(takeQuantity(cursor));
  return { rounds, ...(of !== undefined && { of }), plus };
}

/** What stands twice is told by `once`, and a problem leaves the entry to the parser. */
const PROPERTY_READERS: ReadonlyMap<string, Reader> = new Map<string, Reader>([
  [
    'time',
    (cursor, start) => {
      const times = takeList(cursor, '|', takeTimes);
      const span = finish(cursor, start);
      return {
        kind: 'record',
        span,
        apply: (block, reading) => {
          reading.once(block.timesSpan, span, 'time');
          block.times = times;
          block.timesSpan = span;
        },
      };
    },
  ],
  [
    'done',
    (cursor, start) => {
      const done = takeDone(cursor);
      const span = finish(cursor, start);
      return {
        kind: 'record',
        span,
        apply: (block, reading) => {
          reading.once(block.done, span, 'done');
          block.done = { ...done, span };
        },
      };
    },
  ],
  [
    'rest',
    (cursor, start) => {
      const rests = takeTimes(cursor);
      const span = finish(cursor, start);
      const [seconds] = rests;
      return {
        kind: 'record',
        span,
        apply: (block) => {
          if (rests.length > 1 || seconds === undefined) block.restsTaken = rests;
          else {
            const after = block.lines.length - 1;
            block.restsBetween = [...block.restsBetween, { after, seconds, span }];
          }
        },
      };
    },
  ],
  onceOf('effort', 'efforts', (cursor) => ({ values: takeList(cursor, '|', takeScore) })),
  onceOf('lasted', 'lasted', (cursor) => ({ values: takeList(cursor, '|', takeLasted) })),
  onceOf('bodyweight', 'bodyweight', (cursor, fileUnit) => {
    const masses = new LineMasses(fileUnit, 'bodyGrams');
    const mass = masses.take(cursor);
    masses.finish();
    return { mass };
  }),
  // `sleep 7:30` are hours and minutes: rare enough.
  onceOf('sleep', 'sleep', (cursor) => ({ hours: cursor.atClock ? giveUp() : takeDuration(cursor) / 3600 })),
  onceOf('readiness', 'readiness', (cursor) => ({ score: within('readiness', cursor.takeNumber()) })),
  onceOf('missed', 'missed', (cursor) => {
    const reason = cursor.takes(',') ? cursor.takeRest() : '';
    return reason === '' ? {} : { reason };
  }),
  [
    'pain',
    (cursor, start) => {
      const score = within('pain', cursor.takeNumber());
      const where = cursor.takeText();
      // `pain 3 out of 7` is a slip.
      if (where !== '' && !/^(?!(?:out )?of )[A-Za-z]/i.test(where)) giveUp();
      const span = finish(cursor, start);
      return {
        kind: 'property',
        apply: (facts) => {
          facts.pains = [...facts.pains, { score, ...(where !== '' && { where }), span }];
        },
      };
    },
  ],
]);

/** A property of the session that may stand once. */
function onceOf<K extends Exclude<keyof SessionFacts, 'pains'>>(
  word: string,
  key: K,
  take: (cursor: LineCursor, fileUnit: MassUnit | undefined) => Omit<NonNullable<SessionFacts[K]>, 'span'>,
): [string, Reader] {
  return [
    word,
    (cursor, start, fileUnit) => {
      const value = take(cursor, fileUnit);
      const span = finish(cursor, start);
      const said = { [key]: { ...value, span } };
      return {
        kind: 'property',
        apply: (facts, _plan, reading) => {
          reading.once(facts[key], span, word);
          Object.assign(facts, said);
        },
      };
    },
  ];
}
