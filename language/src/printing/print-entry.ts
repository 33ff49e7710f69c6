import type { Entry } from '../model/entry.ts';
import { printAthlete } from './print-athlete.ts';
import { printExercise } from './print-exercise.ts';
import { indent, printNotes, printProperty, textsOf } from './print-lines.ts';
import { printPlace } from './print-place.ts';
import { printPlan } from './print-plan.ts';
import { printSession, printUnknown } from './print-session.ts';

/**
 * The canonical text of an entry, without a last line end: properties in the order of the reference, two spaces a
 * step, a unit on every weight, so that it means the same in any file. Reading it gives the same entry again. Comments
 * are not part of the model and are not printed; lines that nothing recognised stand at the end.
 */
export function printEntry(entry: Entry): string {
  return [...printLines(entry), ...indent(textsOf(entry.strays))].join('\n');
}

function printLines(entry: Entry): string[] {
  switch (entry.kind) {
    case 'units':
      return [...printProperty('units', entry.unit ?? ''), ...indent(printNotes(entry.notes))];
    case 'exercise':
      return [...printExercise(entry), ...indent(printNotes(entry.notes))];
    case 'place':
      return [...printPlace(entry), ...indent(printNotes(entry.notes))];
    case 'athlete':
      return [...printAthlete(entry), ...indent(printNotes(entry.notes))];
    case 'plan':
      return printPlan(entry);
    case 'session':
      return printSession(entry);
    case 'unknown':
      return printUnknown(entry);
  }
}
