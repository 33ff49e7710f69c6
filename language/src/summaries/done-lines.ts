/** What was done of each line of a plan's day, in words and in rows. */
import { computeAdherence } from '../measures/adherence.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import { computePercentOf } from '../measures/quotients.ts';
import { type Input, type Result, toResult } from '../measures/result.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { compareDone, type DoneBlock, type DoneLine, type Sums } from '../plans/done-work.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber, printRange } from '../units/number.ts';
import { readReps } from './done-totals.ts';
import { count } from './words.ts';

type Read = (sums: Sums) => number | undefined;

/** Block by block what was done otherwise than planned; a block that was done as planned is not there. */
export function describeDoneBlocks(
  works: SessionWorks,
  record: SessionRecord,
  unit: MassUnit,
  formula: OneRepMaxFormula,
): { readonly of: string; readonly text: string; readonly results: readonly Result[] }[] {
  if (record.entry.missed) return [];
  const adherence = computeAdherence(works, record);
  const added = adherence?.added.map(({ name, sets }) => `${name} ${count(sets, 'set')}`) ?? [];
  const blocks = (compareDone(works, record, formula) ?? []).flatMap(({ block, lines }) => {
    const changed = lines.flatMap((line) => {
      const text = describeLine(line, unit);
      return text ? [{ line, text }] : [];
    });
    if (changed.length === 0) return [];
    const name = [block.letter, block.kind].filter((part) => part !== undefined).join(' ');
    const text = changed.map((each) => each.text).join(' · ');
    return [{ of: `plan ${name}`, text, results: changed.map(({ line }) => toLineResult(line)) }];
  });
  return added.length > 0 ? [...blocks, { of: 'not planned', text: added.join(' · '), results: [] }] : blocks;
}

/** `Back Squat 4 of 5 sets, 12 of 15 reps, 720 of 900 kg`; nothing where it was done as planned. */
function describeLine(
  { name, isTest, asked, done, instead, pain }: DoneLine,
  unit: MassUnit,
): string | undefined {
  const why = pain === undefined ? [] : [pain];
  if (done.sets === 0) return [`${name} left out`, ...why].join(', ');
  // A max is found by as many attempts as it takes.
  const sums = isTest
    ? []
    : [
        compare(asked, done, ({ sets }) => sets, 'sets'),
        compare(asked, done, readReps, 'reps'),
        compare(asked, done, readKilograms(unit), unit),
      ];
  const parts = [
    instead.length > 0 ? `${instead.join(' and ')} instead` : undefined,
    ...sums,
    compare(asked, done, readHeaviest(unit), `${unit} at the heaviest`, 2),
  ].filter((part) => part !== undefined);
  return parts.length > 0 ? `${name} ${[...parts, ...why].join(', ')}` : undefined;
}

function readKilograms(unit: MassUnit): Read {
  return ({ kilograms }) => (kilograms === undefined ? undefined : fromGrams(kilograms * 1000, unit));
}

function readHeaviest(unit: MassUnit): Read {
  return ({ grams }) => (grams === undefined ? undefined : fromGrams(grams, unit));
}

/** `12 of 15 reps`; nothing within what was asked, or where a side is not known. */
function compare(
  { low, high }: DoneLine['asked'],
  done: Sums,
  read: Read,
  unit: string,
  decimals = 0,
): string | undefined {
  const [least, most, is] = [read(low), read(high), read(done)];
  if (least === undefined || most === undefined || is === undefined) return undefined;
  const print = (value: number): string => printNumber(value, decimals);
  if ((is >= least && is <= most) || print(is) === print(least) || print(is) === print(most))
    return undefined;
  return `${print(is)} of ${printRange(least, most, decimals)} ${unit}`;
}

function toLineResult({ name, asked: { low }, done }: DoneLine): Result {
  const both = (what: string, read: Read, unit: 'sets' | 'reps' | 'kg'): Input[] =>
    (['done', 'planned'] as const).flatMap((side) => {
      const value = read(side === 'done' ? done : low);
      return value === undefined ? [] : [{ label: `${what} ${side}`, value, unit }];
    });
  return toResult({
    value: computePercentOf(done.sets, low.sets),
    unit: '%',
    method: 'adherence',
    inputs: [
      ...both(`working sets of ${name}`, ({ sets }) => sets, 'sets'),
      ...both('reps', readReps, 'reps'),
      ...both('volume', ({ kilograms }) => kilograms, 'kg'),
      ...both('heaviest load', ({ grams }) => (grams === undefined ? undefined : grams / 1000), 'kg'),
    ],
  });
}

/** `[name, sets, reps, kilograms, heaviest load]`, each as `done of planned`, for all lines of the day. */
export function tabulateDone(blocks: readonly DoneBlock[], unit: MassUnit): string[][] {
  return blocks.flatMap(({ lines }) =>
    lines.map(({ name, asked: { low, high }, done, instead }) => {
      const cell = (read: Read, decimals = 0): string => {
        const [least, most, is] = [read(low), read(high), read(done)];
        if (!most && !is) return '';
        const shown = is === undefined ? '?' : printNumber(is, decimals);
        if (most === undefined) return is === undefined ? '' : shown;
        return `${shown} of ${printRange(least ?? most, most, decimals)}`;
      };
      return [
        instead.length > 0 ? `${name} (${instead.join(', ')})` : name,
        cell(({ sets }) => sets),
        cell(readReps),
        cell(readKilograms(unit)),
        done.sets > 0 ? cell(readHeaviest(unit), 2) : '',
      ];
    }),
  );
}
