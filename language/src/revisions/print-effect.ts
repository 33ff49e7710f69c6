/** What a revision of a plan costs, in words: `+6 sets, +420 kg a week, +4 min a day`. */
import type { Result } from '../measures/result.ts';
import { fromGrams } from '../units/mass.ts';
import { printNumber, printSigned } from '../units/number.ts';
import type { PlanEffect, PlanWeek, SessionEffect } from './revision.ts';

/** Nothing where the sums are the same in every week. Weeks that one version alone has are told apart from the others. */
export function printEffect(effect: PlanEffect): string {
  return [printWeeks(effect), printMeans(effect)].filter((text) => text !== '').join('; ');
}

/** What is said where there is nothing to say: of weeks that do differ a little, it is not that they are the same. */
export function printNoEffect({ sets, volume, time, intensity }: PlanEffect): string {
  const differs = [sets, volume, time, intensity].some(
    (result) => result && (result.value !== 0 || result.spread !== undefined),
  );
  return differs ? 'the sums of each week are nearly the same' : 'the sums of each week are the same';
}

/** `1 week less: -39 sets, -8 877 kg in all`. */
function printWeeks({ weeks, unit }: PlanEffect): string {
  const [gone, come] = [weeks.filter(({ after }) => !after), weeks.filter(({ before }) => !before)];
  // A plan that is new or gone has no others.
  const isWhole = gone.length === weeks.length || come.length === weeks.length;
  const changed = gone.length > 0 ? gone : come;
  if (isWhole || changed.length === 0) return '';
  const sign = gone.length > 0 ? -1 : 1;
  const all = changed.flatMap(({ before, after }) => before ?? after ?? []);
  const kilograms = all.map((week) => week.kilograms);
  const sum = kilograms.reduce<number | undefined>(
    (total, each) => (total === undefined || each === undefined ? undefined : total + each),
    0,
  );
  const sets = all.reduce((total, week) => total + week.sets, 0);
  const parts = [
    `${printSigned(sign * sets)} sets`,
    ...(sum === undefined ? [] : [`${printSigned(sign * fromGrams(sum * 1000, unit))} ${unit}`]),
  ];
  return `${changed.length} ${changed.length === 1 ? 'week' : 'weeks'} ${sign < 0 ? 'less' : 'more'}: ${parts.join(', ')} in all`;
}

function printMeans(effect: PlanEffect): string {
  const { sets, volume, time, intensity } = effect;
  const hasSpread = [sets, volume, time].some((result) => result?.spread);
  const ofWeek = printSums(effect);
  return [
    ofWeek ? `${ofWeek} a week${hasSpread ? ' on average' : ''}${printKnown(effect)}` : undefined,
    suffix(
      printDifference(time, (value) => printSigned(value / 60), ' min'),
      ' a day',
    ),
    printDifference(intensity, (value) => printSigned(value, 1), ' % of max'),
  ]
    .filter((text) => text !== undefined)
    .join(', ');
}

/** `+1 set, +300 kg`; nothing where both sums are the same. */
export function printSessionEffect(effect: SessionEffect): string {
  const sums = printSums(effect);
  return sums ? `${sums}${printKnown(effect)}` : '';
}

function printSums({ sets, volume, unit }: SessionEffect): string {
  return [
    printDifference(
      sets,
      (value) => printSigned(value, 1),
      Math.abs(sets.value ?? 0) === 1 ? ' set' : ' sets',
    ),
    printDifference(volume, (value) => printSigned(fromGrams(value * 1000, unit)), ` ${unit}`),
  ]
    .filter((text) => text !== undefined)
    .join(', ');
}

function printKnown({ volume }: SessionEffect): string {
  return volume && volume.omitted.length > 0 ? ' where loads are known' : '';
}

/** `hard sets a week: glutes +3, quadriceps +1.5`. */
export function printMuscleEffect({ muscles }: PlanEffect): string {
  const shown = muscles.flatMap(({ name, result }) => {
    const text = printSigned(result.value ?? 0, 1);
    return text === '0' ? [] : [`${name} ${text}`];
  });
  return shown.length > 0 ? `hard sets a week: ${shown.join(', ')}` : '';
}

/** One row for each week that changes: its number, sets, kilograms, minutes a day. Equal sides are written once. */
export function tabulateEffect({ weeks, unit }: PlanEffect): string[][] {
  const columns: readonly ((week: PlanWeek) => string)[] = [
    ({ sets }) => printNumber(sets),
    ({ kilograms }) => (kilograms === undefined ? '?' : printNumber(fromGrams(kilograms * 1000, unit))),
    ({ secondsADay }) => (secondsADay === undefined ? '?' : printNumber(secondsADay / 60)),
  ];
  return weeks.flatMap(({ week, before, after }) => {
    const cells = columns.map((print) => {
      const [was, is] = [before ? print(before) : '-', after ? print(after) : '-'];
      return was === is ? is : `${was} → ${is}`;
    });
    return cells.some((cell) => cell.includes('→')) ? [[printNumber(week), ...cells]] : [];
  });
}

/** Where a plan is for several, each table says whose it is. */
export function headEffect({ unit, athlete }: PlanEffect, isOneOfSeveral: boolean): string[] {
  return [isOneOfSeveral ? `week, ${athlete}` : 'week', 'sets', unit, 'min a day'];
}

/** A change that rounds to nothing is none. */
function printDifference(
  result: Result | undefined,
  print: (value: number) => string,
  unit: string,
): string | undefined {
  if (result?.value === undefined) return undefined;
  const text = print(result.value);
  return text === '0' ? undefined : `${text}${unit}`;
}

function suffix(text: string | undefined, end: string): string | undefined {
  return text === undefined ? undefined : `${text}${end}`;
}
