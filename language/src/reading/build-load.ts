import type { Load, Mass } from '../model/quantity.ts';
import type { Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { parseClock } from '../units/duration.ts';
import { METRES_PER } from '../units/distance.ts';
import { buildMass, buildMassValue, type LineUnits, readUnit, reportBareMass } from './build-values.ts';
import { buildName } from './build-values.ts';
import { addAfter, type EntryReading, replaceBy, spanOf, textOf, toNumber } from './line-reading.ts';

/** The load behind `@`; undefined, with a problem reported, where it cannot be told. */
export function buildLoad(reading: EntryReading, line: LineUnits, node: ast.Load): Load | undefined {
  if (!node.$cstNode) return undefined;
  const span = spanOf(node);
  switch (node.$type) {
    case 'BodyweightLoad':
      return buildBodyweight(reading, line, node);
    case 'PinLoad': {
      const pin = toNumber(node.pin);
      if (!reading.accept('pin', pin, span, textOf(node))) return undefined;
      const plus = buildMass(reading, line, node.plus);
      return { kind: 'pin', pin, ...(plus && { plus }) };
    }
    case 'TargetLoad': {
      const low = toNumber(node.low);
      const high = node.high === undefined ? undefined : toNumber(node.high);
      if (![low, high ?? low].every((value) => reading.accept(node.scale, value, span, textOf(node)))) return undefined;
      return { kind: 'target', scale: node.scale, low, ...(high !== undefined && { high }) };
    }
    case 'OffsetLoad': {
      if (node.percent) {
        const percent = toNumber(node.value);
        return reading.accept('percent', percent, span, textOf(node)) ? { kind: 'offset', percent } : undefined;
      }
      const mass = buildMassValue(reading, line, { value: node.value, unit: node.unit, span });
      return mass && { kind: 'offset', mass };
    }
    case 'UnrecordedLoad':
      return { kind: 'unrecorded' };
    case 'PaceLoad': {
      const seconds = parseClock(node.time);
      const unit = readUnit(reading, node.unit, span) as keyof typeof METRES_PER;
      if (seconds === undefined || seconds === 0) {
        reading.report('unclear-time', span, `${node.time} is no pace: write a time for a distance such as 2:05/500 m`);
        return undefined;
      }
      return { kind: 'setting', setting: 'pace', value: seconds, metres: toNumber(node.metres) * METRES_PER[unit] };
    }
    case 'BandLoad':
      return { kind: 'band', band: node.words.join(' ').toLowerCase() };
    case 'NumberLoad':
      return buildNumberLoad(reading, line, node, span);
  }
}

function buildBodyweight(reading: EntryReading, line: LineUnits, node: ast.BodyweightLoad): Load | undefined {
  const sign = node.sign as '+' | '-' | undefined;
  if (!sign || !node.extra) return { kind: 'bodyweight' };
  const extra = node.extra;
  switch (extra.$type) {
    case 'MassExtra': {
      const mass = buildMass(reading, line, extra.mass);
      return mass && { kind: 'bodyweight', sign, mass };
    }
    case 'PinExtra':
      return { kind: 'bodyweight', sign, pin: toNumber(extra.pin) };
    case 'BandExtra':
      return { kind: 'bodyweight', sign, band: extra.words.join(' ').toLowerCase() };
  }
}

function buildNumberLoad(reading: EntryReading, line: LineUnits, node: ast.NumberLoad, span: Span): Load | undefined {
  const low = toNumber(node.low);
  const high = node.high === undefined ? undefined : toNumber(node.high);
  if (node.percent) {
    if (![low, high ?? low].every((value) => reading.accept('percent', value, span, `${value}%`))) return undefined;
    if (node.body) return { kind: 'bodyweight-share', percent: low };
    return {
      kind: 'percent',
      low,
      ...(high !== undefined && { high }),
      ...(node.of && { of: buildName(node.of) }),
    };
  }
  if (node.scale !== undefined || node.speed !== undefined) return buildSetting(reading, node, low, span);
  return buildMassLoad(reading, line, node, span);
}

function buildSetting(reading: EntryReading, node: ast.NumberLoad, value: number, span: Span): Load | undefined {
  const setting = node.scale === 'cm' ? 'height' : node.scale === 'w' ? 'power' : 'speed';
  const limit = { height: 'height', power: 'watts', speed: 'speed' } as const;
  return reading.accept(limit[setting], value, span, textOf(node)) ? { kind: 'setting', setting, value } : undefined;
}

function buildMassLoad(reading: EntryReading, line: LineUnits, node: ast.NumberLoad, span: Span): Load | undefined {
  const implementCount = node.implements === undefined ? 1 : toNumber(node.implements);
  if (implementCount !== 1 && implementCount !== 2) {
    const fix = replaceBy({ ...span, end: span.start + node.implements!.length }, '2', 'Write 2x');
    reading.report('implement-count', span, `${node.implements}x: one implement is held, or two (2x18 kg)`, [fix]);
    return undefined;
  }
  const read = (value: string, onBare?: (span: Span) => void): Mass | undefined =>
    buildMassValue(reading, line, { value, unit: node.unit, span, unitSpan: unitSpanOf(node, span) }, onBare);
  const mass = read(node.low, (bare) => reportBareLoad(reading, line, node, bare));
  if (!mass) return undefined;
  if (node.side) {
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
    ...(node.band.length > 0 && { band: node.band.join(' ').toLowerCase() }),
  };
}

function unitSpanOf(node: ast.NumberLoad, span: Span): Span {
  if (node.unit === undefined) return span;
  const at = textOf(node).toLowerCase().indexOf(node.unit.toLowerCase());
  return { line: span.line, start: span.start + at, end: span.start + at + node.unit.length };
}

/** `5 @ 8` with no unit in reach: eight kilograms, or as hard as RPE 8? */
function reportBareLoad(reading: EntryReading, line: LineUnits, node: ast.NumberLoad, span: Span): void {
  const value = toNumber(node.low);
  if (line.units.size === 0 && value >= 5 && value <= 10 && node.implements === undefined) {
    reading.report('load-or-rating', span, `Is ${node.low} a load or an RPE? Write ${node.low} kg or rpe ${node.low}`, [
      addAfter(span, ' kg', `Write ${node.low} kg`),
      replaceBy(span, `rpe ${node.low}`),
    ]);
    return;
  }
  reportBareMass(reading, span, node.low, line);
}
