import type { CheckCode } from '../checks/catalogue.ts';
import type { Fix, Span } from '../model/source.ts';
import { recogniseLine } from '../syntax/line-kind.ts';
import { findComment, skipSpace, trimEnd } from '../syntax/scanned-token.ts';
import type { LineContext } from '../vocabulary/keywords.ts';
import { AMOUNT, AT, COUNT, type ItemSlip, MASS, N, of, RATING, SETS, SIDED, STEP } from './item-slip.ts';
import { replaceBy } from './line-reading.ts';
import { PROPERTY_SLIPS, TIME_SLIPS } from './time-slips.ts';
import { WORD_SLIPS } from './word-slips.ts';

/** Words that mean something behind a set: what follows them is no note. */
const KNOWN =
  'left|right|each|per|side|drop|band|chain|tempo|rest|setting|pain|instead|then|after|rpe|rir|reps?|sets?|sec|min|cal|kgs|lbs';

/** The first that fits is taken. */
export const ITEM_SLIPS: readonly ItemSlip[] = [
  ...TIME_SLIPS,
  ...WORD_SLIPS,
  {
    pattern: of(`(.*(?:rpe|rir)\\s*)[@~≈]\\s*(${N})`),
    code: 'syntax',
    message: 'Write $2 behind the word, without a sign before it',
    writes: ['$1$2'],
  },
  {
    pattern: of(`(.*(?:rpe|rir)\\s*${N})\\s*(?:\\+|/\\s*10)`),
    code: 'syntax',
    message: 'A rating is a number alone, from 0 to 10: write $1',
    writes: ['$1'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*[^@]*?)\\s+(10|\\d(?:\\.5)?)\\s*(rpe|rir)`),
    code: 'syntax',
    message: 'Write $3 $2: the word comes first',
    writes: ['$1 $3 $2'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*)(?:~|≈|approx\\.?|about|around|ca\\.?|circa)\\s*(${N}.*)`),
    code: 'syntax',
    message: 'Write $1$2: a load is not said to be near',
    writes: ['$1$2'],
  },
  {
    pattern: of(String.raw`(.*\d\s*(?:kg|lb|kgs|lbs|s|min|m|km|cal))\.`),
    code: 'syntax',
    message: 'Write $1 without a point behind it',
    writes: ['$1'],
  },
  {
    pattern: of(String.raw`(\d+)(\s*@\s*.*?)\s*[x×*(]\s*(\d+)\s*sets?\s*\)?`),
    code: 'syntax',
    message: 'Write $3x$1$2: the number of sets comes first',
    writes: ['$3x$1$2'],
  },
  {
    pattern: of(`(\\d+)\\s*(s|secs?|min|m)\\s*[x×*]\\s*(\\d+)(?:\\s*sets?)?(${AT})?`),
    code: 'syntax',
    message: 'Write $3x$1 $2: the number of sets comes first',
    writes: ['$3x$1 $2$4'],
  },
  {
    pattern: of(`(\\d+)\\s*sets?\\s*to\\s*failure(${AT})?`),
    code: 'syntax',
    message: 'How many reps were they? Until somebody knows, write $1x?; in a plan, $1xamrap',
    writes: ['$1x? rir 0$2', '$1xamrap$2'],
  },
  {
    pattern: of(
      `(\\d+)\\s*sets?\\s*(?:of|x|×)?\\s*(\\d+)(?:\\s*reps?)?\\s+(?:with\\s+|at\\s+)?(${MASS})(${RATING})`,
    ),
    code: 'syntax',
    message: 'Write $1x$2 @ $3: sets come before reps, and an @ before the load',
    writes: ['$1x$2 @ $3$4'],
  },
  {
    pattern: of(`(${N})\\s*(kg|lb)s?\\s*[x×*]\\s*(\\d+)`),
    code: 'reps-first',
    message: 'Write $3 @ $1 $2: reps come before the load',
    writes: ['$3 @ $1 $2'],
  },
  {
    pattern: of(`(${SETS})\\s+(bw\\b.*)`),
    code: 'syntax',
    message: 'Write $1 @ $2: an @ stands before the load',
    writes: ['$1 @ $2'],
  },
  {
    pattern: of(`(${COUNT}\\d+)\\s+[-−–](${MASS})(${RATING})`),
    code: 'syntax',
    message: 'Write $1 @ bw-$2 for weight taken off the body',
    writes: ['$1 @ bw-$2$3'],
  },
  {
    pattern: of(`(${SETS})\\s*(\\+\\s*${MASS})(${RATING})`),
    code: 'syntax',
    message: 'Write $1 @ bw$2 for weight added to the body',
    writes: ['$1 @ bw$2$3'],
  },
  {
    pattern: of(`(${SIDED})\\s*e\\s*/\\s*[slah](${AT})?`),
    code: 'side-slip',
    message: 'Write $1/side: that many on each side',
    writes: ['$1/side$2'],
  },
  {
    pattern: of(`(${SETS})\\s*@\\s*(${N})\\s*(kg|lb)s?\\s*(?:each|per|ea\\.?|/)\\s*sides?(${RATING})`),
    code: 'side-slip',
    message:
      'Is it a side of the body, or of the bar? Write $a, or the whole weight: with a bar of its usual weight, $b',
    writes: ['$1/side @ $2 $3$4', writeWholeBar],
  },
  {
    pattern: of(
      `(${SIDED})(\\s*@\\s*[^@]*?)\\s*(?:(?:each|per|ea\\.?|/)\\s*(?:side|leg|arm)s?|e\\s*/\\s*[slah])`,
    ),
    code: 'side-slip',
    message: 'Write $1/side: the side stands behind the reps',
    writes: ['$1/side$2'],
  },
  {
    pattern: of(`(\\d+)\\s*l(?:eft)?[\\s/]*(\\d+)\\s*r(?:ight)?(${AT})?`),
    code: 'side-slip',
    message: 'Write $1 left $2 right for the sides apart',
    writes: ['$1 left $2 right$3'],
  },
  {
    pattern: of(`(\\d+)\\s*\\+\\s*(\\d+)(${AT})?`),
    code: 'side-slip',
    message: 'Are these the sides, or the parts of one set? Write $1 left $2 right or ($1+$2)',
    writes: ['$1 left $2 right$3', '($1+$2)$3'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*)(${N})\\s*\\+\\s*(${N})\\s*(kg|lb)s?(${RATING})`),
    code: 'syntax',
    message: 'Write $2&$3 $4 for one in each hand',
    writes: ['$1$2&$3 $4$5'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*)(?:the\\s+)?(?:empty\\s+)?bar(?:bell)?(?:\\s+only)?`),
    code: 'missing-load',
    message: 'Write what the empty bar weighs, such as 20 kg',
    writes: [],
  },
  {
    pattern: of(String.raw`(.*\S)\s*["“„«]\s*(\p{L}[^"“”„«»]*?)\s*["”“»]`),
    code: 'unknown-item',
    message: '"$2" is no part of a set: write it as a note on a line with >',
    writes: ['$1\n> $2'],
  },
  {
    pattern: of(String.raw`(.*\d)(?:\s*½|\s+1/2)(\s*(?:kg|lb).*)`),
    code: 'syntax',
    message: 'Write $1.5: a half is .5',
    writes: ['$1.5$2'],
  },
  {
    // The letter kha, and others that look like an x.
    pattern: of(`(\\d+)\\s*[хχ✕✖⨯]\\s*(\\d+)(${AT})?`),
    code: 'syntax',
    message: 'Write $1x$2 with the letter x of this alphabet',
    writes: ['$1x$2$3'],
  },
  {
    pattern: of(`(\\d+\\s*[x×]\\s*\\d+)\\s+(\\d{2,}(?:\\.\\d+)?)(${RATING})`),
    code: 'syntax',
    message: 'Write $1 @ $2: an @ stands before the load',
    writes: ['$1 @ $2$3'],
  },
  {
    pattern: of(`((?:\\d+\\s*[x×]\\s*)?${N}\\s*(?:m|km|yd|mi))\\s+(\\d+\\s*(?:s|sec|min))`),
    code: 'syntax',
    message: 'Write in before the time that a distance took',
    writes: ['$1 in $2'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*${N}\\s*%)\\s*(?:of\\s*)?(?:tm|training\\s*max)`),
    code: 'syntax',
    message: 'A percentage is of the max, or of the training max where the plan has one: write $1',
    writes: ['$1'],
  },
  {
    pattern: of(`(${STEP})\\s*weekly(.*)`),
    code: 'syntax',
    message: 'Write each week: how often the step is taken',
    writes: ['$1 each week$2'],
  },
  {
    pattern: of(`(?:done|yes|ok|completed)`),
    code: 'syntax',
    message: 'Write ? for a set that was done and not noted',
    writes: ['?'],
  },
  {
    pattern: of(`(?:-|–|—|n\\s*/\\s*a|none|not done|did not do)`),
    code: 'syntax',
    message: 'Write skipped for sets that were planned and not done',
    writes: ['skipped'],
  },
  {
    pattern: of(`(${MASS})\\s*[:,-]?\\s*(${SETS}(?:\\s*,\\s*${SETS})*)(${RATING})`),
    cell: true,
    code: 'reps-first',
    message: 'Write $2 @ $1$3: reps come before the load',
    writes: ['$2 @ $1$3'],
  },
  {
    pattern: of(`(${MASS})\\s*[x×*]\\s*(\\d+)\\s*[x×*]\\s*(\\d+)`),
    code: 'reps-first',
    message: 'Which of $2 and $3 are the sets? Write $3x$2 @ $1 or $2x$3 @ $1',
    writes: ['$3x$2 @ $1', '$2x$3 @ $1'],
  },
  {
    pattern: of(`(\\d{3}|[5-9]\\d)\\s*[x×*]\\s*(\\d+)\\s*[x×*]\\s*(\\d+)`),
    code: 'reps-first',
    message: 'Which of $2 and $3 are the sets? Write $3x$2 @ $1 or $2x$3 @ $1',
    writes: ['$3x$2 @ $1', '$2x$3 @ $1'],
  },
  {
    pattern: of(`(\\d+\\s*[x×]\\s*\\d+)\\s*[x×*]\\s*(${MASS}|\\d{3}|[5-9]\\d)`),
    code: 'syntax',
    message: 'Write $1 @ $2: an @ stands before the load',
    writes: ['$1 @ $2'],
  },
  {
    pattern: of(`(\\d+)\\s*@\\s*(${MASS}|${N})\\s*[x×*]\\s*(\\d+)`),
    code: 'syntax',
    message: 'Write $3x$1 @ $2: the number of sets comes first',
    writes: ['$3x$1 @ $2'],
  },
  {
    pattern: of(`(\\d+)\\s*sets?\\s*(?:of|x|×)?\\s*(\\d+)(?:\\s*reps?)?(${AT})?`),
    code: 'syntax',
    message: 'Write $1x$2: sets come before reps, with an x between them',
    writes: ['$1x$2$3'],
  },
  {
    pattern: of(`(\\d+)\\s*reps?\\s*[x×*]\\s*(\\d+)(?:\\s*sets?)?(${AT})?`),
    code: 'syntax',
    message: 'Write $2x$1: sets come before reps, with an x between them',
    writes: ['$2x$1$3'],
  },
  {
    pattern: of(`(\\d+)\\s*\\*\\s*(\\d+)(${AT})?`),
    code: 'syntax',
    message: 'Write $1x$2: an x stands between sets and reps',
    writes: ['$1x$2$3'],
  },
  {
    pattern: of(`[x×]\\s*(\\d+)(${AT})?`),
    code: 'syntax',
    message: 'Write $1, or the number of sets before the x',
    writes: ['$1$2'],
  },
  {
    pattern: of(`(${SETS})\\s*(?:reps?)?\\s+(${MASS})(${RATING})`),
    code: 'syntax',
    message: 'Write $1 @ $2: an @ stands before the load',
    writes: ['$1 @ $2$3'],
  },
  {
    pattern: of(`(${SETS})\\s*(?:reps?)?\\s+(?:w/|with|at|using)\\s*(${MASS}|${N})(${RATING})`),
    code: 'syntax',
    message: 'Write $1 @ $2: an @ stands before the load',
    writes: ['$1 @ $2$3'],
  },
  {
    pattern: of(`(${SETS})\\s*\\(\\s*@?\\s*(${MASS})\\s*\\)(${RATING})`),
    code: 'syntax',
    message: 'Write $1 @ $2: an @ stands before the load',
    writes: ['$1 @ $2$3'],
  },
  {
    pattern: of(`(${SETS}\\s*@.*?)\\s*\\(\\s*(?:@\\s*)?((?:rpe|rir)\\s*${N})\\s*\\)`),
    code: 'syntax',
    message: 'Write $2 without anything around it',
    writes: ['$1 $2'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*.*?)\\s*@\\s*(?:rpe\\s*)?(10|\\d(?:\\.5)?)`),
    code: 'load-or-rating',
    message: 'Write rpe $2: one @ stands before the load, and a rating behind it has none',
    writes: ['$1 rpe $2'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*.*?)\\s*@\\s*(10|\\d)\\s*rir`),
    code: 'load-or-rating',
    message: 'Write rir $2: the word comes first, and one @ stands before the load',
    writes: ['$1 rir $2'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*)(\\+\\s*${MASS})(${RATING})`),
    code: 'syntax',
    message: 'Write bw$2 for weight added to the body',
    writes: ['$1bw$2$3'],
  },
  {
    pattern: of(`(${AMOUNT}\\s*@\\s*)(${MASS})\\s*(?:each|ea\\.?|per hand)(${RATING})`),
    code: 'syntax',
    message: 'Write 2x$2: two implements of $2',
    writes: ['$12x$2$3'],
  },
  {
    pattern: of(`(${SIDED})\\s*(?:each|per|ea\\.?|/)\\s*(?:side|leg|arm|hand|foot)s?(${AT})?`),
    code: 'side-slip',
    message: 'Write $1/side: that many on each side',
    writes: ['$1/side$2'],
  },
  {
    pattern: of(`(${SIDED})\\s*(?:ea\\.?|l\\s*/\\s*r|e\\s*/\\s*s|p\\s*/\\s*s)(${AT})?`),
    code: 'side-slip',
    message: 'Write $1/side: that many on each side',
    writes: ['$1/side$2'],
  },
  {
    pattern: of(String.raw`((?:\d+\s*[x×]\s*)?\d+)\s*(?:"|”|″|'')(${AT})?`),
    code: 'syntax',
    message: 'Write $1 s for seconds',
    writes: ['$1 s$2'],
  },
  {
    pattern: of(String.raw`((?:\d+\s*[x×]\s*)?\d+)\s*['’′](${AT})?`),
    code: 'syntax',
    message: 'Write $1 min for minutes',
    writes: ['$1 min$2'],
  },
  {
    pattern: of(String.raw`((?:\d+\s*[x×]\s*)?\d+)\s*['’′]\s*([0-5]\d)\s*(?:"|”|″|'')?(${AT})?`),
    code: 'syntax',
    message: 'Write $1:$2 for minutes and seconds',
    writes: ['$1:$2$3'],
  },
  {
    pattern: of(`((?:\\d+\\s*[x×]\\s*)?${N})\\s*k`),
    code: 'syntax',
    message: 'Write $1 km for kilometres',
    writes: ['$1 km'],
  },
  {
    pattern: of(`((?:\\d+\\s*[x×]\\s*)?${N}\\s*(?:m|km|yd|mi))\\s+(\\d+(?::\\d\\d)+)`),
    code: 'syntax',
    message: 'Write in before the time that a distance took',
    writes: ['$1 in $2'],
  },
  {
    pattern: of(`(${SETS}.*?)\\s+(${N}\\s*(?:s|sec|min)|\\d+:\\d\\d)\\s*rest`),
    code: 'syntax',
    message: 'Write rest $2 behind a comma: the word comes first',
    writes: ['$1, rest $2'],
  },
  {
    pattern: of(String.raw`([\d?].*\S)\s+(tempo|rest|pain)(?:\s+|\s*[:=]\s*)([\dx+-].*)`),
    code: 'syntax',
    message: 'Put a comma before $2',
    writes: ['$1, $2 $3'],
  },
  {
    pattern: of(String.raw`([\d?].*\S)\s+((setting|instead|then|after)\s+\S.*)`),
    code: 'syntax',
    message: 'Put a comma before $3',
    writes: ['$1, $2'],
  },
  {
    pattern: of(String.raw`(\d+(?:\s*\+\s*\d+){2,})(${AT})?`),
    code: 'sets-spelled-apart',
    message: 'Are these sets, or the parts of one? Sets stand between commas, parts of one set within ( )',
    writes: ['$,$2', '($1)$2'],
  },
  {
    pattern: of(String.raw`\d+\s*[x×]\s*\d+\s+(\d+(?:\s*/\s*\d+)+)`),
    code: 'sets-spelled-apart',
    message: 'Are $1 reps that were done? Then write $,; a load stands behind its own set, such as 8 @ 20 kg',
    writes: ['$,'],
  },
  {
    pattern: of(String.raw`(\d+(?:\s*[/;]\s*\d+){2,})(${AT})?`),
    code: 'sets-spelled-apart',
    message: '$1 is several sets: write $,',
    writes: ['$,$2'],
  },
  {
    pattern: of(String.raw`(.*\S\s*;\s*\d.*)`),
    code: 'sets-spelled-apart',
    message: 'Write a comma between sets, not a semicolon',
    writes: [([text]) => text!.replace(/\s*;\s*(?=[\d?(])/g, ', ')],
  },
  {
    pattern: of(String.raw`(\d+)\s+(\d{2,})`),
    code: 'syntax',
    message: 'Write @ before a load, or a comma before the next set: $1 and $2 stand side by side',
    writes: ['$1 @ $2', '$1, $2'],
  },
  {
    pattern: of(String.raw`(\d+(?:\s+\d+)+)(${AT})?`),
    code: 'sets-spelled-apart',
    message: '$1 is several sets: write $,',
    writes: ['$,$2'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*)body\\s*weight(.*)`),
    code: 'syntax',
    message: 'Write bw for body weight',
    writes: ['$1bw$2'],
  },
  {
    pattern: of(`(${STEP})\\s*(?:/|per|every|a)\\s*(round|session|week|cycle)(.*)`),
    code: 'syntax',
    message: 'Write each $2: how often the step is taken',
    writes: ['$1 each $2$3'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*${MASS})\\s*(${STEP}\\s*each\\s.*)`),
    code: 'syntax',
    message: 'Put a comma before the step $2',
    writes: ['$1, $2'],
  },
  {
    pattern: of(`(${SETS}\\s*@\\s*${N}\\s*%)\\s*(?:of\\s*)?(?:1?\\s*rm|max|e1rm)`),
    code: 'syntax',
    message: 'A percentage is of the max without saying so: write $1',
    writes: ['$1'],
  },
  {
    pattern: of(`(${SETS})\\s*to failure(${AT})?`),
    code: 'syntax',
    message: 'Write rir 0 for a set to failure: no rep was left',
    writes: ['$1 rir 0$2'],
  },
  {
    pattern: of(`(?:failed|fail|miss(?:ed)?)(${AT})?`),
    code: 'syntax',
    message: 'Write 0 of 1 for a try that failed',
    writes: ['0 of 1$1'],
  },
  {
    pattern: of(`max(?:\\s*reps?)?(${AT})?`),
    code: 'syntax',
    message: 'max says no number: write how many were done, or ?; in a plan, amrap',
    writes: ['?$1', 'amrap$1'],
  },
  {
    pattern: of(String.raw`(.*@\s*(?:\d+\s*[x×]\s*)?${N})\s*(?:k|kq|kf|gk|kgg|kh|jg|lg)(${RATING})`),
    code: 'syntax',
    message: 'Which unit is that? Write kg or lb',
    writes: ['$1 kg$2'],
  },
  {
    pattern: of(String.raw`(.*@\s*)([1-9]\d*)o(\d*\s*(?:kg|lb).*)`),
    code: 'syntax',
    message: 'A letter stands in the number: write $20',
    writes: ['$1$20$3'],
  },
  {
    pattern: of(
      String.raw`(${SETS}(?:\s*@.*?(?:kg|lb|bw|rpe\s*\d+))?)\s*(?:-|–|—|//|\()?\s*((?!(?:${KNOWN})\b)\p{L}{3,}[^()]*)\)?`,
    ),
    code: 'unknown-item',
    message: '"$2" is no part of a set: write it as a note on a line with >',
    writes: ['$1\n> $2'],
  },
];

