import type { MassUnit } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { printDay } from '../summaries/words.ts';
import type { ScannedToken } from '../syntax/scanned-token.ts';
import { type DoneLine, findHistory, findLast, listLoads } from './history.ts';
import type { LoadWishes } from './loads.ts';
import { findPlannedDay, findPlannedLine, writePlanned } from './planned-line.ts';
import { findSpotPlace, listTrainees, type Spot, scanWhole, type Trainee } from './spot.ts';

/** A cursor behind the colon of a movement's line. */
export interface MovementSpot {
  readonly movement: Movement | undefined;
  /** Whose cell the cursor is in; in a plan its first athlete. */
  readonly trainee: Trainee | undefined;
  /** Tokens of the whole line behind the colon, without comment. */
  readonly whole: readonly ScannedToken[];
  /** Complete tokens between the last comma or bar (or the colon) and the cursor. */
  readonly item: readonly ScannedToken[];
  readonly typing: ScannedToken | undefined;
  /** Whether nothing stands in the cell before the item. */
  readonly isCellStart: boolean;
  /** Column behind the colon or bar. */
  readonly cellStart: number;
  /** What is known of the movement, looked up when an offer needs it: a planned load may rest on years. */
  readonly facts: () => MovementFacts;
}

interface MovementFacts {
  readonly last: DoneLine | undefined;
  readonly planned: ReturnType<typeof writePlanned>;
  readonly wishes: LoadWishes;
}

export function readMovementSpot(spot: Spot): MovementSpot {
  const colon = spot.kind.kind === 'movement' ? spot.kind.colon : 0;
  const name = spot.tokens.find(({ kind }) => kind === 'NAME');
  const text = name ? spot.line.slice(name.start, name.end) : '';
  const behind = spot.tokens.filter(({ start }) => start > colon);
  const bars = behind.filter(({ keyword }) => keyword === '|');
  const lastBar = bars.at(-1);
  const separator = behind.findLastIndex(({ keyword }) => keyword === ',' || keyword === '|');
  const whole = scanWhole(spot).tokens.filter(({ start, kind }) => start > colon && kind !== 'COMMENT');
  const cellStart = lastBar?.end ?? colon + 1;
  const isPlan = spot.context === 'plan';
  const trainees = listTrainees(spot);
  const trainee = isPlan || trainees.length === 1 ? trainees[0] : trainees[bars.length];
  const setNumber = behind.filter(({ start, keyword }) => start >= cellStart && keyword === ',').length;
  let facts: MovementFacts | undefined;
  return {
    movement: spot.practice.findMovement(text),
    trainee,
    whole,
    item: behind.slice(separator + 1),
    typing: spot.typing,
    isCellStart: !behind
      .slice(0, separator + 1)
      .some(({ start, keyword }) => start >= cellStart && keyword !== '|'),
    cellStart,
    facts() {
      facts ??= lookUp(spot, text, trainee, { setNumber, unit: findUnit(spot, whole) });
      return facts;
    },
  };
}

function lookUp(
  spot: Spot,
  name: string,
  trainee: Trainee | undefined,
  { setNumber, unit }: { readonly setNumber: number; readonly unit: MassUnit | undefined },
): MovementFacts {
  const { practice } = spot;
  const preparing = isPreparing(spot);
  const key = practice.keyOf(name);
  const last = trainee && findLast(findHistory(practice, trainee), key, preparing);
  const day = findPlannedDay(spot);
  const line = findPlannedLine(spot, day, key, preparing);
  const planned = trainee && day && line && writePlanned(spot, trainee, day, line);
  return {
    last,
    planned,
    wishes: {
      movement: practice.findMovement(name),
      place: findSpotPlace(spot),
      last: last ? turnTo(listLoads(last.cell), setNumber) : [],
      lastDay: last && printDay(last.record.date, trainee?.date ?? spot.options.today),
      planned: planned ? turnTo(listLoads(planned), setNumber) : [],
      unit,
      typed: undefined,
    },
  };
}

/** The load at that place first, then the others: the third set is likely to weigh what the third weighed. */
function turnTo<T>(loads: readonly T[], index: number): T[] {
  const at = Math.min(index, loads.length - 1);
  return loads.length === 0 ? [] : [loads[at]!, ...loads.filter((_load, other) => other !== at)];
}

/** Whether the line's sets are a preparation, by its prefix or its block. */
export function isPreparing({ tokens, line, block, kind }: Spot): boolean {
  const word = tokens.find((token) => token.kind === 'PREFIX' || token.keyword === 'warmup');
  const isPrefixed =
    (kind.kind === 'movement' || kind.kind === 'stray') &&
    word !== undefined &&
    /^warm/i.test(line.slice(word.start, word.end));
  return isPrefixed || block?.kind === 'warmup' || block?.kind === 'cooldown';
}

/** The unit that the line's other weights have. */
function findUnit(spot: Spot, whole: readonly ScannedToken[]): MassUnit | undefined {
  const at = whole.findLastIndex(({ start, keyword }) => start < spot.column && keyword === '@');
  const stop = whole.findIndex(({ keyword }, index) => index > at && (keyword === ',' || keyword === '|'));
  const others = [...whole.slice(0, Math.max(at, 0)), ...(stop < 0 ? [] : whole.slice(stop))];
  return others.find(({ keyword }) => keyword === 'kg' || keyword === 'lb')?.keyword as MassUnit | undefined;
}

/** Tokens that end a load. */
const LOAD_ENDS: ReadonlySet<string> = new Set([
  'kg',
  'lb',
  '%',
  'bw',
  'band',
  'right',
  'cm',
  'w',
  '?',
  'chain',
]);

/** Whether what stands behind an `@` is a whole load, ratings behind it included. */
export function isLoadComplete(load: readonly ScannedToken[]): boolean {
  if (load.length === 0) return false;
  const isRated = load.some(
    ({ keyword }, index) => index > 0 && ['rpe', 'rir', 'hr', 'v'].includes(keyword ?? ''),
  );
  if (isRated) return true;
  if (load.some(({ keyword }) => keyword === 'left')) return load.at(-1)!.keyword === 'right';
  const [first, second] = load;
  const ending = load.at(-1)!;
  // `@ rpe 8`, `@ pin 7`, `@ 2:05/500 m`, `@ 9 km/h`
  if (['rpe', 'rir', 'pin'].includes(first?.keyword ?? '')) return second?.kind === 'NUMBER';
  if (load.some(({ keyword }) => keyword === '/')) return ['m', 'h'].includes(ending.keyword ?? '');
  return ending.kind === 'NAME' || LOAD_ENDS.has(ending.keyword ?? '');
}
