import { CHECKS } from '../checks/catalogue.ts';
import { findComment } from '../syntax/scanned-token.ts';
import type { Offer, Offers } from './item.ts';
import type { Spot } from './spot.ts';

/** Codes of checks may follow, separated by commas. */
const IGNORE = /^#\s*ignore\s+(?:[\w-]+\s*,\s*)*([\w-]*)$/i;

/** Behind `# ignore`: what may be silenced. An error leaves something out of the numbers, so none is offered. */
export function completeIgnoredCode({ before, column, line }: Spot): Offers | undefined {
  const comment = findComment(before);
  const typed = IGNORE.exec(before.slice(comment))?.[1];
  if (typed === undefined || !/^[\w-]*\s*(?:,|$)/.test(line.slice(column))) return undefined;
  const said = new Set(before.slice(comment, column - typed.length).match(/[\w-]+/g));
  const offers = Object.entries(CHECKS)
    .filter(([code, { severity }]) => severity !== 'error' && !said.has(code))
    .map(([code, { why }]): Offer => ({ label: code, kind: 'value', help: why }));
  return {
    start: column - typed.length,
    end: column + /^[\w-]*/.exec(line.slice(column))![0].length,
    offers,
  };
}