/** What a bar without plates mostly weighs. */
const USUAL_BAR: Readonly<Record<string, number>> = { kg: 20, lb: 45 };

/** `5 @ 40 kg per side`, of the bar. */
function writeWholeBar([set, side, unit, rating]: readonly string[]): string {
  return `${set} @ ${2 * Number(side) + USUAL_BAR[unit!.toLowerCase()]!} ${unit}${rating}`;
}

/** Those that fit a kind of entry: of all that stands between bars, and of what stands between commas too. */
function listFor(within: 'plan' | 'log'): { cells: readonly ItemSlip[]; items: readonly ItemSlip[] } {
  const items = ITEM_SLIPS.filter((slip) => slip.within === undefined || slip.within === within);
  return { cells: items.filter(({ cell }) => cell), items };
}

const OF_PLANS = listFor('plan');
const OF_LOGS = listFor('log');

/** A longer item is nothing that a hand slipped in; patterns must not dwell on it. */
const LONGEST = 120;

export interface FoundSlip {
  readonly code: CheckCode;
  readonly span: Span;
  readonly message: string;
  readonly fixes: readonly Fix[];
}

/** What is meant by the item of a movement's line at which its reading stopped, if the table knows such a slip. */
export function findItemSlip(
  text: string,
  context: LineContext,
  { line, start: column }: Span,
): FoundSlip | undefined {
  const recognised = recogniseLine(text, context);
  const end = trimEnd(text, 0, findComment(text));
  if (recognised.kind === 'property') {
    const found = findIn(text, { start: recognised.start, end }, line, PROPERTY_SLIPS);
    return found && describe(text, found);
  }
  if (recognised.kind !== 'movement' || column <= recognised.colon) return undefined;
  const { colon } = recognised;
  const spelled = findWarmup(text, line, colon, end) ?? findLooseRating(text, line, colon, end, column);
  if (spelled) return spelled;
  const cell = cutAt(text, colon + 1, end, column, /\|/g);
  const item = cutAt(text, colon + 1, end, column, /[,|]/g);
  const slips = context === 'plan' ? OF_PLANS : OF_LOGS;
  const found = findIn(text, cell, line, slips.cells) ?? findIn(text, item, line, slips.items);
  return found && describe(text, found, listOthers(text, colon + 1, end, line, found.span), slips.items);
}

