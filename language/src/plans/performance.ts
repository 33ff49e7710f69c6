/** What an athlete really did of a plan's line, session by session, and what the plan had asked for. */

import { fromDayNumber } from '../calendar/iso-date.ts';
import { CHECKS } from '../checks/catalogue.ts';
import { isWorking } from '../measures/block-work.ts';
import { expandBlock, findCell } from '../measures/expand-sets.ts';
import { findSeriesKey, readExternal } from '../measures/series-sets.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { Amount, Load, Measure } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import { printLoad } from '../printing/print-load.ts';
import { printModifier } from '../printing/print-modifiers.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { foldName } from '../text/names.ts';
import type { LineContext, PlannedTurn } from './line-context.ts';
import { findDaysOfLine, isSameLine } from './line-steps.ts';
import { findDeload, findTurn } from './plan-calendar.ts';
import { takeTurn } from './week-blocks.ts';

/** Of 10, as the check has it. */
const MODERATE_PAIN = CHECKS['caution-pain'].numbers.score;

export interface PerformedSet {
  readonly measure: Measure;
  /** Of one side; the fewer where the sides differ. Reps made, of a set that failed. */
  readonly amount: number;
  /** Of one implement, or added to the body; undefined where no one mass is written. */
  readonly grams: number | undefined;
  readonly load: Load | undefined;
}

/** What a line asks for in a week: the amount of its first set, and how many sets. */
export interface Asked {
  readonly amount: Amount | undefined;
  readonly sets: number;
}

export interface Performance {
  readonly record: SessionRecord;
  readonly sets: readonly PerformedSet[];
  /** `pain 5 left elbow`, from where it counts as moderate. */
  readonly pain?: string;
  /** Undefined where the session does not say which week of the plan it was. */
  readonly asked?: Asked;
}

/**
 * The working sets of a line's movement in earlier sessions of the plan, oldest first: those that name its day or another
 * with the very same line, and those since the plan began that name none. Deloads, tests and weeks in which another line
 * took its place say nothing about progress.
 */
export function listPerformances(
  { works, athlete, day, of }: LineContext,
  line: MovementLine,
): Performance[] {
  const { practice } = works;
  const toKey = (written: string): string => findSeriesKey(practice, written);
  const key = toKey(line.name.text);
  return practice.sessionsWith(athlete, key).flatMap((record): Performance[] => {
    if (record.day >= day || record.entry.missed || !belongs(record, of, line)) return [];
    const asked = findAsked(record, of, line, toKey);
    if (asked === 'another line') return [];
    const sets = record.entry.blocks.flatMap((block) =>
      expandBlock(block, record.index)
        .filter(
          (set) => isWorking(set, block) && set.line.purpose === 'work' && toKey(set.line.name.text) === key,
        )
        .flatMap(({ amount, group, line: { name } }): PerformedSet[] => {
          const done = amount && readAmount(amount);
          const grams = readExternal(group.load, practice.findMovement(name.text));
          return done ? [{ ...done, grams, load: group.load }] : [];
        }),
    );
    const pain = findPain(record, (name) => toKey(name) === key);
    return sets.length > 0 ? [{ record, sets, ...(pain && { pain }), ...(asked && { asked }) }] : [];
  });
}

/** The worst that was noted with a movement. */
function findPain({ entry, index }: SessionRecord, isMeant: (name: string) => boolean): string | undefined {
  const lines = entry.blocks.flatMap((block) => block.lines).filter(({ name }) => isMeant(name.text));
  const pains = lines
    .flatMap((line) => [...(findCell(line, index)?.modifiers ?? []), ...line.modifiers])
    .filter((modifier) => modifier.kind === 'pain')
    .filter(({ score }) => score >= MODERATE_PAIN)
    .toSorted((a, b) => b.score - a.score);
  return pains[0] && printModifier(pains[0]);
}

function belongs(
  { entry, day }: SessionRecord,
  { plan, course, turn }: PlannedTurn,
  line: MovementLine,
): boolean {
  if (!entry.plan) return course.start === undefined || day >= course.start;
  if (foldName(entry.plan.name.text) !== plan.key) return false;
  const numbers = [turn.day, ...findDaysOfLine(plan.entry, line)].map(({ number }) => number);
  const isOtherDay = entry.plan.day !== undefined && !numbers.includes(entry.plan.day);
  return !isOtherDay && (entry.plan.week === undefined || !findDeload(plan.entry, entry.plan.week));
}

