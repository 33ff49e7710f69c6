import type { CstNode } from 'langium';
import { type IsoDate, parseIsoDate } from '../calendar/iso-date.ts';
import type { WrittenDate } from '../model/entry.ts';
import type { Quantity, QuantityUnit } from '../model/quantity.ts';
import type { Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { shorten } from '../text/shorten.ts';
import { METRES_PER } from '../units/distance.ts';
import { parseClock, SECONDS_PER } from '../units/duration.ts';
import { roundTo } from '../units/number.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import {
  type EntryReading,
  type Holed,
  present,
  replaceBy,
  spanOf,
  textOf,
  toNumber,
  visitLeaves,
} from './line-reading.ts';
export function buildName(node: ast.Name | ast.Text): Written {
  return { text: node.text.normalize('NFC'), span: spanOf(node) };
}

export function buildNames(nodes: readonly ast.Name[]): Written[] {
  return nodes.filter(present).map(buildName);
}

/** `17.11.2026`, `11/17/2026`, `2026/11/17`: each is reported with the readings it may have. */
export function buildDate(
  reading: EntryReading,
  node: Holed<ast.DateStamp> | undefined,
): WrittenDate | undefined {
  if (!node?.$cstNode) return undefined;
  const span = spanOf(node);
  const text = textOf(node);
  if (node.odd !== undefined) {
    const fixes = readOddDate(node.odd).map((date) => replaceBy(span, date));
    const message = `${shorten(text)} is no date that can be read without doubt: write year-month-day, such as 2026-11-17`;
    reading.report('odd-date', span, message, fixes);
    return { text, span };
  }
  const padded = text.replace(/-(\d)(?=-|$)/g, '-0$1');
  const date = parseIsoDate(padded);
  if (date === undefined) {
    reading.report('impossible-date', span, `The calendar has no ${text}: look at the day and the month`);
    return { text, span };
  }
  if (padded !== text)
    reading.report('odd-date', span, `Write the date as ${padded}`, [replaceBy(span, padded)]);
  return { text, date, span };
}

/** `17.11.2026`, `11/17/26`, `2026/11/17`, `20261117`: the days it may be; none where the year is left out. */
function readOddDate(text: string): IsoDate[] {
  const packed = /^(\d{4})(\d\d)(\d\d)$/.exec(text)?.slice(1);
  const parts = packed ?? text.split(/[./-]/);
  if (parts.length !== 3) return [];
  if (parts[0]!.length === 4) parts.reverse();
  const [first, second, writtenYear] = parts as [string, string, string];
  const year = writtenYear.length === 2 ? `20${writtenYear}` : writtenYear;
  const dates = [
    [second, first],
    [first, second],
  ].map(([month, day]) => parseIsoDate(`${year}-${month!.padStart(2, '0')}-${day!.padStart(2, '0')}`));
  // Year first is followed by the month everywhere.
  if (/^\d\d-\d\d?-\d\d$/.test(text))
    dates.unshift(parseIsoDate(`20${first}-${second.padStart(2, '0')}-${writtenYear}`));
  const found = dates.filter((date) => date !== undefined);
  return [...new Set(packed || text.startsWith(year) ? found.slice(0, 1) : found)];
}

/** The unit meant by a unit word; another spelling is reported. */
export function readUnit(reading: EntryReading, text: string, span: Span): string {
  const known = UNIT_WORDS.get(text.toLowerCase());
  if (!known) return text.toLowerCase();
  if (known.slip)
    reading.report('spelling-of-unit', span, `Write ${known.unit} for ${text}`, [
      replaceBy(span, known.unit),
    ]);
  return known.unit;
}

/** Where the last token of a node stands: the unit of `30 secs`. */
export function lastTokenSpan(node: { $cstNode?: ast.Quantity['$cstNode'] }): Span {
  let span: Span | undefined;
  visitLeaves(node.$cstNode, (leaf) => {
    span = spanOf(leaf);
  });
  return span!;
}

/** The text of the line in which a node stands, and the column in which the node ends. */
export function lineOf({ $cstNode: cst }: { readonly $cstNode?: CstNode }): { line: string; end: number } {
  const { fullText } = cst!.root;
  const start = fullText.lastIndexOf('\n', cst!.offset - 1) + 1;
  return { line: fullText.slice(start).split('\n', 1)[0]!, end: cst!.end - start };
}

/** Whether a node stands in a plan, where bars part the weeks and a range is no slip. */
export function isInPlan({ $cstNode: cst }: { readonly $cstNode?: CstNode }): boolean {
  return /^\s*plan\b/i.test(cst!.root.fullText);
}

/**
 * `8`, `30 s`, `4:05`, `40 m`, `20 yd`, `15 cal`; undefined when past its limit. A bare number takes the unit of the
 * one it is `like`: in `30-45 s` both are seconds.
 */
export function buildQuantity(
  reading: EntryReading,
  node: Holed<ast.Quantity>,
  like?: Quantity,
): Quantity | undefined {
  const span = spanOf(node);
  if (node.clock !== undefined) {
    const seconds = readClock(reading, node.clock, span);
    return seconds === undefined
      ? undefined
      : { measure: 'seconds', value: seconds, written: seconds, unit: 'clock' };
  }
  if (node.value === undefined) return undefined;
  const written = toNumber(node.value);
  const quantity = toQuantity(written, readQuantityUnit(reading, node, span, like));
  if (quantity.measure === 'reps' && !Number.isInteger(written)) {
    reading.report('out-of-range', span, `${node.value} reps: reps are whole numbers`);
    return undefined;
  }
  return reading.accept(quantity.measure, quantity.value, span, textOf(node)) ? quantity : undefined;
}

function readQuantityUnit(
  reading: EntryReading,
  node: Holed<ast.Quantity>,
  span: Span,
  like: Quantity | undefined,
): QuantityUnit {
  const word = node.unit?.toLowerCase();
  if (word === undefined) return like && like.unit !== 'clock' ? like.unit : 'rep';
  if (word !== 'rep' && word !== 'reps') return readUnit(reading, word, lastTokenSpan(node)) as QuantityUnit;
  reading.report('spelling-of-unit', lastTokenSpan(node), `Reps need no unit: write ${node.value}`, [
    replaceBy(span, node.value!),
  ]);
  return 'rep';
}

export function toQuantity(written: number, unit: QuantityUnit): Quantity {
  switch (unit) {
    case 's':
    case 'min':
    case 'h':
      return { measure: 'seconds', value: roundTo(written * SECONDS_PER[unit], 3), written, unit };
    case 'clock':
      return { measure: 'seconds', value: written, written, unit };
    case 'm':
    case 'km':
    case 'yd':
    case 'mi':
      return { measure: 'metres', value: roundTo(written * METRES_PER[unit], 6), written, unit };
    case 'cal':
      return { measure: 'calories', value: written, written, unit };
    case 'rep':
      return { measure: 'reps', value: written, written, unit };
  }
}

export function readClock(reading: EntryReading, text: string, span: Span): number | undefined {
  const seconds = parseClock(text);
  if (seconds === undefined) {
    reading.report(
      'unclear-time',
      span,
      `${shorten(text)} is no time: write minutes and seconds such as 1:05`,
    );
    return undefined;
  }
  return reading.accept('seconds', seconds, span, text) ? seconds : undefined;
}