/** The items of a line beside those in a place. */
function listOthers(
  text: string,
  from: number,
  end: number,
  line: number,
  { start, end: stop }: Span,
): Span[] {
  return [...text.slice(from, end).matchAll(/[^,|]+/g)]
    .map(({ 0: item, index }) => {
      const at = skipSpace(text, from + index, from + index + item.length);
      return { line, start: at, end: trimEnd(text, at, from + index + item.length) };
    })
    .filter((span) => span.end > span.start && (span.end <= start || span.start >= stop));
}

/** The piece between separators that holds a column, without the space around it. */
function cutAt(
  text: string,
  from: number,
  end: number,
  column: number,
  separator: RegExp,
): Pick<Span, 'start' | 'end'> {
  const cuts = [...text.slice(from, end).matchAll(separator)].map(({ index }) => from + index);
  const before = cuts.findLast((cut) => cut < column);
  const after = cuts.find((cut) => cut >= column) ?? end;
  const start = skipSpace(text, before === undefined ? from : before + 1, after);
  return { start, end: trimEnd(text, start, after) };
}

interface Found {
  readonly slip: ItemSlip;
  readonly span: Span;
  /** What each fix writes. */
  readonly texts: readonly string[];
}

function findIn(
  text: string,
  { start, end }: Pick<Span, 'start' | 'end'>,
  line: number,
  slips: readonly ItemSlip[],
): Found | undefined {
  const written = text.slice(start, end);
  if (written === '' || written.length > LONGEST) return undefined;
  for (const slip of slips) {
    const texts = writeSlip(slip, written);
    if (texts) return { slip, span: { line, start, end }, texts: slip.cell ? texts.map(mendTimes) : texts };
  }
  return undefined;
}