function findAsked(
  { entry }: SessionRecord,
  { plan, course, turn }: PlannedTurn,
  line: MovementLine,
  toKey: (name: string) => string,
): Asked | 'another line' | undefined {
  const week = entry.plan?.week;
  const day = plan.entry.days.find(({ number }) => number === (entry.plan?.day ?? turn.day.number));
  if (week === undefined || !day) return undefined;
  for (const { block, lines } of takeTurn(plan.entry, findTurn(plan.entry, week, day, course.start), toKey)) {
    const found = lines.find(({ source }) => isSameLine(source, line))?.line;
    if (found) return { amount: found.cells[0]?.sets[0]?.amount, sets: countSets(block, found) };
  }
  return 'another line';
}

/** Sets that a line of a block comes to: rounds and turns make them more or fewer than it writes. */
export function countSets(block: Block, line: MovementLine): number {
  return expandBlock(block).filter((set) => set.line.span.line === line.span.line).length;
}

/** `8 left 7 right` → 7; a set that was not recorded says nothing. */
function readAmount(amount: Amount): Pick<PerformedSet, 'measure' | 'amount'> | undefined {
  switch (amount.kind) {
    case 'quantity':
      return { measure: amount.quantity.measure, amount: amount.quantity.value };
    case 'sides':
      return { measure: amount.left.measure, amount: Math.min(amount.left.value, amount.right.value) };
    case 'attempt':
      return { measure: 'reps', amount: amount.made };
    default:
      return undefined;
  }
}

/** The heaviest load that all of a session's sets have in common: the lightest of them. */
export function loadOf({ sets }: Performance): number | undefined {
  const known = sets.flatMap(({ grams }) => grams ?? []);
  return known.length === sets.length ? Math.min(...known) : undefined;
}

/** Whether as many sets as were asked for all got to what was asked; `now` counts where nobody knows what was asked then. */
export function hasMade({ sets, asked }: Performance, now: Asked): boolean {
  const goal = readGoal(asked?.amount) ?? readGoal(now.amount);
  const count = asked?.sets ?? now.sets;
  return goal !== undefined && sets.length >= count && sets.every(({ amount }) => amount >= goal);
}

/** Of a range its top. */
function readGoal(amount: Amount | undefined): number | undefined {
  switch (amount?.kind) {
    case 'quantity':
    case 'at-least':
      return amount.quantity.value;
    case 'range':
      return amount.high.value;
    default:
      return undefined;
  }
}

/** How many of the latest sessions in a row missed the goal, at no less than the load of the last. */
export function countMisses(performances: readonly Performance[], now: Asked): number {
  const last = performances.at(-1);
  const load = last && loadOf(last);
  if (load === undefined) return 0;
  let misses = 0;
  for (const performance of performances.toReversed()) {
    const lifted = loadOf(performance);
    if (hasMade(performance, now) || lifted === undefined || lifted < load) break;
    misses++;
  }
  return misses;
}

/**
 * The sessions in which a stall rule let the load fall, oldest first, and the misses since. Counting begins anew after each.
 */
export function findFalls(
  performances: readonly Performance[],
  misses: number,
  now: Asked,
): { readonly falls: readonly Performance[]; readonly since: number } {
  const falls: Performance[] = [];
  let start = 0;
  for (const [index, performance] of performances.entries()) {
    if (countMisses(performances.slice(start, index + 1), now) < misses) continue;
    falls.push(performance);
    start = index + 1;
  }
  return { falls, since: countMisses(performances.slice(start), now) };
}

/** `10, 9, 8 @ 2x22 kg on 2026-09-14`. */
export function printDone({ record, sets }: Performance, movement: Movement | undefined): string {
  const amounts = sets.map(({ measure, amount }) =>
    measure === 'reps'
      ? printPlain(amount)
      : `${printPlain(amount)} ${measure === 'seconds' ? 's' : measure === 'metres' ? 'm' : 'cal'}`,
  );
  const load = sets[0]?.load;
  const isOne = sets.every(({ grams }) => grams === sets[0]?.grams);
  const at = load && isOne && movement !== undefined ? ` @ ${printLoad(load)}` : '';
  const text =
    new Set(amounts).size === 1 && amounts.length > 1
      ? `${amounts.length}x${amounts[0]}`
      : amounts.join(', ');
  return `${text}${at} on ${fromDayNumber(record.day)}`;
}
