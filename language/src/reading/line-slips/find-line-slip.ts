import type { CheckCode } from '../../checks/catalogue.ts';
import type { Fix, Span } from '../../model/source.ts';
import { recogniseLine } from '../../syntax/line-kind.ts';
import { findComment, skipSpace, trimEnd } from '../../syntax/scanned-token.ts';
import { type LineContext, PROPERTIES } from '../../vocabulary/keywords.ts';
import { replaceBy } from '../line-reading.ts';
import { BLOCK_SLIPS } from './block-lines.ts';
import { DATE_AND_TIME_SLIPS } from './dates-and-times.ts';
import { DEFINITION_SLIPS } from './definition-lines.ts';
import { HEADER_SLIPS } from './headers.ts';
import { MISTYPED_HEADER_SLIPS, readHeadingComment } from './mistyped-headers.ts';
import { LISTED, MOVEMENT_SLIPS } from './movement-lines.ts';
import { mayBeLineSlip, UNIT_BEHIND } from './movement-words.ts';
import { PLAN_SLIPS } from './plan-lines.ts';
import { SESSION_SLIPS } from './session-lines.ts';
import type { LineSlip, Writing } from './slip.ts';

/** The first that fits is taken. */
export const LINE_SLIPS: readonly LineSlip[] = [
  ...MISTYPED_HEADER_SLIPS,
  ...MOVEMENT_SLIPS,
  ...DATE_AND_TIME_SLIPS,
  ...HEADER_SLIPS,
  ...SESSION_SLIPS,
  ...BLOCK_SLIPS,
  ...PLAN_SLIPS,
  ...DEFINITION_SLIPS,
];

const BY_CONTEXT = new Map<LineContext, readonly LineSlip[]>(
  (['units', 'exercise', 'place', 'athlete', 'plan', 'session', 'unknown'] as const).map((context) => [
    context,
    LINE_SLIPS.filter(({ within }) => within.includes(context)),
  ]),
);

const UNNOTICED = new Map(
  [...BY_CONTEXT].map(([context, slips]) => [context, slips.filter(({ unnoticed }) => unnoticed)]),
);

/** Dates and times may stand in a header too. */
const OF_HEADERS: ReadonlySet<LineSlip> = new Set([...HEADER_SLIPS, ...DATE_AND_TIME_SLIPS]);

/** A longer line is nothing that a hand slipped in; patterns must not dwell on it. */
const LONGEST = 160;

export interface FoundLineSlip {
  readonly code: CheckCode;
  readonly span: Span;
  readonly message: string;
  readonly fixes: readonly Fix[];
  /** The whole line as it is meant; undefined where it is only told. */
  readonly meant?: string;
}

/**
 * What is meant by a line, if the tables know it as a slip; of several on one line the first is told. Of a line in which
 * reading found nothing, only the slips count that read as something else.
 */
export function findLineSlip(
  text: string,
  context: LineContext,
  line: number,
  isTroubled = true,
): FoundLineSlip | undefined {
  const first = findOne(text, context, line, (isTroubled ? BY_CONTEXT : UNNOTICED).get(context)!);
  if (first?.meant === undefined) return first;
  let meant = first.meant;
  for (let more = 0; more < MOST_ON_A_LINE; more++) {
    const next = findOne(meant, context, line)?.meant;
    if (next === undefined) break;
    meant = next;
  }
  return meant === first.meant ? first : { ...first, ...tell(text, first.span, meant, first.why), meant };
}

/** A comment that is rather the header of the lines below it: read alone, it is none of a line's slips. */
export function findHeadingComment(lines: readonly string[], line: number): FoundLineSlip | undefined {
  const header = readHeadingComment(lines, line);
  if (header === undefined) return undefined;
  const text = lines[line]!;
  const span = { line, start: skipSpace(text, 0), end: text.trimEnd().length };
  const message = `Write ${header}: this is a comment, so the lines below count to the entry above until it is corrected`;
  return { code: 'stray-line', span, message, fixes: [writeLine({ ...span, start: 0 }, header)] };
}

/** Beside the first. */
const MOST_ON_A_LINE = 3;

