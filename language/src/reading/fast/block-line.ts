import type { BlockKind } from '../../model/entry.ts';
import { LIMITS } from '../../vocabulary/limits.ts';
import { type OpenBlock, openBlock } from '../build-block.ts';
import { takeDuration, takeQuantity } from './amounts.ts';
import { giveUp, LineCursor } from './line-cursor.ts';

const LETTER = /([A-Z]) +(?=[a-z])/y;
/** The first word of a block's kind, and the word that belongs to it. */
const KINDS: ReadonlyMap<string, readonly [kind: BlockKind, second?: string]> = new Map([
  ['straight', ['straight']],
  ['circuit', ['circuit']],
  ['superset', ['superset']],
  ['warmup', ['warmup']],
  ['cooldown', ['cooldown']],
  ['giant', ['giant set', 'set']],
  ['for', ['for time', 'time']],
  ['every', ['every']],
  ['amrap', ['amrap']],
  ['intervals', ['intervals']],
]);

/** `B circuit, 4 rounds, rest 1:15`; undefined where no block begins. */
export function readBlockLine(text: string, index: number, start: number): OpenBlock | undefined {
  LETTER.lastIndex = start;
  const letter = LETTER.exec(text);
  const cursor = new LineCursor(text, index, start + (letter?.[0].length ?? 0));
  const known = cursor.takeFrom(KINDS);
  if (!known) return letter ? giveUp() : undefined;
  const [kind, second] = known;
  if (second && !cursor.takesWord(second)) giveUp();
  const block = openBlock(kind, { line: index, start, end: start }, false, letter?.[1]);
  takeKind(cursor, block);
  while (cursor.takes(',')) takeOption(cursor, block);
  if (!cursor.isDone) giveUp();
  block.span = cursor.spanFrom(start);
  return block;
}

function takeKind(cursor: LineCursor, block: OpenBlock): void {
  switch (block.kind) {
    case 'every': {
      const interval = takeDuration(cursor) || giveUp();
      block.every = { interval, ...(cursor.takesWord('for') && { total: takeDuration(cursor) }) };
      break;
    }
    case 'amrap':
      block.window = takeDuration(cursor);
      break;
    case 'intervals':
      takeIntervals(cursor, block);
      break;
    default:
      if (cursor.atDigit) takeRounds(cursor, block);
  }
}

/** `intervals 0:40 on`, `intervals 6 x 500 m` */
function takeIntervals(cursor: LineCursor, block: OpenBlock): void {
  if (cursor.atClock) {
    block.intervals = { on: takeDuration(cursor) };
    if (!cursor.takesWord('on')) giveUp();
    return;
  }
  const count = cursor.takeWhole(LIMITS.rounds.low, LIMITS.rounds.high);
  if (!cursor.takes('x') || !cursor.atDigit) giveUp();
  block.rounds = count;
  block.intervals = { count, work: takeQuantity(cursor) };
}

function takeOption(cursor: LineCursor, block: OpenBlock): void {
  if (cursor.takesWord('rest')) block.rest = { low: takeDuration(cursor) };
  else if (cursor.takesWord('cap')) block.cap = takeDuration(cursor);
  else if (cursor.takesWord('alternating')) block.alternating = true;
  else if (cursor.atClock) {
    block.intervals = { ...block.intervals, off: takeDuration(cursor) };
    if (!cursor.takesWord('off')) giveUp();
  } else takeRounds(cursor, block);
}

/** `4 rounds`, `3 rounds x 2 passes` */
function takeRounds(cursor: LineCursor, block: OpenBlock): void {
  block.rounds = cursor.takeWhole(LIMITS.rounds.low, LIMITS.rounds.high);
  if (!cursor.takesWord('rounds') && !cursor.takesWord('round')) giveUp();
  if (!cursor.takes('x')) return;
  block.passes = cursor.takeWhole(LIMITS.passes.low, LIMITS.passes.high);
  if (!cursor.takesWord('passes') && !cursor.takesWord('pass')) giveUp();
}
