import type { MovementLine } from '../../model/entry.ts';
import { Memo } from '../../text/memo.ts';
import { LINE_WORDS } from '../../vocabulary/keywords.ts';
import { mayBeLineSlip } from '../line-slips/movement-words.ts';
import { giveUp } from './line-cursor.ts';

const PURPOSE = /(warmup|test) +(?=\S)/y;
const LABEL = /([A-Z]\d{1,2}) +(?=\S)/y;
/** What stands in names without a second meaning: words of any script, numbers, brackets, strokes, points. */
const NAME = /^[\p{L}\p{M}\d()/.&'\u2019 -]*[\p{L}\p{M}\d()/.&'\u2019-]$/u;
const PLAIN_NAME = /^[A-Za-z\d()/.&' -]*[A-Za-z\d()/.&'-]$/;
/** A name's first word that the scanner may take for a prefix or for the letter of a block. */
const DOUBTFUL_START = /^(?:warm-?up|cool-?down|(?:test|week|[a-z]\d{0,2}[.)]?)$)/i;

/** What stands before a movement's colon; columns count from its own beginning. */
export interface MovementHead {
  readonly purpose: MovementLine['purpose'];
  readonly label?: { readonly text: string; readonly start: number };
  readonly name: string;
  readonly nameStart: number;
}

/** Heads kept at once: more than a practice has names, with all their prefixes. */
const MOST_HEADS = 10_000;

/** Heads that were read before: there are as many as movements, and a movement's name is one and the same text. */
export class HeadMemo extends Memo<MovementHead> {
  constructor() {
    super(readMovementHead, MOST_HEADS);
  }
}

/** `warmup B1 Bench Press` */
export function readMovementHead(text: string): MovementHead {
  let at = 0;
  let purpose: 'warmup' | 'test' | undefined;
  let label: MovementHead['label'];
  for (;;) {
    const word: string | undefined = matchAt(PURPOSE, text, at) ?? matchAt(LABEL, text, at);
    if (word === undefined) break;
    const isPurpose = word === 'warmup' || word === 'test';
    if (isPurpose ? purpose : label) giveUp();
    if (isPurpose) purpose = word as 'warmup' | 'test';
    else label = { text: word, start: at };
    at += word.length;
    while (text.charCodeAt(at) === 32) at++;
  }
  return {
    purpose: purpose ?? 'work',
    ...(label && { label }),
    name: readName(text.slice(at)),
    nameStart: at,
  };
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[1];
}

/** A name without doubt: no comma or bar, no space at its ends, and no word of the notation before others. */
function readName(text: string): string {
  const isPlain = PLAIN_NAME.test(text);
  if (!(isPlain ? /[A-Za-z]/.test(text) : NAME.test(text) && /\p{L}/u.test(text))) giveUp();
  const space = text.indexOf(' ');
  const first = space < 0 ? text : text.slice(0, space);
  const letters = /^[a-z]+/i.exec(first)?.[0].toLowerCase();
  if (mayBeLineSlip(`${text}:`)) giveUp();
  if (DOUBTFUL_START.test(first) || (letters && LINE_WORDS.has(letters))) giveUp();
  // A name that is composed differently keeps its place, but not its length: rare enough.
  return isPlain || text === text.normalize('NFC') ? text : giveUp();
}