/** What is said of a slip, and its fixes: they mend the same slip in the line's other items too. */
function describe(
  text: string,
  { slip, span, texts }: Found,
  others: readonly Span[] = [],
  slips: readonly ItemSlip[] = [],
): FoundSlip {
  const said = fill(slip, slip.message, text.slice(span.start, span.end));
  const more = others.flatMap((other) => mendAlso(text, other, slip, texts.length, slips));
  return {
    code: slip.code,
    span,
    message: said.replace(/\$([ab])/g, (_, fix: 'a' | 'b') => texts[fix === 'a' ? 0 : 1] ?? ''),
    fixes: texts.flatMap((newText, index) => {
      const fix = writeFix(text, span, newText);
      if (!fix || more.length === 0 || newText.includes('\n')) return fix ?? [];
      const edits = [
        ...fix.edits,
        ...more.map((found) => replaceBy(found.span, found.texts[index]!).edits[0]!),
      ];
      edits.sort((a, b) => a.span.start - b.span.start);
      return { title: `Write ${edits.map((edit) => edit.newText).join(', ')}`, edits };
    }),
  };
}

/** An item without a slip, of the kinds that a pattern may take for one. */
const REGULAR = of(
  `${COUNT}\\d+(?:\\s*(?:s|min|m|km|cal))?(?:\\s*/\\s*side)?(?:\\s*@\\s*${COUNT}${N}(?:\\s*(?:kg|lb|%))?)?${RATING}`,
);

