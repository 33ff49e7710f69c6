import type { FileModel } from '../model/entry.ts';
import type { Practice } from '../practice/practice.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { measureEditDistance } from '../text/edit-distance.ts';
import { foldName } from '../text/names.ts';
import { CHECKS } from './catalogue.ts';
import type { FileProblem } from './check-calendar.ts';
import { problem } from './check-context.ts';

/**
 * A spelling is taken for a slip of another only where that one has so many times its sessions; in shorter names one
 * letter makes another person.
 */
const { times: TIMES, letters: LEAST_LENGTH } = CHECKS['unknown-athlete'].numbers;

/**
 * Where no athlete is defined, a name that few sessions have and that is one letter off a name of many:
 * `Otti Planker` once beside `Otti Plankerr` ten times.
 */
export function checkRareNames(practice: Practice, { entries }: FileModel): FileProblem[] {
  if (practice.allAthletes().length > 0) return [];
  const counts = new Map(
    practice.athleteKeys().map((key) => [key, practice.sessionsOf(key).length] as const),
  );
  const usual = new Map([...counts].map(([key, count]) => [key, findUsual(key, count, counts)] as const));
  return entries.flatMap(({ line, entry }) => {
    if (entry.kind !== 'session') return [];
    return entry.athletes.flatMap((name) => {
      const key = usual.get(foldName(name.text));
      if (key === undefined) return [];
      const near = practice.athleteName(key);
      const message = `${name.text} has few sessions: did you mean ${near}, who has ${counts.get(key)}?`;
      return {
        entryLine: line,
        problem: problem('unknown-athlete', name.span, message, [replaceBy(name.span, near)]),
      };
    });
  });
}

function findUsual(key: string, count: number, counts: ReadonlyMap<string, number>): string | undefined {
  if (key.length < LEAST_LENGTH) return undefined;
  return [...counts].find(
    ([other, sessions]) =>
      other !== key &&
      other.length >= LEAST_LENGTH &&
      sessions >= count * TIMES &&
      measureEditDistance(other, key, 1) <= 1,
  )?.[0];
}
