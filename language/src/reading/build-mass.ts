import type { Mass } from '../model/quantity.ts';
import type { Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { type MassUnit, toGrams } from '../units/mass.ts';
import type { LimitName } from '../vocabulary/limits.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { lastTokenSpan, readUnit } from './build-values.ts';
import {
  addAfter,
  type EntryReading,
  type Holed,
  spanOf,
  textOf,
  toNumber,
  visitLeaves,
} from './line-reading.ts';

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
