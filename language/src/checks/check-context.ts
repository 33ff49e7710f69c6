import type { IsoDate } from '../calendar/iso-date.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { Block, Entry, MovementLine } from '../model/entry.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { settle } from '../reading/settle.ts';
import { type CheckCode, findCheck } from './catalogue.ts';

/** What a check of one entry may look at beside the entry itself. */
export interface CheckContext {
  readonly practice: Practice;
  readonly uri: string;
  /** Line of the entry's header in its file. */
  readonly line: number;
  /** Of a session with a date: one for each of its athletes. */
  readonly records: readonly SessionRecord[];
  readonly today: IsoDate;
  /** Sums of sessions, remembered. */
  readonly works: SessionWorks;
}

/**
 * What a check gives that sees at once that it has nothing to look for: years of sessions go through all checks, and
 * nearly all of them find nothing.
 */
export const NO_PROBLEMS: readonly Problem[] = settle<Problem>([]);

/** Puts what a check found behind what others did. */
export function collect(problems: Problem[], found: Iterable<Problem>): void {
  if (found !== NO_PROBLEMS) problems.push(...found);
}

/** A problem with the severity that the catalogue gives its code. */
export function problem(
  code: CheckCode,
  span: Span,
  message: string,
  fixes: readonly (Fix | undefined)[] = [],
): Problem {
  const offered = fixes.filter((fix) => fix !== undefined);
  const { severity } = findCheck(code);
  return { code, severity, message, span, ...(offered.length > 0 && { fixes: offered }) };
}

export interface BlockLine {
  readonly block: Block;
  readonly line: MovementLine;
}

/** All blocks of a session, a plan (day by day) or an unknown entry; none of other entries. */
export function listBlocks(entry: Entry): readonly Block[] {
  if (entry.kind === 'plan') return entry.days.flatMap(({ blocks }) => blocks);
  return entry.kind === 'session' || entry.kind === 'unknown' ? entry.blocks : [];
}

export function listLines(entry: Entry): BlockLine[] {
  return listBlocks(entry).flatMap((block) => block.lines.map((line) => ({ block, line })));
}

/** Whether a line's sets are a preparation only, by its prefix or its block. */
export function isPreparation({ block, line }: BlockLine): boolean {
  return line.purpose === 'warmup' || block.kind === 'warmup' || block.kind === 'cooldown';
}

/** `a`, `a and b`, `a, b and c`. */
export function joinWords(words: readonly string[], last: 'and' | 'or'): string {
  return words.length < 2
    ? (words[0] ?? '')
    : `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1]}`;
}

/** The text of a place in the entry, as it stands in its file. */
export function textAt({ practice, uri, line }: CheckContext, span: Span): string {
  return practice.file(uri)?.lines[line + span.line]?.slice(span.start, span.end) ?? '';
}
