import type { Entry } from '../model/entry.ts';
import type { Problem, Span, Written } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { addAfter, replaceBy } from '../reading/line-reading.ts';
import { recogniseLine } from '../syntax/line-kind.ts';
import { findNearest } from '../text/edit-distance.ts';
import { BLOCK_WORDS, PROPERTIES, TRAINING_CONTEXTS } from '../vocabulary/keywords.ts';
import { type CheckContext, NO_PROBLEMS, problem } from './check-context.ts';
import { findNameAndDate, findNamedDate, findSessionWithoutDate } from './stray-headers.ts';
import { findPain, findSign } from './stray-pain.ts';

/** `warmup`, `test`, `week 5`, `A1` before a movement's name. */
const PREFIXES = /^(?:(?:warm-?up|test|week\s+\d+|[a-z]\d{1,2}[.)]?)\s+)*/iu;
/** A block's letter. */
const LETTER = /^[a-z]\s+/iu;
/** A block's letter with what lists put behind theirs, then the block. */
const LETTER_MARK = /^([a-z])\s*[).:–—-]+\s*(.*)$/iu;
/** A name, then what looks like sets: `Sissy Squat 3x5 @ 60 kg`. */
const NAME_AND_SETS =
  /^(\p{L}[^\d,@|]*?)[\s\-–—=;]+(\d+\s*[x×]\s*\d+|\d+\s*(?:@|,|\/side|s\b|m\b|reps?\b))/iu;
/** What may have been written in the colon's place. */
const SEPARATOR = /^[\s\-–—=;.]*/u;
/** A kind of block behind a letter, or before its settings: `circuit felt hard` is a note. */
const BLOCK_KIND =
  '(?:circuits?|super\\s*-?sets?|giant\\s*-?sets?|emom|amrap|intervals?|for\\s+time|tabata|block\\s+[a-z]|straight)\\b';
const BLOCK_LIKE = new RegExp(`^(?:[a-z](?:\\s+|[).:]\\s*)${BLOCK_KIND}|${BLOCK_KIND}(?=\\W*$|.*\\d))`, 'iu');
/** Names with more words than this are not looked for. */
const MOST_WORDS = 8;

/** Lines that nothing recognises. In an unknown entry the entry's own warning is enough. */
export function checkStrays(entry: Entry, { practice }: CheckContext): Iterable<Problem> {
  return entry.strays.length === 0 ? NO_PROBLEMS : describeStrays(entry, practice);
}

function* describeStrays(entry: Entry, practice: Practice): Iterable<Problem> {
  if (entry.kind === 'unknown') return;
  for (const stray of entry.strays) {
    // Reading knew what the hand slipped in, and told of it.
    if (entry.problems.some(({ span }) => span.line === stray.span.line)) continue;
    const meant = stray.text.length <= LONGEST_MEANT ? findMeaning(stray, entry.kind, practice) : undefined;
    yield meant ??
      problem(
        'stray-line',
        stray.span,
        'Nothing recognises this line, so it counts nowhere: begin a note with >, a comment with #',
        [{ title: 'Make it a note', edits: [{ span: partOf(stray, 0, 0), newText: '> ' }] }],
      );
  }
}

/** What a line may have been meant as; none of these is as long as a pasted paragraph, over which patterns would dwell. */
const LONGEST_MEANT = 300;

function findMeaning(
  stray: Written,
  kind: Exclude<Entry['kind'], 'unknown'>,
  practice: Practice,
): Problem | undefined {
  const trains = TRAINING_CONTEXTS.has(kind);
  return (
    findSessionWithoutDate(stray) ??
    findNameAndDate(stray, practice) ??
    (kind === 'session' ? findPain(stray) : undefined) ??
    (trains ? (findMissingColon(stray, practice) ?? findLetterMark(stray)) : undefined) ??
    findMistypedWord(stray, kind) ??
    (trains
      ? (findNameAndSets(stray) ?? findSign(stray) ?? findLostBlock(stray))
      : findMovementElsewhere(stray, practice)) ??
    findNamedDate(stray)
  );
}

