import type { SessionWorks } from '../measures/session-work.ts';
import { findComment } from '../syntax/scanned-token.ts';
import { completeBlock } from './block-headers.ts';
import { completeIgnoredCode } from './ignore-codes.ts';
import { type CompletionItem, type Offers, toItems } from './item.ts';
import { completeLineStart } from './line-starts.ts';
import { completeProperty } from './properties.ts';
import { completeSessionHeader } from './session-headers.ts';
import { completeSets } from './sets.ts';
import { type CompletionOptions, findSpot, type Spot } from './spot.ts';

/**
 * What may stand at a line and UTF-16 column of a file, both from 0, the most likely first.
 *
 * What is asked for is told by the scanner's tokens before the cursor and by the facts of the entry; nothing is parsed.
 * The grammar's own completion parser was tried: it takes 0.6 ms for a header and one line where the scanner takes
 * 0.01 ms, and since a line without its colon is a stray one to the grammar, it can tell neither the names that are
 * wanted most nor which values of a word make sense. The tests read every accepted line by the grammar instead.
 */
export function complete(
  works: SessionWorks,
  uri: string,
  line: number,
  column: number,
  options: CompletionOptions,
): readonly CompletionItem[] {
  const spot = findSpot(works, uri, line, column, options);
  const offers = completeIgnoredCode(spot) ?? (isText(spot) ? undefined : findOffers(spot));
  // Right before a comment nothing can be set without running into it.
  return offers && spot.line[offers.end] !== '#'
    ? toItems(offers, spot.line.slice(offers.start, spot.column))
    : [];
}

/** In comments, notes and free text a coach writes what she likes. */
function isText({ before, kind, typing, tokens }: Spot): boolean {
  if (kind.kind === 'note' || (kind.kind !== 'property' && findComment(before) < before.length)) return true;
  const last = typing ?? tokens.at(-1);
  return last?.kind === 'COMMENT' || (kind.kind === 'property' && last?.kind === 'TEXT');
}

function findOffers(spot: Spot): Offers | undefined {
  const { kind, before, column } = spot;
  const isInWord = !/[\s:]/.test(before.at(-1) ?? ' ');
  switch (kind.kind) {
    case 'header':
      if (isInWord && kind.rest >= column) return completeLineStart(spot);
      if (kind.word === 'session') return completeSessionHeader(spot);
      return kind.word === 'units' ? completeUnits(spot) : undefined;
    case 'movement':
      return column > kind.colon ? completeSets(spot) : completeLineStart(spot);
    case 'property':
      return isInWord && kind.rest >= column ? completeLineStart(spot) : completeProperty(spot, kind.word);
    case 'block':
      // `warmup ` may go on with the name of a movement.
      if (/^\s*(?:warm-?up)\s+$/i.test(before) || (isInWord && kind.rest >= column))
        return completeLineStart(spot);
      return completeBlock(spot);
    default:
      return completeLineStart(spot);
  }
}

function completeUnits({ column, line }: Spot): Offers | undefined {
  if (line.slice(column).trim() !== '') return undefined;
  const start = column - /[\p{L}]*$/u.exec(line.slice(0, column))![0].length;
  return {
    start,
    end: column,
    offers: [
      { label: 'kg', kind: 'unit' },
      { label: 'lb', kind: 'unit' },
    ],
  };
}
