import type { ExerciseEntry } from '../model/entry.ts';
import { indent, printList, printProperty, textsOf } from './print-lines.ts';
import { printPlain } from './print-quantity.ts';

/** `exercise Goblet Squat` and its properties, in the order of the notation's reference. */
export function printExercise(entry: ExerciseEntry): string[] {
  const { bodyShare } = entry;
  const share =
    bodyShare &&
    `${printPlain(bodyShare.percent)}%${bodyShare.source === undefined ? '' : `, ${bodyShare.source}`}`;
  return [
    ...printProperty('exercise', entry.name?.text ?? ''),
    ...indent([
      ...printProperty('pattern', entry.pattern?.text),
      ...printProperty('work', entry.work?.text),
      ...printProperty('position', entry.position?.text),
      ...printTrunk(entry.trunk),
      ...printList('muscles', entry.muscles.map(printMuscle)),
      ...printList('needs', textsOf(entry.needs)),
      ...printProperty('each rep moves', entry.repMoves),
      ...printProperty('bodyweight', share),
      ...(entry.countsContacts ? ['counts contacts'] : []),
      ...printList('also', textsOf(entry.also)),
      ...printList('easier', textsOf(entry.easier)),
      ...printList('harder', textsOf(entry.harder)),
      ...textsOf(entry.setups).map((text) => `setup ${text}`),
      ...textsOf(entry.cues).map((text) => `cue ${text}`),
      ...textsOf(entry.cautions).map((text) => `caution ${text}`),
    ]),
  ];
}

/** `adductors 1/2`. */
function printMuscle(muscle: ExerciseEntry['muscles'][number]): string {
  return muscle.fraction
    ? `${muscle.name.text} ${muscle.fraction.map(printPlain).join('/')}`
    : muscle.name.text;
}

/** `trunk resists flexion, rotation`: neighbours of one demand share a line. */
function printTrunk(trunk: ExerciseEntry['trunk']): string[] {
  const lines: { readonly demand: string; readonly directions: string[] }[] = [];
  for (const { demand, direction } of trunk) {
    const last = lines.at(-1);
    if (last?.demand === demand) last.directions.push(direction.text);
    else lines.push({ demand, directions: [direction.text] });
  }
  return lines.map(({ demand, directions }) => `trunk ${demand} ${directions.join(', ')}`);
}
