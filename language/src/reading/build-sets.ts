import type { Amount, Cell, Drop, Modifier, Rating, SetGroup } from '../model/quantity.ts';
import type { Fix, Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { shorten } from '../text/shorten.ts';
import { LIMITS } from '../vocabulary/limits.ts';
import { buildAmount } from './build-amount.ts';
import { buildDuration } from './build-duration.ts';
import { buildLoad } from './build-load.ts';
import { reportLoadLists } from './build-load-list.ts';
import type { LineUnits } from './build-mass.ts';
import { buildModifier } from './build-modifier.ts';
import { isInPlan, lineOf, toQuantity } from './build-values.ts';
import { findItemSlip, moveToNote } from './item-slips.ts';
import {
  type EntryReading,
  type Holed,
  present,
  replaceBy,
  spanBetween,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';
import { shareLoads } from './share-loads.ts';

/** The sets and modifiers between two `|`. Sets before the first load share it; after that each writes its own. */
export function buildCell(reading: EntryReading, line: LineUnits, node: ast.Cell): Cell {
  const sets: SetGroup[] = [];
  const modifiers: Modifier[] = [];
  const loads = node.items.length > 1 ? reportLoadLists(reading, line, node.items) : undefined;
  for (const item of node.items) {
    if (!item.$cstNode) continue;
    if (item.$type === 'SetGroup') {
      const set = buildSet(reading, line, item);
      // A load that stands where the reps belong counts as neither.
      sets.push(loads?.has(item) ? { ...set, amount: undefined } : set);
    } else if (item.$type === 'UnknownItem') reportUnknownItem(reading, item);
    else {
      const modifier = buildModifier(reading, item);
      if (modifier) modifiers.push(modifier);
    }
  }
  return { sets: shareLoads(reading, sets), modifiers, span: spanOf(node) };
}

function reportUnknownItem(reading: EntryReading, node: ast.UnknownItem): void {
  const span = spanOf(node);
  const text = textOf(node);
  const { line, end } = lineOf(node);
  const slip = findItemSlip(line, isInPlan(node) ? 'plan' : 'session', span);
  if (slip) {
    reading.mend(slip.code, slip.span, slip.message, slip.fixes);
    return;
  }
  const message = `"${shorten(text)}" is no set and no tempo, rest, setting or pain: write it as a setting, or as a note on a line with >`;
  // What goes on in numbers was to be a set, and a sign or a letter alone is set nowhere.
  const isWords = /^\s*(?:[,|#]|$)/.test(line.slice(end)) && /\p{L}{2}/u.test(text);
  const note = isWords ? toNote(node, line, span) : undefined;
  reading.report('unknown-item', span, message, [
    ...(isWords ? [replaceBy(span, `setting ${text}`)] : []),
    ...(note ? [note] : []),
  ]);
}

/** Words at the end of a line are mostly a note; the comma before them goes with them. */
function toNote({ $cstNode: cst }: ast.UnknownItem, text: string, span: Span): Fix | undefined {
  const comma = /,\s*$/.exec(text.slice(0, span.start))?.index;
  if (comma === undefined || !/\p{L}{3}/u.test(cst!.text)) return undefined;
  return moveToNote(text, { ...span, start: comma }, cst!.text);
}

export function buildSet(reading: EntryReading, line: LineUnits, node: Holed<ast.SetGroup>): SetGroup {
  const span = spanOf(node);
  const written = present(node.amount);
  const amountSpan = written ? spanOf(written) : span;
  const count = node.count === undefined ? 1 : toNumber(node.count);
  const at = present(node.at);
  const writtenLoad = present(at?.load);
  const countFits =
    !isLoadByReps(reading, node, count) &&
    !isRepsByLoad(reading, node) &&
    reading.acceptWhole('sets', count, spanBetween(span, amountSpan), `${node.count ?? 1} sets`);
  const isTurned = reportTurned(reading, node);
  const amount = countFits && !isTurned && written ? buildAmount(reading, written) : undefined;
  const within = buildDuration(reading, node.within);
  const load = isTurned || !writtenLoad ? undefined : buildLoad(reading, line, writtenLoad);
  if (at && !writtenLoad)
    reading.expect('missing-load', spanOf(at), 'Expected a load such as 100 kg after @');
  if (node.isTimed && !node.within)
    reading.expect('missing-value', span, 'Expected a time after in, such as 400 m in 1:32');
  const ratings = [...node.ratings, ...(at?.ratings ?? [])].flatMap((rating) => buildRating(reading, rating));
  return {
    count: countFits ? count : 1,
    counted: node.count !== undefined,
    amount,
    load,
    ownLoad: load !== undefined,
    loadSpan: at && spanOf(writtenLoad ?? at),
    loadText: writtenLoad && textOf(writtenLoad),
    ratings,
    drops: node.drops.filter(present).map((drop) => buildDrop(reading, line, drop)),
    span,
    amountSpan,
    ...(within !== undefined && { within: toQuantity(within, 'clock') }),
  };
}

/** `225x5` without a load: more sets than anybody does, so the load stands first. */
function isLoadByReps(reading: EntryReading, node: Holed<ast.SetGroup>, count: number): boolean {
  const { amount } = node;
  if (count <= LIMITS.sets.high || node.at || amount?.$type !== 'Reps' || !amount.$cstNode) return false;
  const span = spanBetween(spanOf(node), spanOf(amount));
  const written = `${textOf(amount)} @ ${node.count}`;
  reading.report('reps-first', span, `Write ${written}: reps come before the load`, [
    replaceBy(span, written),
  ]);
  return true;
}

/** `5 x 60 kg`: an x where the @ stands. */
function isRepsByLoad(reading: EntryReading, node: Holed<ast.SetGroup>): boolean {
  const { amount } = node;
  if (node.count === undefined || node.at || amount?.$type !== 'LoadFirst' || !amount.$cstNode) return false;
  if (amount.reps !== undefined) return false;
  const span = spanBetween(spanOf(node), spanOf(amount));
  const written = `${node.count} @ ${textOf(amount)}`;
  reading.report('syntax', span, `Write ${written}: an @ stands before the load`, [replaceBy(span, written)]);
  return true;
}

/** `60 kg @ 5`: the load where the reps stand, and the reps where the load stands. */
function reportTurned(reading: EntryReading, node: Holed<ast.SetGroup>): boolean {
  const { amount, at } = node;
  if (node.count !== undefined || amount?.$type !== 'LoadFirst' || !amount.$cstNode) return false;
  const load = present(at?.load);
  if (amount.reps !== undefined || !load || !/^\d+(?:\s*[x×]\s*\d+)?$/i.test(textOf(load))) return false;
  const span = spanBetween(spanOf(node), spanOf(load));
  const written = `${textOf(load)} @ ${textOf(amount)}`;
  reading.report('reps-first', span, `Write ${written}: reps come before the load`, [
    replaceBy(span, written),
  ]);
  return true;
}

function buildDrop(reading: EntryReading, line: LineUnits, node: Holed<ast.Drop>): Drop {
  const span = spanOf(node);
  const written = present(node.amount);
  const amount: Amount = (written && buildAmount(reading, written)) ?? { kind: 'unrecorded' };
  const load = present(node.load) && buildLoad(reading, line, node.load!);
  if (!node.load) {
    reading.expect('missing-load', span, 'A drop writes its reps and its own load, such as drop 8 @ 14 kg');
  }
  return { amount, ...(load && { load }), span };
}

function buildRating(reading: EntryReading, node: Holed<ast.Rating>): Rating[] {
  if (!node.$cstNode || node.scale === undefined) return [];
  const span = spanOf(node);
  if (node.value === undefined) {
    reading.expect('missing-value', span, `Expected a number after ${node.scale}`);
    return [];
  }
  const value = toNumber(node.value);
  const high = node.high === undefined ? undefined : toNumber(node.high);
  if (node.scale === 'v' && !(node.distance?.toLowerCase() === 'm' && node.time?.toLowerCase() === 's')) {
    return (
      reading.expect('missing-unit', span, 'The speed of a bar is written in m/s, such as v 0.45 m/s') ?? []
    );
  }
  if (!reading.acceptRating(node.scale, value, high, span, textOf(node))) return [];
  return [{ scale: node.scale, value, ...(high !== undefined && { high }), span }];
}