/** `A circuit of three`: nearly a block's header. */
function findLostBlock(stray: Written): Problem | undefined {
  if (!BLOCK_LIKE.test(stray.text)) return undefined;
  const message =
    'No block begins here, so the lines below count to the block above: behind its letter stands its kind, then commas and settings, such as A circuit, 3 rounds, rest 1:00';
  return problem('stray-line', stray.span, message);
}

/** `B) circuit`: a block's letter stands alone. */
function findLetterMark(stray: Written): Problem | undefined {
  const [written, letter, rest] = LETTER_MARK.exec(stray.text) ?? [];
  if (written === undefined || recogniseLine(`${letter} ${rest}`, 'session').kind !== 'block')
    return undefined;
  const mark = partOf(stray, 0, stray.text.length - rest!.length);
  const message = `No block begins here, so the lines below count to the block above: write ${letter} ${rest}`;
  return problem('stray-line', stray.span, message, [
    replaceBy(mark, `${letter} `, `Write ${letter} ${rest}`),
  ]);
}

/** A line that begins with a known movement, the longest that fits. */
function findMissingColon(stray: Written, practice: Practice): Problem | undefined {
  const from = PREFIXES.exec(stray.text)![0].length;
  const name = findLongestMovement(stray.text.slice(from), practice);
  if (name === undefined) return undefined;
  const end = from + name.length;
  const gap = SEPARATOR.exec(stray.text.slice(end))![0].length;
  const colon = end + gap < stray.text.length ? ': ' : ':';
  // Behind a colon a load would be no sets.
  const isLoad = stray.text[end + gap] === '@';
  const fix = isLoad ? undefined : replaceBy(partOf(stray, end, end + gap), colon, 'Add the colon');
  return problem('name-without-colon', partOf(stray, from, end), `Write a colon behind ${name}`, [fix]);
}

function findLongestMovement(text: string, practice: Practice): string | undefined {
  const ends = [...text.matchAll(/\S+/g)].slice(0, MOST_WORDS).map((word) => word.index + word[0].length);
  for (const end of ends.reverse()) {
    const name = text.slice(0, end).replace(/[\s\-–—=;.]+$/u, '');
    if (name !== '' && practice.findMovement(name)) return name;
  }
  return undefined;
}

/** `efort 7` → effort; `A circut, 4 rounds` → circuit. */
function findMistypedWord(stray: Written, kind: Exclude<Entry['kind'], 'unknown'>): Problem | undefined {
  const from = LETTER.exec(stray.text)?.[0].length ?? 0;
  const word = /^\p{L}{3,}/u.exec(stray.text.slice(from))?.[0];
  if (word === undefined) return undefined;
  const words = [...Object.keys(PROPERTIES[kind]), ...(TRAINING_CONTEXTS.has(kind) ? BLOCK_WORDS : [])];
  const [near] = findNearest(word.toLowerCase(), words, 1);
  if (near === undefined) return undefined;
  const span = partOf(stray, from, from + word.length);
  if (near === word.toLowerCase()) return undefined;
  return problem('stray-line', span, `Nothing is known by "${word}" here: did you mean ${near}?`, [
    replaceBy(span, near),
  ]);
}

/** A movement that nothing defines, without its colon. */
function findNameAndSets(stray: Written): Problem | undefined {
  const from = PREFIXES.exec(stray.text)![0].length;
  const name = NAME_AND_SETS.exec(stray.text.slice(from))?.[1];
  if (name === undefined) return undefined;
  const span = partOf(stray, from, from + name.length);
  const message = `Nothing recognises this line: if ${name} is a movement, write a colon behind it`;
  return problem('stray-line', span, message, [addAfter(span, ':', 'Add the colon')]);
}

function findMovementElsewhere(stray: Written, practice: Practice): Problem | undefined {
  const name = findLongestMovement(stray.text.split(':')[0]!, practice);
  if (name === undefined) return undefined;
  const message = 'Movements and their sets stand in a session or a plan: begin one with session and a date';
  return problem('stray-line', stray.span, message);
}

function partOf({ span }: Written, start: number, end: number): Span {
  return { line: span.line, start: span.start + start, end: span.start + end };
}
