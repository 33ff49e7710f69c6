import type { AthleteEntry } from '../model/entry.ts';
import { indent, printProperty, printReason } from './print-lines.ts';
import { printLoad, printWrittenMass } from './print-load.ts';
import { printPlain } from './print-quantity.ts';
import { printSetGroup } from './print-sets.ts';

/** `athlete Ivo Brundt` and what is known of body, maxes, goals and limits. */
export function printAthlete(entry: AthleteEntry): string[] {
  return [
    ...printProperty('athlete', entry.name?.text ?? ''),
    ...indent([
      ...printProperty('born', entry.born === undefined ? undefined : printPlain(entry.born)),
      ...printProperty('sex', entry.sex),
      ...printProperty('units', entry.units),
      ...entry.weighIns.map(({ mass, date }) => `bodyweight ${printWrittenMass(mass)} on ${date}`),
      ...entry.maxes.map(({ movement, load, date }) =>
        printDated(`max ${movement.text}`, load && printLoad(load), 'on', date),
      ),
      ...entry.retests.map(({ movement, masses, date }) =>
        printDated(`retest ${movement.text}`, masses.map(printWrittenMass).join(', '), 'on', date),
      ),
      ...entry.goals.map(({ movement, set, by }) =>
        printDated(`goal ${movement.text}`, set && printSetGroup(set), 'by', by),
      ),
      ...entry.avoid.map(
        ({ what, until, reason }) =>
          `avoid ${what.text}${until ? ` until ${until}` : ''}${printReason(reason)}`,
      ),
      ...entry.away.map(
        ({ from, to, reason }) =>
          `away${from ? ` ${from}` : ''}${to ? ` to ${to}` : ''}${printReason(reason)}`,
      ),
      ...entry.screened.map(({ date, by }) => `screened ${date}${printReason(by)}`),
    ]),
  ];
}

/** `max Back Squat: 105 kg on 2026-09-28`; a day without a value has nothing to stand behind. */
function printDated(head: string, value: string | undefined, word: string, date: string | undefined): string {
  if (!value) return head;
  return `${head}: ${value}${date === undefined ? '' : ` ${word} ${date}`}`;
}