/** Another item in which the same slip stands, or another that has one meaning alone where a time is. */
function mendAlso(
  text: string,
  span: Span,
  slip: ItemSlip,
  count: number,
  slips: readonly ItemSlip[],
): Found[] {
  const written = text.slice(span.start, span.end);
  if (written.length > LONGEST || REGULAR.test(written)) return [];
  const same = writeSlip(slip, written);
  const isNote = same?.some((found) => found.includes('\n') || found === written);
  if (same && !isNote) return [{ slip, span, texts: same }];
  const found = findIn(text, span, span.line, slips);
  if (!found || !OF_TIMES.has(found.slip)) return [];
  return [{ ...found, texts: Array.from({ length: count }, () => found.texts[0]!) }];
}

const CLEAR = TIME_SLIPS.filter(({ cell, writes }) => !cell && writes.length === 1);
const OF_TIMES: ReadonlySet<ItemSlip> = new Set(CLEAR);

/** The times of a cell as they are meant. */
function mendTimes(cell: string): string {
  return cell.replace(/[^,|\s][^,|]*(?<!\s)/g, (item) => {
    const mended = CLEAR.map((slip) => writeSlip(slip, item)?.[0]).find((text) => text !== undefined);
    return mended ?? item;
  });
}

/** What the fixes write for an item; undefined where it is no such slip. */
export function writeSlip(slip: ItemSlip, written: string): readonly string[] | undefined {
  const found = slip.pattern.exec(written);
  if (!found) return undefined;
  const groups = found.slice(1).map((group) => group ?? '');
  const texts = slip.writes.map((writing) =>
    typeof writing === 'string' ? fill(slip, writing, written) : writing(groups)?.trim(),
  );
  // What is written as it should be is no slip.
  const isNone = texts.some((text) => text === undefined || isSame(text, written));
  return isNone ? undefined : (texts as string[]);
}

