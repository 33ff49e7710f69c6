import type { Amount, Load, Measure } from '../model/quantity.ts';
import { toRatio } from './balance.ts';
import { isWorking } from './block-work.ts';
import type { Result, Unit } from './result.ts';
import { nameMovement } from './series-sets.ts';
import type { SessionWork } from './session-work.ts';
import { findBodyShare, measureAmount, type SetContext, weighLoad } from './set-work.ts';

/** What was done left and right of one movement, where that differs. */
export interface SideDifference {
  readonly key: string;
  readonly movement: string;
  /** Left over right: of reps (or seconds, metres), and of kilograms (or kilogram-metres) where there are any. */
  readonly amount: Result;
  readonly volume?: Result;
}

interface SideSums {
  readonly key: string;
  readonly movement: string;
  readonly measure: Measure;
  left: number;
  right: number;
  /** Grams times reps, or times metres. */
  leftVolume: number;
  rightVolume: number;
}

const UNITS: Readonly<Record<Measure, Unit>> = { reps: 'reps', seconds: 's', metres: 'm', calories: 'cal' };

/** Left to right of each movement of which, in all, one side did more than the other. */
export function compareSides(sessions: readonly SessionWork[]): SideDifference[] {
  const sums = new Map<string, SideSums>();
  for (const work of sessions) for (const side of work.blocks) addSides(sums, work, side);
  return [...sums.values()]
    .filter((sum) => differ(sum.left, sum.right) || differ(sum.leftVolume, sum.rightVolume))
    .map(({ key, movement, measure, left, right, leftVolume, rightVolume }) => ({
      key,
      movement,
      amount: toRatio('left-right', ['left', left], ['right', right], UNITS[measure]),
      ...((leftVolume > 0 || rightVolume > 0) && {
        volume: toRatio(
          'left-right',
          ['left', leftVolume / 1000],
          ['right', rightVolume / 1000],
          measure === 'metres' ? 'kg·m' : 'kg',
        ),
      }),
    }));
}

/** More than what the order of a sum does to doubles. */
const differ = (a: number, b: number): boolean => Math.abs(a - b) > 1e-6;

const NO_SIDES = { left: 0, right: 0, leftVolume: 0, rightVolume: 0 };

function addSides(
  sums: Map<string, SideSums>,
  { context }: SessionWork,
  { block, sets }: SessionWork['blocks'][number],
): void {
  for (const { set } of sets) {
    if (!isWorking(set, block)) continue;
    const movement = context.findMovement(set.line.name.text);
    const { key, name } = nameMovement(movement, set.line.name.text);
    const setContext: SetContext = { ...context, movement, blockKind: block.kind };
    for (const part of [{ amount: set.amount, load: set.group.load }, ...set.group.drops]) {
      const done = part.amount && isSided(part.amount, part.load) ? measureAmount(part.amount) : undefined;
      if (!done) continue;
      const { measure } = done.quantity;
      const id = `${key}\n${measure}`;
      const sum: SideSums = sums.get(id) ?? { key, movement: name, measure, ...NO_SIDES };
      sums.set(id, sum);
      const moved = weighSides(name, part.load, setContext);
      sum.left += done.left;
      sum.right += done.right;
      if (measure === 'reps' || measure === 'metres') {
        sum.leftVolume += moved.left * done.left;
        sum.rightVolume += moved.right * done.right;
      }
    }
  }
}

/** Only what was written for each side can be held against the other. */
function isSided(amount: Amount, load: Load | undefined): boolean {
  return amount.kind === 'sides' || load?.kind === 'sides' || ('perSide' in amount && amount.perSide);
}

/** Grams that a rep moves on each side, the share of the body included. */
function weighSides(
  name: string,
  load: Load | undefined,
  context: SetContext,
): { left: number; right: number } {
  const moved = load ? weighLoad(name, load, context) : { left: 0, right: 0, help: 0, helped: false };
  const share = findBodyShare(context);
  const body =
    share === undefined || context.bodyMass === undefined || moved.helped
      ? 0
      : Math.max(0, share * context.bodyMass - moved.help);
  return { left: moved.left + body, right: moved.right + body };
}
