import { type FileEdit, rangeBetween } from '../formatting/file-edit.ts';
import type { PlacedEntry } from '../model/entry.ts';
import type { MassUnit } from '../units/mass.ts';
import { findEntry, indentationOf, linesOf, selectRows } from './find-lines.ts';
import { type Rewrite, type RewriteRequest, type Rewriter, rewriteFile } from './rewrite.ts';

const TITLE = 'Turn these rows into sets';

/** Rows of a spreadsheet as sets, in the unit that the file or the rows themselves say. */
export const turnRowsIntoSets: Rewriter = (request) => turnRows(request, undefined);
/** The same where nothing says the unit: the coach does. */
export const turnRowsIntoKilograms: Rewriter = (request) => turnRows(request, 'kg');
export const turnRowsIntoPounds: Rewriter = (request) => turnRows(request, 'lb');

interface Row {
  readonly name: string | undefined;
  readonly set: string;
  readonly hasLoad: boolean;
  readonly hasUnit: boolean;
}

function turnRows(request: RewriteRequest, unit: MassUnit | undefined): Rewrite | undefined {
  const placed = findEntry(request);
  const selection = selectRows(request);
  const texts = linesOf(request);
  const rows = placed && readRows(placed, texts, selection);
  if (!placed || !rows) return undefined;
  const isUnitMissing =
    rows.some(({ hasLoad }) => hasLoad) &&
    rows.every(({ hasUnit }) => !hasUnit) &&
    !request.practice.file(request.uri)?.model.units;
  if (isUnitMissing !== (unit !== undefined)) return undefined;
  const edits = writeRows(placed, rows, texts, selection, unit);
  return rewriteFile(request, unit ? `${TITLE}, in ${unit}` : TITLE, edits, 'quickfix');
}

/** Reps, then a load, then an RPE; before them maybe the movement's name. Undefined where one row is otherwise. */
function readRows(
  { line, entry }: PlacedEntry,
  texts: readonly string[],
  { first, last }: { readonly first: number; readonly last: number },
): Row[] | undefined {
  if (entry.kind !== 'session' && entry.kind !== 'plan' && entry.kind !== 'unknown') return undefined;
  const strays = new Set(entry.strays.map(({ span }) => line + span.line));
  const rows: (Row | undefined)[] = [];
  for (let row = first; row <= last; row++) {
    if (texts[row]?.trim() === '') continue;
    rows.push(strays.has(row) ? readRow(texts[row]!) : undefined);
  }
  const read = rows.filter((row) => row !== undefined);
  return read.length >= 2 && read.length === rows.length ? read : undefined;
}

function readRow(text: string): Row | undefined {
  const cells = text.trim().split(/\s*[\t;]\s*|\s{2,}/);
  const name = /^\p{L}[^\d@|,:]*$/u.test(cells[0]!) ? cells.shift()! : undefined;
  const [reps, load, rating, ...more] = cells.length === 1 ? cells[0]!.split(/\s+(?=\d)/) : cells;
  if (reps === undefined || !/^\d{1,4}$/.test(reps) || more.length > 0) return undefined;
  const mass = load === undefined || load === '' ? undefined : /^(\d+(?:[.,]\d+)?)\s*(kg|lb)?$/i.exec(load);
  if (mass === null) return undefined;
  const isRated = rating !== undefined && rating !== '';
  if (isRated && !/^(?:10|[0-9](?:[.,][05])?)$/.test(rating)) return undefined;
  const [, number = '', unit] = mass ?? [];
  const set = [
    reps,
    ...(mass ? [`@ ${number.replace(',', '.')}${unit ? ` ${unit.toLowerCase()}` : ''}`] : []),
    ...(isRated ? [`rpe ${rating.replace(',', '.')}`] : []),
  ].join(' ');
  return { name, set, hasLoad: mass !== undefined, hasUnit: unit !== undefined };
}

/** Behind the movement above that waits for its sets, or below the names that the rows say, or by themselves. */
function writeRows(
  { line, entry }: PlacedEntry,
  rows: readonly Row[],
  texts: readonly string[],
  { first, last }: { readonly first: number; readonly last: number },
  unit: MassUnit | undefined,
): FileEdit[] {
  const end = texts[last]!.length;
  const groups: { name: string | undefined; sets: Row[] }[] = [];
  for (const row of rows) {
    const open = groups.at(-1);
    if (open && (row.name === undefined || row.name === open.name)) open.sets.push(row);
    else groups.push({ name: row.name, sets: [row] });
  }
  const above = texts.slice(0, first).findLastIndex((text) => text.trim() !== '');
  const waits = above > line && entry.kind !== 'units' && /^\s*[^#>].*:\s*$/.test(texts[above] ?? '');
  const written = groups.map(
    ({ name, sets }) => `${name === undefined ? '' : `${name}: `}${join(sets, unit)}`,
  );
  if (waits && groups.length === 1 && groups[0]!.name === undefined) {
    const start = texts[above]!.trimEnd().length;
    return [{ range: rangeBetween(above, start, last, end), newText: ` ${written[0]}` }];
  }
  const indentation = indentationOf(texts[first]!) || '  ';
  return [
    {
      range: rangeBetween(first, 0, last, end),
      newText: written.map((text) => indentation + text).join('\n'),
    },
  ];
}

/** One unit stands for all bare weights of its line, behind the last of them. */
function join(sets: readonly Row[], unit: MassUnit | undefined): string {
  const last = sets.findLastIndex(({ hasLoad }) => hasLoad);
  return sets
    .map(({ set }, index) => (unit && index === last ? set.replace(/(@ [\d.]+)/, `$1 ${unit}`) : set))
    .join(', ');
}
