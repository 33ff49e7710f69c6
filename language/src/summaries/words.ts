import type { IsoDate } from '../calendar/iso-date.ts';
import { fromGrams, type MassUnit } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `10 Nov`, and with the year where it is another than that of `beside`: `10 Nov 2025`. */
export function printDay(date: IsoDate, beside: IsoDate): string {
  const [year, month, day] = date.split('-') as [string, string, string];
  const text = `${Number(day)} ${MONTHS[Number(month) - 1]}`;
  return year === beside.slice(0, 4) ? text : `${text} ${year}`;
}

/** `1 set`, `4 sets`. */
export function count(number: number, noun: string): string {
  return `${printNumber(number)} ${noun}${number === 1 ? '' : 's'}`;
}

/** Kilograms in the unit shown: `7 825 kg`, `17 251 lb`. */
export function printKilograms(kilograms: number, unit: MassUnit, decimals = 0): string {
  return `${printNumber(fromGrams(kilograms * 1000, unit), decimals)} ${unit}`;
}

/** `6 % over`, `4 % under`, `level with`, `at least 6 % over`: how a number stands to an earlier one. */
export function printChange(percent: number, atLeast = false): string {
  const rounded = Math.round(percent);
  const lead = atLeast ? 'at least ' : '';
  if (rounded === 0) return `${lead}level with`;
  return `${lead}${Math.abs(rounded)} % ${rounded > 0 ? 'over' : 'under'}`;
}

/** Facts of a lens, the unknown first, each once, four at most. */
export function joinFacts(facts: readonly (string | undefined)[]): string {
  return facts
    .filter((fact, index) => fact !== undefined && fact !== '' && facts.indexOf(fact) === index)
    .slice(0, 4)
    .join(' · ');
}
