import { type IsoDate, parseIsoDate } from '../calendar/iso-date.ts';
import type { Mass, Quantity, QuantityUnit } from '../model/quantity.ts';
import type { WrittenDate } from '../model/entry.ts';
import type { Fix, Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { parseClock, SECONDS_PER } from '../units/duration.ts';
import { METRES_PER } from '../units/distance.ts';
import { type MassUnit, toGrams } from '../units/mass.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import type { LimitName } from '../vocabulary/limits.ts';
import { addAfter, type EntryReading, replaceBy, spanOf, textOf, toNumber, visitLeaves } from './line-reading.ts';

export function buildName(node: ast.Name | ast.Text): Written {
  return { text: node.text.normalize('NFC'), span: spanOf(node) };
}

/** `17.11.2026`, `11/17/2026`, `2026/11/17`: each is reported with the readings it may have. */
export function buildDate(reading: EntryReading, node: ast.DateStamp | undefined): WrittenDate | undefined {
  if (!node?.$cstNode) return undefined;
  const span = spanOf(node);
  const text = textOf(node);
  if (node.odd !== undefined) {
    const fixes = readOddDate(node.odd).map((date) => replaceBy(span, date));
    reading.report('odd-date', span, `Write the date ${text} as year-month-day`, fixes);
    return { text, span };
  }
  const padded = text.replace(/-(\d)(?=-|$)/g, '-0$1');
  const date = parseIsoDate(padded);
  if (date === undefined) {
    reading.report('impossible-date', span, `${text} is no day of the calendar`);
    return { text, span };
  }
  if (padded !== text) reading.report('odd-date', span, `Write the date as ${padded}`, [replaceBy(span, padded)]);
  return { text, date, span };
}

function readOddDate(text: string): IsoDate[] {
  const parts = text.split(/[./]/);
  if (parts[0]!.length === 4) parts.reverse();
  const [first, second, shortYear] = parts as [string, string, string];
  const year = shortYear.length === 2 ? `20${shortYear}` : shortYear;
  const dates = [
    [second, first],
    [first, second],
  ].map(([month, day]) => parseIsoDate(`${year}-${month!.padStart(2, '0')}-${day!.padStart(2, '0')}`));
  return [...new Set(dates.filter((date) => date !== undefined))];
}

/** The unit meant by a unit word; another spelling is reported. */
export function readUnit(reading: EntryReading, text: string, span: Span): string {
  const known = UNIT_WORDS.get(text.toLowerCase());
  if (!known) return text.toLowerCase();
  if (known.slip) reading.report('spelling-of-unit', span, `Write ${known.unit} for ${text}`, [replaceBy(span, known.unit)]);
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

/** `8`, `30 s`, `4:05`, `40 m`, `20 yd`, `15 cal`; undefined when past its limit. */
export function buildQuantity(reading: EntryReading, node: ast.Quantity): Quantity | undefined {
  const span = spanOf(node);
  if (node.clock !== undefined) {
    const seconds = readClock(reading, node.clock, span);
    return seconds === undefined ? undefined : { measure: 'seconds', value: seconds, written: seconds, unit: 'clock' };
  }
  if (node.value === undefined) return undefined;
  const written = toNumber(node.value);
  const word = node.unit?.toLowerCase();
  if (word === 'rep' || word === 'reps') {
    const unit = lastTokenSpan(node);
    reading.report('spelling-of-unit', unit, `Reps need no unit: write ${node.value}`, [replaceBy(span, node.value)]);
  }
  const unit = word === undefined || word === 'rep' || word === 'reps' ? 'rep' : readUnit(reading, word, lastTokenSpan(node));
  const quantity = toQuantity(written, unit as QuantityUnit);
  if (quantity.measure === 'reps' && !Number.isInteger(written)) {
    reading.report('out-of-range', span, `${node.value} reps: reps are whole numbers`);
    return undefined;
  }
  return reading.accept(quantity.measure, quantity.value, span, textOf(node)) ? quantity : undefined;
}

export function toQuantity(written: number, unit: QuantityUnit): Quantity {
  switch (unit) {
    case 's':
    case 'min':
    case 'h':
      return { measure: 'seconds', value: written * SECONDS_PER[unit], written, unit };
    case 'clock':
      return { measure: 'seconds', value: written, written, unit };
    case 'm':
    case 'km':
    case 'yd':
    case 'mi':
      return { measure: 'metres', value: written * METRES_PER[unit], written, unit };
    case 'cal':
      return { measure: 'calories', value: written, written, unit };
    case 'rep':
      return { measure: 'reps', value: written, written, unit };
  }
}

function readClock(reading: EntryReading, text: string, span: Span): number | undefined {
  const seconds = parseClock(text);
  if (seconds === undefined) {
    reading.report('unclear-time', span, `${text} is no time: write minutes and seconds such as 1:05`);
    return undefined;
  }
  return reading.accept('seconds', seconds, span, text) ? seconds : undefined;
}

/** How a bare or doubtful duration may be meant, most likely first. */
export type DurationKind = 'short' | 'session' | 'hours';

/** Seconds of `1:30`, `90 s`, `58 min`; a bare number is reported with the units it may have. */
export function buildDuration(reading: EntryReading, node: ast.Duration | undefined, kind: DurationKind = 'short'): number | undefined {
  if (!node?.$cstNode) return undefined;
  const span = spanOf(node);
  const text = textOf(node);
  if (node.clock !== undefined) {
    if (kind !== 'short' && node.clock.split(':').length === 2) {
      const [first, second] = node.clock.split(':') as [string, string];
      const minutes = Number(first) * 60 + Number(second);
      reading.report('unclear-time', span, `${text}: hours and minutes, or minutes and seconds?`, [
        replaceBy(span, `${minutes} min`),
        replaceBy(span, `0:${first.padStart(2, '0')}:${second}`),
      ]);
      return undefined;
    }
    return readClock(reading, node.clock, span);
  }
  const value = toNumber(node.value!);
  if (node.unit === undefined) {
    reading.report('missing-unit', span, `Which unit has ${text}? Write it behind the number`, bareDurationFixes(span, text, kind));
    return undefined;
  }
  const unit = readUnit(reading, node.unit, lastTokenSpan(node));
  if (unit === 'm') {
    reading.report('unclear-time', span, `m stands for metres: write min for minutes`, [replaceBy(span, `${node.value} min`)]);
    return undefined;
  }
  if (unit !== 's' && unit !== 'min' && unit !== 'h') {
    reading.report('unclear-time', span, `${text} is a distance: a time is written such as 1:30 or 45 s`);
    return undefined;
  }
  const seconds = value * SECONDS_PER[unit];
  return reading.accept('seconds', seconds, span, text) ? seconds : undefined;
}

function bareDurationFixes(span: Span, text: string, kind: DurationKind): Fix[] {
  const units = { short: ['s', 'min'], session: ['min'], hours: ['h'] }[kind];
  return units.map((unit) => addAfter(span, ` ${unit}`, `Write ${text} ${unit}`));
}

/** Units that masses on a line were written with: a bare number takes the only one. */
export interface LineUnits {
  readonly units: ReadonlySet<MassUnit>;
}

export function readLineUnits(node: { $cstNode?: ast.MovementLine['$cstNode'] }): LineUnits {
  const units = new Set<MassUnit>();
  visitLeaves(node.$cstNode, (leaf) => {
    if ('tokenType' in leaf && (leaf.tokenType as { name: string }).name === 'MASS_UNIT') {
      units.add(UNIT_WORDS.get(leaf.text.toLowerCase())!.unit as MassUnit);
    }
  });
  return { units };
}

/** What to do with a bare number that no unit reaches. */
export type BareMass = (span: Span) => void;

/** A weight in whole grams; a bare number takes its line's only unit, else its file's, else it is reported. */
export function buildMassValue(
  reading: EntryReading,
  line: LineUnits,
  parts: { value: string; unit?: string; span: Span; unitSpan?: Span; limit?: LimitName },
  onBare?: BareMass,
): Mass | undefined {
  const { value, span } = parts;
  const written = toNumber(value);
  if (value.includes(',')) {
    const point = value.replace(',', '.');
    const number = { ...span, end: span.start + value.length };
    reading.report('decimal-comma', number, `Write ${point} with a point: a comma begins the next set`, [replaceBy(number, point)]);
  }
  const unit = parts.unit === undefined ? findBareUnit(reading, line) : (readUnit(reading, parts.unit, parts.unitSpan ?? span) as MassUnit);
  if (unit === undefined) {
    if (onBare) onBare(span);
    else reportBareMass(reading, span, value, line);
    return undefined;
  }
  const grams = toGrams(written, unit);
  return reading.accept(parts.limit ?? 'sledGrams', grams, span, `${value} ${unit}`) ? { grams, written, unit } : undefined;
}

export function reportBareMass(reading: EntryReading, span: Span, value: string, line: LineUnits): void {
  const message =
    line.units.size > 1
      ? `Two units on this line: write kg or lb behind ${value} too`
      : `Which unit has ${value}? Write kg or lb behind it, or units kg at the top of the file`;
  reading.report('missing-unit', span, message, [
    addAfter(span, ' kg', `Write ${value} kg`),
    addAfter(span, ' lb', `Write ${value} lb`),
  ]);
}

function findBareUnit(reading: EntryReading, line: LineUnits): MassUnit | undefined {
  if (line.units.size === 1) return [...line.units][0];
  return line.units.size === 0 ? reading.fileUnit : undefined;
}

export function buildMass(
  reading: EntryReading,
  line: LineUnits,
  node: ast.Mass | undefined,
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
