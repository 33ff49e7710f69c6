import { editLine, type FileEdit } from '../formatting/file-edit.ts';
import { placeLines } from '../formatting/place-lines.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { convertMass, type MassUnit } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';
import type { LineContext } from '../vocabulary/keywords.ts';
import { findEntry, findHeader, linesOf } from './find-lines.ts';
import { listMasses, type MassAt } from './list-masses.ts';
import { editSpan, type Rewrite, type RewriteRequest, type Rewriter, rewriteFile } from './rewrite.ts';

/** Decimals of a converted weight: hundredths show every plate that is made. */
const DECIMALS = 2;

interface ConvertedRow {
  readonly row: number;
  readonly text: string;
  readonly masses: readonly MassAt[];
  /** What a number without a unit on this line is in. */
  readonly bareUnit: MassUnit | undefined;
}

/** `5 @ 60 kg` → `5 @ 132.28 lb`: the weights of the cursor's line in the other unit. */
export const convertLine: Rewriter = (request) => {
  const row = request.range.start.line;
  return convert(
    request,
    'this line',
    listRows(request).filter((candidate) => candidate.row === row),
  );
};

/** The weights of a whole entry, asked for at its header. */
export const convertEntry: Rewriter = (request) => {
  const placed = findHeader(request, 'place', 'athlete', 'plan', 'session');
  if (!placed) return undefined;
  const { line, entry } = placed;
  const rows = listRows(request).filter(({ row }) => row >= line && row < line + entry.lineCount);
  return convert(request, `this ${entry.kind}`, rows);
};

/** All weights of the file, and the unit that it gives to bare numbers. Asked for at any header. */
export const convertFile: Rewriter = (request) => {
  if (findEntry(request)?.line !== request.range.start.line) return undefined;
  const { model } = request.practice.file(request.uri)!;
  const target = model.units && otherUnit(model.units);
  const header = model.entries.find(({ entry }) => entry.kind === 'units');
  const word = header && /(?<=^\S+\s+)[\p{L}]+/u.exec(linesOf(request)[header.line]!);
  if (!target || !header || !word)
    return model.units ? undefined : convert(request, 'this file', listRows(request));
  const span = { line: 0, start: word.index, end: word.index + word[0].length };
  return convert(request, 'this file', listRows(request), [editSpan(header, span, target)], target);
};

/** `fileUnit` is what the file's bare numbers will be in; without it each line says its own unit. */
function convert(
  request: RewriteRequest,
  what: string,
  rows: readonly ConvertedRow[],
  more: readonly FileEdit[] = [],
  fileUnit?: MassUnit,
): Rewrite | undefined {
  const first = rows.flatMap((row) => row.masses.map((mass) => unitOf(mass, row))).find(Boolean);
  const target = fileUnit ?? (first && otherUnit(first));
  if (!target) return undefined;
  const edits = rows.flatMap((row) => convertRow(row, target, fileUnit === target));
  return rewriteFile(request, `Convert ${what} to ${target}`, [...more, ...edits]);
}

function convertRow(row: ConvertedRow, target: MassUnit, isFileUnit: boolean): FileEdit[] {
  const edits = new Map<number, FileEdit>();
  const put = (start: number, end: number, newText: string): void => {
    edits.set(start, editLine(row.row, start, end, newText));
  };
  for (const mass of row.masses) {
    const unit = unitOf(mass, row);
    if (!unit || unit === target) continue;
    put(mass.start, mass.end, printPlain(roundTo(convertMass(mass.value, unit, target), DECIMALS)));
    // `20-24 kg` writes one unit for both.
    if (mass.unit) put(mass.unit.start, mass.unit.end, target);
  }
  const last = row.masses.at(-1);
  const isBare = row.masses.every((mass) => !mass.unit);
  // No unit is left to say what the bare numbers of the line are in.
  if (last && isBare && edits.size > 0 && !isFileUnit) {
    const { newText } = edits.get(last.start)!;
    put(last.start, last.end, `${newText} ${target}`);
  }
  return [...edits.values()];
}

function listRows(request: RewriteRequest): ConvertedRow[] {
  const { model } = request.practice.file(request.uri) ?? {};
  return placeLines(linesOf(request)).flatMap(({ text, context }, row) => {
    const masses = listMasses(text, context as LineContext);
    const written = new Set(masses.flatMap(({ unit }) => (unit ? [unit.unit] : [])));
    const bareUnit = written.size === 0 ? model?.units : written.size === 1 ? [...written][0] : undefined;
    return masses.length > 0 ? [{ row, text, masses, bareUnit }] : [];
  });
}

function unitOf(mass: MassAt, { bareUnit }: ConvertedRow): MassUnit | undefined {
  return mass.unit?.unit ?? mass.stepUnit ?? bareUnit;
}

function otherUnit(unit: MassUnit): MassUnit {
  return unit === 'kg' ? 'lb' : 'kg';
}
