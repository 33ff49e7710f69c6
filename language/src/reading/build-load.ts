import { CHECKS } from '../checks/catalogue.ts';
import type { Load, Mass } from '../model/quantity.ts';
import type { Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { METRES_PER } from '../units/distance.ts';
import { parseClock, SECONDS_PER } from '../units/duration.ts';
import { buildMass, buildMassValue, type LineUnits, reportBareMass } from './build-mass.ts';
import { buildName, lastTokenSpan, readUnit } from './build-values.ts';
import {
  addAfter,
  type EntryReading,
  type Holed,
  present,
  replaceBy,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';

/** The load behind `@`; undefined, with a problem reported, where it cannot be told. */
export function buildLoad(reading: EntryReading, line: LineUnits, node: Holed<ast.Load>): Load | undefined {
  if (!node.$cstNode) return undefined;
  const span = spanOf(node);
  switch (node.$type) {
    case 'BodyweightLoad':
      return buildBodyweight(reading, line, node);
    case 'PinLoad':
      return buildPin(reading, line, node, span);
    case 'TargetLoad':
      return buildTarget(reading, node, span);
    case 'OffsetLoad':
      return buildOffset(reading, line, node, span);
    case 'UnrecordedLoad':
      return { kind: 'unrecorded' };
    case 'PaceLoad':
      return buildPace(reading, node, span);
    case 'BandLoad':
      return node.words.length === 0 ? undefined : { kind: 'band', band: readBand(node.words) };
    case 'NumberLoad':
      return buildNumberLoad(reading, line, node, span);
  }
}

function readBand(words: readonly string[]): string {
  return words.join(' ').toLowerCase();
}

function buildPin(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.PinLoad>,
  span: Span,
): Load | undefined {
  if (node.pin === undefined) return undefined;
  const pin = toNumber(node.pin);
  if (!reading.accept('pin', pin, span, textOf(node))) return undefined;
  const plus = buildMass(reading, line, node.plus);
  return { kind: 'pin', pin, ...(plus && { plus }) };
}

function buildTarget(reading: EntryReading, node: Holed<ast.TargetLoad>, span: Span): Load | undefined {
  if (node.low === undefined || node.scale === undefined) return undefined;
  const low = toNumber(node.low);
  const high = node.high === undefined ? undefined : toNumber(node.high);
  if (!reading.acceptRating(node.scale, low, high, span, textOf(node))) return undefined;
  return { kind: 'target', scale: node.scale, low, ...(high !== undefined && { high }) };
}

function buildOffset(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.OffsetLoad>,
  span: Span,
): Load | undefined {
  if (node.value === undefined) return undefined;
  if (node.percent) {
    const percent = toNumber(node.value);
    return reading.accept('percent', percent, span, textOf(node)) ? { kind: 'offset', percent } : undefined;
  }
  const mass = buildMassValue(reading, line, { value: node.value, unit: node.unit, span });
  return mass && { kind: 'offset', mass };
}

/** `2:05/500 m` */
function buildPace(reading: EntryReading, node: Holed<ast.PaceLoad>, span: Span): Load | undefined {
  if (node.time === undefined || node.metres === undefined || node.unit === undefined) return undefined;
  const seconds = parseClock(node.time);
  const unit = readUnit(reading, node.unit, lastTokenSpan(node)) as keyof typeof METRES_PER;
  const metres = toNumber(node.metres) * METRES_PER[unit];
  if (!seconds || metres === 0) {
    reading.report(
      'unclear-time',
      span,
      `${textOf(node)} is no pace: write a time for a distance, such as 2:05/500 m`,
    );
    return undefined;
  }
  return { kind: 'setting', setting: 'pace', value: seconds, metres };
}

function buildBodyweight(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.BodyweightLoad>,
): Load | undefined {
  const sign = node.sign as '+' | '-' | undefined;
  if (!sign) return { kind: 'bodyweight' };
  const extra = present(node.extra) as Holed<ast.Extra> | undefined;
  switch (extra?.$type) {
    case 'MassExtra': {
      const mass = buildMass(reading, line, extra.mass);
      return mass && { kind: 'bodyweight', sign, mass };
    }
    case 'PinExtra': {
      if (extra.pin === undefined) return undefined;
      const pin = toNumber(extra.pin);
      return reading.accept('pin', pin, spanOf(extra), textOf(extra))
        ? { kind: 'bodyweight', sign, pin }
        : undefined;
    }
    case 'BandExtra':
      return extra.words.length === 0 ? undefined : { kind: 'bodyweight', sign, band: readBand(extra.words) };
    default:
      return undefined;
  }
}

function buildNumberLoad(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.NumberLoad>,
  span: Span,
): Load | undefined {
  if (node.low === undefined) return undefined;
  const low = toNumber(node.low);
  const high = node.high === undefined ? undefined : toNumber(node.high);
  if (!reading.acceptOrder(low, high, span, 'the lower to the higher number')) return undefined;
  if (node.percent) {
    if (![low, high ?? low].every((value) => reading.accept('percent', value, span, `${value}%`)))
      return undefined;
    reportUnused(reading, node, span, 'a percentage stands alone', node.body ? node.high : undefined);
    if (node.body) return { kind: 'bodyweight-share', percent: low };
    const of = readOther(reading, node, span);
    return { kind: 'percent', low, ...(high !== undefined && { high }), ...(of && { of }) };
  }
  if (node.scale !== undefined || node.speed !== undefined) return buildSetting(reading, node, low, span);
  return buildMassLoad(reading, line, node, span);
}

/** `65% of 1RM` says no more than `65%`; of another movement's max its name is said. */
const OWN_MAX = /^(?:(?:the|my|your)\s+)?(?:e?\s*1?\s*rm|(?:training\s+)?max|tm)$/i;

function readOther(reading: EntryReading, node: Holed<ast.NumberLoad>, span: Span): Written | undefined {
  const of = present(node.of);
  const name = of && buildName(of);
  if (!name || !OWN_MAX.test(name.text)) return name;
  const written = textOf(node).slice(0, textOf(node).indexOf('%') + 1);
  const message = `Write ${written}: a percentage is of the max, or of the training max where the plan has one`;
  reading.report('spelling-of-word', span, message, [replaceBy(span, written)]);
  return undefined;
}

/** The grammar takes more behind a number than a percentage or a setting has use for. */
function reportUnused(
  reading: EntryReading,
  node: Holed<ast.NumberLoad>,
  span: Span,
  rule: string,
  high?: string,
): void {
  const { implements: count, other, side, chain, band } = node;
  if ([count, other, side, chain, high].every((part) => part === undefined) && band.length === 0) return;
  reading.expect('syntax', span, `Not all of ${textOf(node)} can be read: ${rule}`);
}

const SETTINGS = {
  cm: { setting: 'height', limit: 'height' },
  w: { setting: 'power', limit: 'watts' },
  speed: { setting: 'speed', limit: 'speed' },
} as const;

/** `60 cm`, `180 W`, `8 km/h`; other speeds are turned into km/h. */
function buildSetting(
  reading: EntryReading,
  node: Holed<ast.NumberLoad>,
  written: number,
  span: Span,
): Load | undefined {
  const { setting, limit } = SETTINGS[node.scale ?? 'speed'];
  reportUnused(reading, node, span, 'a setting is one number', node.high);
  const value = node.scale === undefined ? toSpeed(reading, node, written) : written;
  return reading.accept(limit, value, span, textOf(node)) ? { kind: 'setting', setting, value } : undefined;
}

function toSpeed(reading: EntryReading, node: Holed<ast.NumberLoad>, written: number): number {
  const distance = readUnit(reading, node.speed!, spanOf(node)) as keyof typeof METRES_PER;
  const time =
    node.each === undefined ? 'h' : (readUnit(reading, node.each, spanOf(node)) as keyof typeof SECONDS_PER);
  // Kilometres an hour stay the number that was written.
  if (distance === 'km' && time === 'h') return written;
  return ((written * METRES_PER[distance]) / 1000) * (3600 / SECONDS_PER[time]);
}

function buildMassLoad(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.NumberLoad>,
  span: Span,
): Load | undefined {
  const implementCount = node.implements === undefined ? 1 : toNumber(node.implements);
  if (implementCount !== 1 && implementCount !== 2) {
    const place = { ...span, end: span.start + node.implements!.length };
    const message = `${node.implements}x: one implement is held, or two such as 2x18 kg`;
    reading.report('implement-count', span, message, [replaceBy(place, '2', 'Write 2x')]);
    return undefined;
  }
  const read = (value: string, onBare?: (span: Span) => void): Mass | undefined =>
    buildMassValue(reading, line, { value, unit: node.unit, span, unitSpan: unitSpanOf(node, span) }, onBare);
  const mass = read(node.low!, (bare) => reportBareLoad(reading, line, node, bare));
  if (!mass) return undefined;
  if (node.side) {
    if (node.implements !== undefined || node.high !== undefined || node.other !== undefined)
      reading.expect('syntax', span, `Not all of ${textOf(node)} can be read: each side has one weight`);
    const right = buildMass(reading, line, node.side.mass);
    return right && { kind: 'sides', left: mass, right };
  }
  const silent = (): void => undefined;
  const high = node.high === undefined ? undefined : read(node.high, silent);
  const other = node.other === undefined ? undefined : read(node.other, silent);
  const chain = buildMass(reading, line, node.chain);
  return {
    kind: 'mass',
    mass,
    implements: other ? 2 : implementCount,
    ...(high && { high }),
    ...(other && { other }),
    ...(chain && { chain }),
    ...(node.band.length > 0 && { band: readBand(node.band) }),
  };
}

function unitSpanOf(node: Holed<ast.NumberLoad>, span: Span): Span {
  if (node.unit === undefined) return span;
  const at = textOf(node).toLowerCase().indexOf(node.unit.toLowerCase());
  return { line: span.line, start: span.start + at, end: span.start + at + node.unit.length };
}

/** `5 @ 8` with no unit in reach: eight kilograms, or as hard as RPE 8? */
function reportBareLoad(
  reading: EntryReading,
  line: LineUnits,
  node: Holed<ast.NumberLoad>,
  span: Span,
): void {
  const low = node.low!;
  const value = toNumber(low);
  const { least, most } = CHECKS['load-or-rating'].numbers;
  if (line.units.size === 0 && value >= least && value <= most && node.implements === undefined) {
    reading.report('load-or-rating', span, `Is ${low} a load or an RPE? Write ${low} kg or rpe ${low}`, [
      addAfter(span, ' kg', `Write ${low} kg`),
      replaceBy(span, `rpe ${low}`),
    ]);
    return;
  }
  reportBareMass(reading, span, low, line);
}
