import type { PlanDay, PlanEntry } from '../model/entry.ts';
import { printBlocks } from './print-block.ts';
import { indent, printList, printNotes, printProperty, textsOf } from './print-lines.ts';
import { printPlain } from './print-quantity.ts';

/** `plan Wicker Base`, its settings, its notes and its days. */
export function printPlan(entry: PlanEntry): string[] {
  const { starts, weeks, alternate, trainingMax } = entry;
  return [
    ...printProperty('plan', entry.name?.text ?? ''),
    ...indent([
      ...printList('for', textsOf(entry.athletes)),
      ...printProperty('at', entry.place?.text),
      ...printProperty('starts', starts && (starts.date ?? starts.text)),
      ...printProperty('follows', entry.follows?.text),
      ...printProperty('weeks', weeks && printPlain(weeks.count)),
      ...entry.deloads.map(printDeload),
      ...printList('days', textsOf(entry.weekdays)),
      ...(alternate ? [`days alternate, ${printPlain(alternate.perWeek)} a week`] : []),
      ...printProperty('training max', trainingMax === undefined ? undefined : `${printPlain(trainingMax)}%`),
      ...printNotes(entry.notes),
      ...entry.days.flatMap(printPlanDay),
    ]),
  ];
}

/** `deload week 6, sets 50%, load 90%`. */
function printDeload({ week, sets, load }: PlanEntry['deloads'][number]): string {
  const setsShare = sets === undefined ? '' : `, sets ${printPlain(sets)}%`;
  const loadShare = load === undefined ? '' : `, load ${printPlain(load)}%`;
  return `deload week ${printPlain(week)}${setsShare}${loadShare}`;
}

function printPlanDay(day: PlanDay): string[] {
  return [
    ...printProperty(`day ${printPlain(day.number)}`, day.name ?? ''),
    ...indent([...printNotes(day.notes), ...printBlocks(day.blocks)]),
  ];
}
