import { type IsoDate, parseIsoDate } from '../calendar/iso-date.ts';
import type { WrittenDate } from '../model/entry.ts';
import type { Mass, Quantity, QuantityUnit } from '../model/quantity.ts';
import type { Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { shorten } from '../text/shorten.ts';
import { METRES_PER } from '../units/distance.ts';
import { parseClock, SECONDS_PER } from '../units/duration.ts';
import { type MassUnit, toGrams } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';
import type { LimitName } from '../vocabulary/limits.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import {
  addAfter,
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

/** How a bare or doubtful duration may be meant, most likely first. */
export type DurationKind = 'short' | 'session' | 'hours';

/** Seconds of `1:30`, `90 s`, `58 min`; a bare number is reported with the units it may have. */
export function buildDuration(
  reading: EntryReading,
  node: Holed<ast.Duration> | undefined,
  kind: DurationKind = 'short',
): number | undefined {
  if (!node?.$cstNode) return undefined;
  const span = spanOf(node);
  const text = textOf(node);
  if (node.clock !== undefined) {
    const parts = node.clock.split(':');
    if (kind === 'session' && parts.length === 2)
      return reportShortClock(reading, parts[0]!, parts[1]!, span);
    // Nobody notes the seconds of a night.
    return readClock(reading, kind === 'hours' && parts.length === 2 ? `${node.clock}:00` : node.clock, span);
  }
  if (node.value === undefined) return undefined;
  const value = toNumber(node.value);
  if (node.unit === undefined) {
    reading.report(
      'missing-unit',
      span,
      `Which unit has ${text}? Write it behind the number, such as ${text} ${BARE_UNITS[kind][0]}`,
      BARE_UNITS[kind].map((unit) => addAfter(span, ` ${unit}`, `Write ${text} ${unit}`)),
    );
    return undefined;
  }
  const unit = readUnit(reading, node.unit, lastTokenSpan(node));
  if (unit === 'm') {
    reading.report('unclear-time', span, 'm stands for metres: write min for minutes', [
      replaceBy(span, `${node.value} min`),
    ]);
    return undefined;
  }
  if (unit !== 's' && unit !== 'min' && unit !== 'h') {
    reading.report('unclear-time', span, `${text} is a distance: a time is written such as 1:30 or 45 s`);
    return undefined;
  }
  const seconds = roundTo(value * SECONDS_PER[unit], 3);
  return reading.accept('seconds', seconds, span, text) ? seconds : undefined;
}

const BARE_UNITS: Readonly<Record<DurationKind, readonly string[]>> = {
  short: ['s', 'min'],
  session: ['min'],
  hours: ['h'],
};

/** `lasted 1:05`: an hour and five minutes, or a minute and five seconds? */
function reportShortClock(reading: EntryReading, first: string, second: string, span: Span): undefined {
  const minutes = Number(first) * 60 + Number(second);
  const asHours = Number(second) < 60 && minutes <= 24 * 60 ? [replaceBy(span, `${minutes} min`)] : [];
  const asMinutes =
    Number(second) < 60 && Number(first) < 60
      ? [replaceBy(span, `0:${first.padStart(2, '0')}:${second}`)]
      : [];
  const message = `Is ${first}:${second} hours and minutes, or minutes and seconds? Write it such as 65 min`;
  reading.report('unclear-time', span, message, [...asHours, ...asMinutes]);
}

/** Units that masses on a line were written with (a bare number takes the only one), and how heavy they may be. */
export interface LineUnits {
  readonly units: ReadonlySet<MassUnit>;
  readonly limit: LimitName;
}

export function readLineUnits(
  node: { readonly $cstNode?: ast.MovementLine['$cstNode'] },
  limit: LimitName = 'grams',
): LineUnits {
  const units = new Set<MassUnit>();
  visitLeaves(node.$cstNode, (leaf) => {
    if ('tokenType' in leaf && (leaf.tokenType as { name: string }).name === 'MASS_UNIT') {
      units.add(UNIT_WORDS.get(leaf.text.toLowerCase())!.unit as MassUnit);
    }
  });
  return { units, limit };
}

/** What to do with a bare number that no unit reaches. */
export type BareMass = (span: Span) => void;

/** A weight in whole grams; a bare number takes its line's only unit, else its file's, else it is reported. */
export function buildMassValue(
  reading: EntryReading,
  line: LineUnits,
  parts: { value: string; unit: string | undefined; span: Span; unitSpan?: Span; limit?: LimitName },
  onBare?: BareMass,
): Mass | undefined {
  const { value, span } = parts;
  const written = toNumber(value);
  const unit =
    parts.unit === undefined
      ? findBareUnit(reading, line)
      : (readUnit(reading, parts.unit, parts.unitSpan ?? span) as MassUnit);
  if (unit === undefined) {
    if (onBare) onBare(span);
    else reportBareMass(reading, span, value, line);
    return undefined;
  }
  const grams = toGrams(written, unit);
  return reading.accept(parts.limit ?? line.limit, grams, span, `${value} ${unit}`)
    ? { grams, written, unit }
    : undefined;
}

export function reportBareMass(reading: EntryReading, span: Span, value: string, line: LineUnits): void {
  const message =
    line.units.size > 1
      ? `Two units on this line: write kg or lb behind ${value} too`
      : `Which unit has ${value}? Write kg or lb behind it, or units kg at the top of the file`;
  reading.expect('missing-unit', span, message, [
    addAfter(span, ' kg', `Write ${value} kg`),
    addAfter(span, ' lb', `Write ${value} lb`),
  ]);
}

/** Whether a bare number on the line means a mass at all. */
export function hasUnit(reading: EntryReading, line: LineUnits): boolean {
  return findBareUnit(reading, line) !== undefined;
}

function findBareUnit(reading: EntryReading, line: LineUnits): MassUnit | undefined {
  if (line.units.size === 1) return [...line.units][0];
  return line.units.size === 0 ? reading.fileUnit : undefined;
}

/** One weight; a count before it has a meaning among plates alone. */
export function buildMass(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.Mass> | undefined,
  limit?: LimitName,
): Mass | undefined {
  if (!node?.$cstNode || node.count === undefined) return buildCountedMass(reading, line, node, limit);
  const span = spanOf(node);
  reading.report('implement-count', span, `${textOf(node)}: one weight stands here, without a count`);
  return undefined;
}

/** `4x10 kg` among plates: the weight of one. */
export function buildCountedMass(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.Mass> | undefined,
  limit?: LimitName,
): Mass | undefined {
  if (!node?.$cstNode || node.value === undefined) return undefined;
  return buildMassValue(reading, line, {
    value: node.value,
    unit: node.unit,
    span: spanOf(node),
    ...(node.unit !== undefined && { unitSpan: lastTokenSpan(node) }),
    ...(limit && { limit }),
  });
}

export function buildMasses(reading: EntryReading, line: LineUnits, nodes: readonly ast.Mass[]): Mass[] {
  return nodes.map((node) => buildMass(reading, line, node)).filter((mass) => mass !== undefined);
}