function isSame(text: string, written: string): boolean {
  return text.replace(/\s/g, '') === written.replace(/\s/g, '');
}

function fill({ pattern }: ItemSlip, template: string, written: string): string {
  const numbers = (pattern.exec(written)![1] ?? '').split(/\D+/).join(', ');
  return written.replace(pattern, template.replaceAll('$,', numbers)).trim();
}

/** What becomes a note can only stand at the line's end; the set before it stays as it is. */
function writeFix(text: string, span: Span, newText: string): Fix | undefined {
  const [set, note] = newText.split('\n') as [string, string?];
  return note === undefined
    ? replaceBy(span, newText)
    : moveToNote(text, { ...span, start: span.start + set.length }, note.replace(/^> /, ''));
}

/** Makes what ends a line a note below it; undefined where more follows. */
export function moveToNote(text: string, span: Span, note: string): Fix | undefined {
  if (text.slice(span.end).trim() !== '') return undefined;
  const indentation = ' '.repeat(skipSpace(text, 0) + 2);
  return replaceBy(span, `\n${indentation}> ${note}`, 'Write it as a note below');
}

/** `Row: warmup 5 @ 40 kg, 5 @ 60 kg`: the word stands before the name, and is the whole line's. */
function findWarmup(text: string, line: number, colon: number, end: number): FoundSlip | undefined {
  const items = text.slice(colon + 1, end);
  const found = /^\s*(?:warm-?ups?|wu|w\/u)[\s:]+([^,|]*)(?:,\s*([^|]*))?$/iu.exec(items);
  if (!found) return undefined;
  const [, warmup, work] = found;
  const from = skipSpace(text, 0);
  const name = text.slice(from, colon).trim();
  const lines = [`warmup ${name}: ${warmup!.trim()}`, ...(work ? [`${name}: ${work.trim()}`] : [])];
  const message = `Write warmup before the name, for sets that have a line of their own: ${lines[0]}`;
  const newText = lines.join(`\n${text.slice(0, from)}`);
  return {
    code: 'syntax',
    span: { line, start: skipSpace(text, colon + 1), end },
    message,
    fixes: [replaceBy({ line, start: from, end }, newText, `Write ${lines[0]}`)],
  };
}

/** `5 @ 60 kg, rpe 8`: a rating stands behind its set without a comma. */
function findLooseRating(
  text: string,
  line: number,
  colon: number,
  end: number,
  column: number,
): FoundSlip | undefined {
  const found = /^(.*\S)(\s*,\s*)((?:rpe|rir|hr)\s*[\d.]+(?:\s*-\s*[\d.]+)?)\s*(?:$|[,|])/iu.exec(
    text.slice(colon + 1, end),
  );
  if (!found) return undefined;
  const [, before, comma, rating] = found;
  const start = colon + 1 + before!.length;
  const stop = start + comma!.length + rating!.length;
  if (column < start || column > stop) return undefined;
  const span = { line, start, end: stop };
  return {
    code: 'syntax',
    span,
    message: `Write ${rating} behind its set, without a comma before it`,
    fixes: [replaceBy(span, ` ${rating}`)],
  };
}
