/**
 * What a place can load. All masses are whole numbers of one unit, so that sums are exact: grams, or hundredths
 * of a pound where a place weighs in pounds. Grams made from pounds are off by up to half a gram each; for
 * those a tolerance says what still counts as the same load.
 */

export interface Rack {
  readonly bars: readonly number[];
  /** Both collars together; 0 where they do not count. */
  readonly collars: number;
  /** How many plates of each weight there are in all; an odd one stays on the floor. */
  readonly plates: readonly { readonly weight: number; readonly count: number }[];
}

export interface Loading {
  readonly total: number;
  readonly bar: number;
  /** Plates on one side, heaviest first; the other side is the same. */
  readonly perSide: readonly number[];
}

/** The candidates around a wanted load; `nearest` is one of the others, the upper one in a tie. */
export interface Nearest<T> {
  readonly nearest: T;
  /** Heaviest that is not above the wanted load; absent under the lightest. */
  readonly below?: T;
  /** Lightest that is not below it; absent beyond the heaviest. */
  readonly above?: T;
  readonly fit: 'exact' | 'rounded' | 'under the lightest' | 'beyond the heaviest';
}

/** A tolerance in grams above any rounding of pounds and below any plate. */
export const POUND_ROUNDING_GRAMS = 20;

/** Past this many combinations an inventory is no real one, and there is no answer. */
const MOST_STEPS = 2_000_000;

/** Plates on one side as a chain: each new plate points to those already on. */
interface Stack {
  readonly sum: number;
  readonly size: number;
  readonly weight: number;
  readonly rest?: Stack;
}

/**
 * 87.3 kg with a 20 kg bar and plates down to 1.25 kg → 87.5 kg, with what goes on each side. Never under the
 * empty bar. Of several ways to one total the fewest plates, the heaviest first, then the heavier bar. Undefined without a bar.
 */
export function findLoadable(target: number, rack: Rack, tolerance = 0): Nearest<Loading> | undefined {
  const best = new Map<number, Loading>();
  for (const bar of rack.bars) {
    const empty = bar + rack.collars;
    const stacks = stackPlates(rack.plates, Math.max(0, (target - empty) / 2));
    if (!stacks) {
      return undefined;
    }
    for (const stack of stacks.values()) {
      const loading = { total: empty + 2 * stack.sum, bar, perSide: listPlates(stack) };
      const other = best.get(loading.total);
      if (!other || isSimpler(loading, other)) {
        best.set(loading.total, loading);
      }
    }
  }
  return findNearest(target, [...best.values()], ({ total }) => total, tolerance);
}

/**
 * The sums of plates around a load that hangs without a bar, as from a belt: each plate by itself, none at all too. 8 kg
 * of two plates of 5 and one of 2.5 → 7.5 kg. Undefined without a plate.
 */
export function findHangable(
  target: number,
  plates: Rack['plates'],
  tolerance = 0,
): Nearest<number> | undefined {
  if (!plates.some(({ weight, count }) => weight > 0 && count > 0)) return undefined;
  const alone = plates.map(({ weight, count }) => ({ weight, count: 2 * count }));
  const stacks = stackPlates(alone, Math.max(0, target));
  return stacks && findNearestWeight(target, [...stacks.keys()], tolerance);
}

/** The plates for one side of exactly that load; undefined where the rack cannot make it. */
export function findPlatesPerSide(total: number, rack: Rack, tolerance = 0): readonly number[] | undefined {
  const found = findLoadable(total, rack, tolerance);
  return found?.fit === 'exact' ? found.nearest.perSide : undefined;
}

/** 4-32 by 2 → 4, 6, … 32: dumbbells or a stack. Undefined for a range or step that cannot be meant. */
export function listSteps(from: number, to: number, step: number): readonly number[] | undefined {
  const count = Math.floor((to - from) / step) + 1;
  const isMeant = step > 0 && count >= 1 && count <= 1000;
  return isMeant ? Array.from({ length: count }, (_, index) => from + index * step) : undefined;
}

/** The nearest of single weights, dumbbells or kettlebells, in any order: 13 of 8, 12, 14 → 14. */
export function findNearestWeight(
  target: number,
  weights: readonly number[],
  tolerance = 0,
): Nearest<number> | undefined {
  return findNearest(target, weights, (weight) => weight, tolerance);
}

function findNearest<T>(
  target: number,
  candidates: readonly T[],
  weigh: (candidate: T) => number,
  tolerance: number,
): Nearest<T> | undefined {
  const sorted = [...candidates].sort((first, second) => weigh(first) - weigh(second));
  const below = sorted.findLast((candidate) => weigh(candidate) <= target);
  const above = sorted.find((candidate) => weigh(candidate) >= target);
  if (below === undefined || above === undefined) {
    const only = below ?? above;
    if (only === undefined) {
      return undefined;
    }
    const isSame = Math.abs(weigh(only) - target) <= tolerance;
    const fit = isSame ? 'exact' : below === undefined ? 'under the lightest' : 'beyond the heaviest';
    return { nearest: only, below, above, fit };
  }
  const nearest = weigh(above) - target <= target - weigh(below) ? above : below;
  const fit = Math.abs(weigh(nearest) - target) <= tolerance ? 'exact' : 'rounded';
  return { nearest, below, above, fit };
}

/** Every sum of plates on one side up to the first past the goal, each with its fewest plates. */
function stackPlates(plates: Rack['plates'], goal: number): ReadonlyMap<number, Stack> | undefined {
  // Less than one more plate than needed: taking any plate off the lightest sum past the goal falls short of it.
  const limit = goal + Math.max(0, ...plates.map(({ weight }) => weight));
  const counts = new Map<number, number>();
  for (const { weight, count } of plates.filter((plate) => plate.weight > 0)) {
    counts.set(weight, (counts.get(weight) ?? 0) + count);
  }
  const heaviestFirst = [...counts].sort(([first], [second]) => second - first);
  let stacks = new Map<number, Stack>([[0, { sum: 0, size: 0, weight: 0 }]]);
  let steps = 0;
  for (const [weight, count] of heaviestFirst) {
    const next = new Map(stacks);
    for (const base of stacks.values()) {
      let stack = base;
      for (let pair = 1; pair <= Math.floor(count / 2) && stack.sum + weight <= limit; pair++) {
        stack = { sum: stack.sum + weight, size: stack.size + 1, weight, rest: stack };
        const other = next.get(stack.sum);
        if (!other || isBetter(stack, other)) {
          next.set(stack.sum, stack);
        }
        steps += 1;
        if (steps > MOST_STEPS) {
          return undefined;
        }
      }
    }
    stacks = next;
  }
  return stacks;
}

/** Fewer plates, or as many with the first that differs, from the heaviest on, the heavier. Both have one sum. */
function isBetter(stack: Stack, other: Stack): boolean {
  if (stack.size !== other.size) {
    return stack.size < other.size;
  }
  let difference = 0;
  for (let one: Stack = stack, two: Stack = other; one.rest && two.rest; one = one.rest, two = two.rest) {
    difference = one.weight - two.weight || difference;
  }
  return difference > 0;
}

function listPlates(stack: Stack): number[] {
  const plates: number[] = [];
  for (let top: Stack | undefined = stack; top?.rest; top = top.rest) {
    plates.push(top.weight);
  }
  return plates.reverse();
}

function isSimpler(loading: Loading, other: Loading): boolean {
  const difference = loading.perSide.length - other.perSide.length;
  return difference < 0 || (difference === 0 && loading.bar > other.bar);
}
