import { countRounds } from '../measures/expand-sets.ts';
import { findChunk } from './entry-chunks.ts';
import { findBlock, findHeader, indentationOf, insertBelow, linesOf } from './find-lines.ts';
import { type Rewriter, rewriteFile } from './rewrite.ts';

const TIMED_KINDS: ReadonlySet<string> = new Set(['circuit', 'superset', 'giant set']);

/** `time ?, ?, ?` below a circuit that has none: a place for each round's time. */
export const addTimes: Rewriter = (request) => {
  const at = findBlock(request);
  const rounds = at && countRounds(at.block);
  if (!at || !rounds || !TIMED_KINDS.has(at.block.kind) || at.block.implicit) return undefined;
  if (at.placed.entry.kind !== 'session' || at.block.timesSpan || at.block.lines.length === 0)
    return undefined;
  const texts = linesOf(request);
  const indentation = `${indentationOf(texts[at.row]!)}  `;
  const line = `${indentation}time ${Array(rounds).fill('?').join(', ')}`;
  return rewriteFile(request, 'Add a time for each round', [insertBelow(texts, at.lastRow, [line])]);
};

/** `effort ?` and `lasted ?` at the end of a session, where they are missing. */
export const addEffort: Rewriter = (request) => {
  const placed = findHeader(request, 'session');
  if (!placed || placed.entry.missed) return undefined;
  const { efforts, lasted } = placed.entry;
  const words = [...(efforts ? [] : ['effort']), ...(lasted ? [] : ['lasted'])];
  if (words.length === 0) return undefined;
  const texts = linesOf(request);
  const { to } = findChunk(texts, placed);
  return rewriteFile(request, `Add ${words.join(' and ')}`, [
    insertBelow(
      texts,
      to - 1,
      words.map((word) => `  ${word} ?`),
    ),
  ]);
};
