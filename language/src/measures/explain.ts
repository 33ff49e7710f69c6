/** Makes the explanation that hovers, reports and views share from any result. */
import { escapeMarkdown } from '../text/markdown.ts';
import { printNumber, printRange } from '../units/number.ts';
import { findMethod, type MethodId } from './methods.ts';
import type { Input, Result, Unit } from './result.ts';

/** An explanation in plain words, without markup; `lines` are `[heading, text]`. */
export interface Explanation {
  readonly title: string;
  readonly value: string;
  readonly lines: readonly (readonly [string, string])[];
}

/** `{ value: 102, unit: 'kg', … }` → title, `102 kg (98 to 105 kg)`, and what it is made from. */
export function describeResult(result: Result): Explanation {
  const method = findMethod(result.method);
  const lines: [string, string | undefined][] = [
    ['Formula', method.formula],
    ['What went in', join(result.inputs.map((input) => `${input.label} ${print(input.value, input.unit)}`))],
    ['Rests on', join(listMethods(result.inputs))],
    ['Left out', join(result.omitted.map((omission) => `${omission.what} (${omission.why})`))],
    ['Source', method.source],
    ['Note', method.note],
  ];
  return {
    title: method.title,
    value: printResult(result),
    lines: lines.filter((line): line is [string, string] => line[1] !== undefined),
  };
}

/** The methods of the numbers that went in, each once. */
function listMethods(inputs: readonly Input[]): string[] {
  const ids = new Set(inputs.map(({ by }) => by).filter((id): id is MethodId => id !== undefined));
  return [...ids].map((id) => {
    const { title, formula, source } = findMethod(id);
    return `${title}: ${formula} (${source})`;
  });
}

/** The explanation as Markdown; a coach's own words in it are escaped and can mark nothing up. */
export function explain(result: Result): string {
  const { title, value, lines } = describeResult(result);
  const items = lines.map(([heading, text]) => `- ${heading}: ${escapeMarkdown(text)}`);
  return [`**${escapeMarkdown(title)}: ${escapeMarkdown(value)}**`, '', ...items].join('\n');
}

/** The value alone: `at least 7 825 kg`, `102 kg (98 to 105 kg), rough, over 10 reps`, `none`. */
export function printResult({ value, unit, bound, spread, remark }: Result): string {
  if (value === undefined) {
    return remark ? `none, ${remark}` : 'none';
  }
  const lead = { exact: '', 'at least': 'at least ', prediction: 'about ', none: '' }[bound];
  const range = spread ? ` (${printRange(spread.low, spread.high, decimalsFor(unit))}${tail(unit)})` : '';
  return `${lead}${print(value, unit)}${range}${remark ? `, ${remark}` : ''}`;
}

function print(value: number, unit: Unit): string {
  const text = printNumber(value, decimalsFor(unit));
  // `1 rep`: what is counted stands in the plural, what is measured in a sign.
  return `${text}${text === '1' && COUNTED.has(unit) ? tail(unit).slice(0, -1) : tail(unit)}`;
}

const COUNTED: ReadonlySet<Unit> = new Set([
  'reps',
  'contacts',
  'sets',
  'rounds',
  'sessions',
  'days',
  'years',
]);

function tail(unit: Unit): string {
  return unit === '' ? '' : ` ${unit}`;
}

/** Enough decimals to check the sum by hand, no more than the facts carry. */
function decimalsFor(unit: Unit): number {
  return DECIMALS[unit] ?? 1;
}

const DECIMALS: Partial<Record<Unit, number>> = {
  '': 2,
  kg: 2,
  lb: 2,
  s: 0,
  reps: 1,
  contacts: 0,
  AU: 0,
  'm/s': 2,
  'kg/week': 2,
};

function join(parts: readonly string[]): string | undefined {
  return parts.length > 0 ? parts.join('; ') : undefined;
}