function findOne(
  text: string,
  context: LineContext,
  line: number,
  slips = BY_CONTEXT.get(context)!,
): Told | undefined {
  const kind = recogniseLine(text, context);
  if (kind.kind === 'blank' || kind.kind === 'note' || kind.kind === 'title') return undefined;
  if (kind.kind === 'property' && PROPERTIES[context][kind.word] === 'text') return undefined;
  const start = skipSpace(text, 0);
  if (kind.kind === 'movement' && !mayBeLineSlip(text.slice(start)) && !LISTED.test(text)) {
    const sets = text.slice(kind.colon);
    if (!COMPOUND_LIKE.test(sets) && !UNIT_BEHIND.test(sets)) return undefined;
  }
  const end = trimEnd(text, start, findComment(text, start));
  const written = text.slice(start, end);
  if (written.length > LONGEST) return undefined;
  for (const slip of slips) {
    if (kind.kind === 'header' ? !OF_HEADERS.has(slip) : HEADER_SLIPS.includes(slip)) continue;
    const groups = slip.pattern.exec(written)?.slice(1);
    const found =
      groups &&
      describe(
        slip,
        text,
        { line, start, end },
        groups.map((group) => group ?? ''),
      );
    if (found) return found;
  }
  return undefined;
}

/** `1h10`, `2min30` behind a movement's colon. */
const COMPOUND_LIKE = /\d\s*(?:h|hrs?|hours?|m|min|mins|minutes?)\s*\d/i;

type Told = FoundLineSlip & { readonly why: string };

function describe(slip: LineSlip, text: string, span: Span, groups: readonly string[]): Told | undefined {
  const written = text.slice(span.start, span.end);
  const texts = slip.writes
    .map((writing) => fill(writing, groups))
    .filter(
      (found) => found !== undefined && (slip.opens || !isSame(found, written, slip.exact)),
    ) as string[];
  // What is written as it should be is no slip.
  if (texts.length < slip.writes.length) return undefined;
  const why = fill(slip.why, groups)!;
  const code = slip.told ?? 'spelling-of-word';
  const [first] = texts;
  if (first === undefined) return { code, span, message: why, fixes: [], why };
  const shown = texts.map((found) => contentOf(found)).join(' or ');
  const whole = slip.opens ? { ...span, start: 0 } : span;
  const fixes = texts.map((found) => writeLine(whole, found));
  const meant = texts.length > 1 || slip.told ? undefined : replaceIn(text, span, contentOf(first));
  const message = `Write ${shown}: ${why}`;
  return { code, span, message, fixes, why, ...(meant !== undefined && { meant }) };
}

/** A keyword may have a colon and capitals. */
function isSame(found: string, written: string, isExact = false): boolean {
  const fold = (text: string): string =>
    (isExact ? text : text.replace(/^(\p{L}{3,}(?:\s\p{L}+)?)\s*:/u, '$1 '))
      .toLowerCase()
      .replace(/\s+/g, ' ')
      .trim();
  return fold(found) === fold(written);
}

/** The same slip where more was wrong on its line. */
function tell(text: string, span: Span, meant: string, why: string): Pick<Told, 'message' | 'fixes'> {
  const content = meant.slice(span.start, meant.length - (text.length - span.end));
  return { message: `Write ${content}: ${why}`, fixes: [writeLine(span, content)] };
}

/** What stands on the line itself; the rest is a note below. */
function contentOf(written: string): string {
  return written.split('\n', 1)[0]!;
}

function replaceIn(text: string, { start, end }: Span, content: string): string {
  return text.slice(0, start) + content + text.slice(end);
}

function writeLine(span: Span, written: string): Fix {
  const [content, note] = written.split('\n> ') as [string, string?];
  const below = note === undefined ? '' : `\n${' '.repeat(span.start + 2)}> ${note}`;
  return replaceBy(span, content + below, `Write ${content}`);
}

function fill(writing: Writing, groups: readonly string[]): string | undefined {
  if (typeof writing === 'function') return writing(groups)?.trim();
  return writing.replace(/\$(\d)/g, (_, number) => groups[Number(number) - 1] ?? '').trim();
}
