import type { Entry } from '../model/entry.ts';
import type { Problem, Span, Written } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { addAfter, replaceBy } from '../reading/line-reading.ts';
import { recogniseLine } from '../syntax/line-kind.ts';
import { findNearest } from '../text/edit-distance.ts';
import { BLOCK_WORDS, PROPERTIES, TRAINING_CONTEXTS } from '../vocabulary/keywords.ts';
import { type CheckContext, NO_PROBLEMS, problem } from './check-context.ts';

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
/** `knee pain 3/10`, `sore left knee pain`. */
const PAIN = /^([\p{L}\s]*?)\bpain(?:ful)?\b[\s:,]*(?:(10|\d)(?:\s*\/\s*10)?(?!\d))?[\s,]*([\p{L}\s]*)$/iu;
/** Names with more words than this are not looked for. */
const MOST_WORDS = 8;

/** Lines that nothing recognises. In an unknown entry the entry's own warning is enough. */
export function checkStrays(entry: Entry, { practice }: CheckContext): Iterable<Problem> {
  return entry.strays.length === 0 ? NO_PROBLEMS : describeStrays(entry, practice);
}

function* describeStrays(entry: Entry, practice: Practice): Iterable<Problem> {
  if (entry.kind === 'unknown') return;
  const trains = TRAINING_CONTEXTS.has(entry.kind);
  for (const stray of entry.strays) {
    // Reading knew what the hand slipped in, and told of it.
    if (entry.problems.some(({ span }) => span.line === stray.span.line)) continue;
    yield findSessionWithoutDate(stray) ??
      (entry.kind === 'session' ? findPain(stray) : undefined) ??
      (trains ? (findMissingColon(stray, practice) ?? findLetterMark(stray)) : undefined) ??
      findMistypedWord(stray, entry.kind) ??
      (trains ? findNameAndSets(stray) : findMovementElsewhere(stray, practice)) ??
      problem(
        'stray-line',
        stray.span,
        'Nothing recognises this line, so it counts nowhere: begin a note with >, a comment with #',
        [{ title: 'Make it a note', edits: [{ span: partOf(stray, 0, 0), newText: '> ' }] }],
      );
  }
}

/** `session Nov 24 2026`: no header, so that what stands below it goes to the entry above. */
function findSessionWithoutDate(stray: Written): Problem | undefined {
  if (stray.span.start !== 0 || !/^session\s/.test(stray.text)) return undefined;
  const message =
    'No session begins here, so the lines below count to the entry above: write its date first, such as session 2026-11-17';
  return problem('stray-line', stray.span, message);
}

/** `knee pain 3/10`: pain is never lost among the lines that nothing recognises. */
function findPain(stray: Written): Problem | undefined {
  const [written, before = '', score, after = ''] = PAIN.exec(stray.text) ?? [];
  if (written === undefined) return undefined;
  const where = [before, after]
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(' ');
  const line = `pain ${score ?? '3'}${where === '' ? '' : `, ${where}`}`;
  const message = `Pain is told by a line such as ${line}, from 0 to 10, and where: leave out what brings it on, and ask a licensed practitioner before loading it again`;
  return problem('stray-line', stray.span, message, [
    score === undefined ? undefined : replaceBy(stray.span, line),
  ]);
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
  const fix = replaceBy(partOf(stray, end, end + gap), colon, 'Add the colon');
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
