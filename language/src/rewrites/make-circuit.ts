import { editLine, type FileEdit, rangeBetween } from '../formatting/file-edit.ts';
import type { Block } from '../model/entry.ts';
import {
  findBlock,
  findMovementLines,
  indentationOf,
  type LineAt,
  linesOf,
  passNotes,
} from './find-lines.ts';
import { type Rewriter, rewriteFile } from './rewrite.ts';

const STEP = '  ';

/** Selected lines of straight sets, each with as many sets, become a circuit of as many rounds. */
export const makeCircuit: Rewriter = (request) => {
  const selected = findMovementLines(request);
  const block = selected[0]?.block;
  const rounds = countSets(selected);
  if (!block || selected.length < 2 || rounds === undefined || rounds < 2 || !mayChange(block, selected))
    return undefined;
  const title = `Make a circuit of ${rounds} rounds of these lines`;
  return rewriteFile(request, title, regroup(block, selected, rounds, linesOf(request)));
};

/** What was recorded of a block would no longer be true of a part of it. */
function mayChange(block: Block, selected: readonly LineAt[]): boolean {
  const { times, restsBetween, restsTaken, restSteps, done } = block;
  const isBare =
    [times, restsBetween, restsTaken, restSteps].every(({ length }) => length === 0) &&
    !done &&
    !block.roundStep;
  const [first, last] = [selected[0]!.line.span.line, selected.at(-1)!.line.span.line];
  const between = block.lines.filter(({ span }) => span.line >= first && span.line <= last);
  if (between.length !== selected.length) return false;
  return block.kind === 'straight' && isBare && selected.every((at) => at.block === block && isOrdinary(at));
}

function isOrdinary({ line }: LineAt): boolean {
  return line.purpose === 'work' && line.week === undefined && !line.label;
}

/** How many sets each line has, where that is one number. */
function countSets(selected: readonly LineAt[]): number | undefined {
  const counts = new Set(
    selected.flatMap(({ line }) =>
      line.cells.map(({ sets }) => sets.reduce((sum, { count }) => sum + count, 0)),
    ),
  );
  return counts.size === 1 ? [...counts][0] : undefined;
}

/** Lines before the selection stay in their block; those behind it go on in one like it. */
function regroup(
  block: Block,
  selected: readonly LineAt[],
  rounds: number,
  texts: readonly string[],
): FileEdit[] {
  const { placed, row: first } = selected[0]!;
  const last = passNotes(texts, selected.at(-1)!.row);
  const rows = block.lines.map(({ span }) => placed.line + span.line);
  const isAll = rows[0] === first && rows.at(-1)! <= last;
  const headerRow = placed.line + block.span.line;
  const header = block.implicit ? undefined : texts[headerRow]!;
  const word = header === undefined ? undefined : /straight/i.exec(header);
  const base = indentationOf(header ?? texts[first]!);
  const said = block.rounds === undefined ? `circuit, ${rounds} rounds` : 'circuit';
  if (word && rows[0] === first) {
    const edits = [editLine(headerRow, word.index, word.index + word[0].length, said)];
    return isAll ? edits : [...edits, goOn(last, `${base}straight`, block)];
  }
  const inside = texts.slice(first, last + 1).map((text) => base + STEP + text.trimStart());
  const lines = [`${base}circuit, ${rounds} rounds`, ...inside];
  const replaced = { range: rangeBetween(first, 0, last, texts[last]!.length), newText: lines.join('\n') };
  return rows.at(-1)! <= last ? [replaced] : [replaced, goOn(last, `${base}straight`, block)];
}

function goOn(last: number, header: string, { rest }: Block): FileEdit {
  const kept =
    rest && rest.high === undefined && Number.isInteger(rest.low) ? `, rest ${printRest(rest.low)}` : '';
  return { range: rangeBetween(last + 1, 0, last + 1, 0), newText: `${header}${kept}\n` };
}

function printRest(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** A circuit, superset or giant set of which no round was timed becomes straight sets. */
export const makeStraight: Rewriter = (request) => {
  const at = findBlock(request);
  if (!at) return undefined;
  const { placed, block, row } = at;
  const { rounds } = block;
  const { times, restsBetween, restsTaken, restSteps, done, passes } = block;
  const isBare =
    [times, restsBetween, restsTaken, restSteps].every(({ length }) => length === 0) &&
    !done &&
    !block.roundStep;
  const texts = linesOf(request);
  const kind = /circuit|superset|giant\s+set/i.exec(texts[row]!);
  if (!kind || block.implicit || rounds === undefined || passes > 1 || !isBare || block.lines.length === 0)
    return undefined;
  const edits: FileEdit[] = [];
  for (const line of block.lines) {
    if (line.broken) return undefined;
    for (const { sets } of line.cells) {
      const count = sets.reduce((sum, set) => sum + set.count, 0);
      const [only] = sets;
      if (count === rounds || only?.amount?.kind === 'skipped') continue;
      if (count !== 1 || !only?.amount) return undefined;
      const start = only.counted ? only.span.start : only.amountSpan.start;
      edits.push(editLine(placed.line + line.span.line, start, only.amountSpan.start, `${rounds}x`));
    }
  }
  const header = texts[row]!;
  const straight = header.replace(kind[0], 'straight').replace(/\s*,?\s*\d+\s*rounds?\b/i, '');
  return rewriteFile(request, 'Make straight sets of this block', [
    editLine(row, 0, header.length, straight),
    ...edits,
  ]);
};
