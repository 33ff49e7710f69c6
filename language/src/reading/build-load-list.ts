import type * as ast from '../syntax/generated/ast.ts';
import { MOST_LOADED_REPS } from '../vocabulary/limits.ts';
import type { LineUnits } from './build-mass.ts';
import { isInPlan, lineOf } from './build-values.ts';
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

type Item = ast.Cell['items'][number];

/** Loads of one list lie nearer to each other than that, heaviest to lightest (our choice). */
const WIDEST = 2.5;

/** One number of a list: what it is in the load's unit, and how it is written behind the @. */
interface ListedLoad {
  readonly value: number;
  readonly text: string;
  readonly hasUnit: boolean;
  /** Ratings and drops behind it. */
  readonly behind: string;
}

/** The load that opens a list. */
interface Head extends ListedLoad {
  /** Of `2x12 kg`. */
  readonly implements: string | undefined;
  /** How many were done with it; nothing where no reps are counted. */
  readonly reps: number;
}

/**
 * `5 @ 60, 65, 70 kg`: loads in a row behind the first one, for the same reps. A number with a unit of mass cannot be reps;
 * one without is a load where the numbers go on rising or falling up to one with a unit, or where no set of a list has so
 * many reps. `5 @ 60, 5 @ 65` and `5 @ 60 kg, 5, 5` are none. They are told, and none of them counts as reps: gives the items
 * in question.
 */
export function reportLoadLists(
  reading: EntryReading,
  line: LineUnits,
  items: readonly Item[],
): ReadonlySet<Item> {
  const listed = new Set<Item>();
  for (const [index, item] of items.entries()) {
    const head = readHead(item);
    // Sets before it would share its load: then the loads may belong to those.
    if (!head || !items.slice(0, index).every((before) => hasOwnLoad(before))) continue;
    const rest = items.slice(index + 1);
    const found = [splitHead(head), [head]]
      .map((heads) => ({ heads, run: takeRun(head, heads, rest) }))
      .find(({ heads, run }) => run.length > 0 && (heads.length === 1 || isSteady([...heads, ...run])));
    if (!found) continue;
    const { heads, run } = found;
    for (const each of rest.slice(0, run.length)) listed.add(each);
    report(reading, line, items, [index, index + run.length], [...heads, ...run]);
  }
  return listed;
}

function hasOwnLoad(item: Item): boolean {
  return item.$type !== 'SetGroup' || present((item as Holed<ast.SetGroup>).at?.load) !== undefined;
}

/** `5 @ 60`: one mass and nothing else behind the @. */
function readHead(item: Item): Head | undefined {
  if (item.$type !== 'SetGroup' || !item.$cstNode) return undefined;
  const { amount, at, drops } = item as Holed<ast.SetGroup>;
  const load = present(at?.load) as Holed<ast.Load> | undefined;
  if (load?.$type !== 'NumberLoad' || load.low === undefined || drops.length > 0) return undefined;
  const { high, other, percent, scale, speed, side, chain, band } = load;
  if ([high, other, scale, speed, side, chain].some((part) => part !== undefined)) return undefined;
  if (percent || band.length > 0) return undefined;
  const text = textOf(load);
  const behind = textOf(item).slice(spanOf(load).end - spanOf(item).start);
  return {
    value: toNumber(load.low),
    text,
    hasUnit: load.unit !== undefined,
    behind,
    implements: load.implements,
    reps: toNumber((amount && readNumber(amount)) ?? '0'),
  };
}

/** `60,65` before `,70 kg` is no number with a decimal comma, but two of the list. */
function splitHead(head: Head): readonly ListedLoad[] {
  const parts = /^(\d+),(\d\d)$/.exec(head.text)?.slice(1);
  return parts ? parts.map((text) => ({ value: Number(text), text, hasUnit: false, behind: '' })) : [head];
}

