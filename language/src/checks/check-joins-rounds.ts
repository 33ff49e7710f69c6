import type { Block, Entry, MovementLine } from '../model/entry.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import { BLOCK_KINDS } from '../vocabulary/block-kinds.ts';
import { listBlocks, problem } from './check-context.ts';

/**
 * A movement that looks as if its block were over: it stands farther left than the others, or behind the times. A block
 * lasts to the next header all the same, so that the line is done in every round.
 */
export function checkJoinsRounds(entry: Entry): readonly Problem[] {
  const problems: Problem[] = [];
  const blocks = listBlocks(entry);
  for (let index = 0; index < blocks.length; index++) {
    const block = blocks[index]!;
    if (block.implicit || !BLOCK_KINDS[block.kind].inRounds || block.rounds === undefined) continue;
    const [first] = block.lines;
    const joining = block.lines.find(
      (line) => isOutdented(line, first!, block) || isBehindTimes(line, first!, block),
    );
    if (!joining || joining.label) continue;
    const name = joining.name.text;
    const letter = nextLetter(block, blocks[index + 1]);
    const title = letter === undefined ? 'straight' : `${letter} straight`;
    const found = problem(
      'joins-rounds',
      joining.name.span,
      `${name} counts in each of the ${block.rounds} rounds above: write a line such as ${title} before it, or ${isOutdented(joining, first!, block) ? 'indent it like the others' : 'put it above the times'}`,
      [beginBlock(joining.span, block.span, title)],
    );
    problems.push(found);
  }
  return problems;
}

function isOutdented(line: MovementLine, first: MovementLine, block: Block): boolean {
  return line.span.start <= block.span.start && first.span.start > block.span.start;
}

function isBehindTimes(line: MovementLine, first: MovementLine, { timesSpan: times }: Block): boolean {
  return times !== undefined && first.span.line < times.line && times.line < line.span.line;
}

/** The letter after the block's, unless the next block has it. */
function nextLetter({ letter }: Block, next: Block | undefined): string | undefined {
  if (letter === undefined || letter.toUpperCase() === 'Z') return undefined;
  const following = String.fromCharCode(letter.charCodeAt(0) + 1);
  return next?.letter?.toUpperCase() === following.toUpperCase() ? undefined : following;
}

function beginBlock({ line }: Span, block: Span, title: string): Fix {
  const start = { line, start: 0, end: 0 };
  return {
    title: `Begin ${title} here`,
    edits: [{ span: start, newText: `${' '.repeat(block.start)}${title}\n` }],
  };
}