/** `65`, `65 kg`, `65 rpe 8`; behind `2x12` also `2x14`. */
function readListed(item: Item, head: Head): ListedLoad | undefined {
  if (item.$type !== 'SetGroup' || !item.$cstNode) return undefined;
  const { amount, count, at, isTimed } = item as Holed<ast.SetGroup>;
  if (!amount?.$cstNode || count !== head.implements || at || isTimed) return undefined;
  const value = readNumber(amount);
  if (value === undefined) return undefined;
  const text = textOf(item).slice(0, spanOf(amount).end - spanOf(item).start);
  return {
    value: toNumber(value),
    text,
    hasUnit: amount.$type === 'LoadFirst',
    behind: textOf(item).slice(text.length),
  };
}

function readNumber(amount: Holed<ast.Amount>): string | undefined {
  if (amount.$type === 'LoadFirst') return amount.reps === undefined ? amount.load : undefined;
  if (amount.$type !== 'Reps' || amount.right || amount.high || amount.open || amount.side) return undefined;
  return amount.low?.unit === undefined ? amount.low?.value : undefined;
}

/** The numbers behind the first that go on with its list. */
function takeRun(head: Head, heads: readonly ListedLoad[], items: readonly Item[]): ListedLoad[] {
  const run: ListedLoad[] = [];
  for (const item of items) {
    const listed = readListed(item, head);
    if (!listed) break;
    run.push(listed);
  }
  while (run.length > 0 && !isList(head, heads[0]!, [...heads.slice(1), ...run])) run.pop();
  return run;
}

function isList(head: Head, first: ListedLoad, run: readonly ListedLoad[]): boolean {
  const values = [first, ...run].map(({ value }) => value);
  if (Math.max(...values) > WIDEST * Math.min(...values)) return false;
  const isClosed = run.at(-1)!.hasUnit;
  // Two sets of 14, but for the unit at the end.
  if (head.implements !== undefined) return isClosed;
  const bare = run.filter(({ hasUnit }) => !hasUnit);
  if (bare.every(({ value }) => value > Math.max(MOST_LOADED_REPS, head.reps))) return true;
  return isClosed && isSteady([first, ...run]);
}

/** Whether loads only rise or only fall, as far as they change. */
function isSteady(loads: readonly ListedLoad[]): boolean {
  const steps = loads.slice(1).map(({ value }, at) => value - loads[at]!.value);
  return steps.every((step) => step >= 0) || steps.every((step) => step <= 0);
}

function report(
  reading: EntryReading,
  { units }: LineUnits,
  items: readonly Item[],
  [first, last]: readonly [first: number, last: number],
  loads: readonly ListedLoad[],
): void {
  const head = items[first] as Holed<ast.SetGroup>;
  const start = spanOf(head);
  const set = textOf(head).slice(0, spanOf(head.at!).start - start.start);
  const write = (separator: string, unit = ''): string =>
    loads
      .map(({ text, behind }) => `${set.trim()} @ ${text.replace(',', '.')}${unit}${behind}`)
      .join(separator);
  const isBare = units.size === 0 && reading.fileUnit === undefined;
  const texts = isBare ? [write(', ', ' kg'), write(', ', ' lb')] : [write(', ')];
  const isAll = items.filter(({ $type }) => $type === 'SetGroup').length === last - first + 1;
  const mayBeWeeks = isAll && isInPlan(head) && !lineOf(head).line.includes('|');
  // Nothing but its size says that the last of them is no count of reps.
  const mayBeReps = !loads.at(-1)!.hasUnit;
  if (!isBare && mayBeReps) texts.push(writeAsReps(textOf(head), loads));
  else if (!isBare && mayBeWeeks) texts.push(write(' | '));
  const question = mayBeReps ? 'loads, or reps with the first one' : 'sets, or the weeks';
  const message =
    isBare || texts.length === 1
      ? `A load stands behind its own set: write ${texts[0]}`
      : `Are these ${question}? Write ${texts[0]} or ${texts[1]}`;
  const span = spanBetween(start, spanOf(items[last]!));
  reading.mend(
    'sets-spelled-apart',
    span,
    message,
    texts.map((text) => replaceBy(span, text)),
  );
}

/** `20 @ 24 kg, 35, 40`: the same load for all, each with its own reps. */
function writeAsReps(set: string, [head, ...run]: readonly ListedLoad[]): string {
  return [set, ...run.map(({ text, behind }) => `${text} @ ${head!.text}${behind}`)].join(', ');
}
