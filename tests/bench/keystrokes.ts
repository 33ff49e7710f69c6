import type { Random } from './random.ts';

/** A place behind the reps of a working set, where one more digit changes what the lenses say. */
export interface Spot {
  readonly offset: number;
  readonly line: number;
}

/** `    Back Squat: 3x5| @ 80 kg`: lines of straight work whose first set has a load of its own. */
export function findSpots(text: string): Spot[] {
  const spots: Spot[] = [];
  let line = 0;
  let start = 0;
  for (const written of text.split('\n')) {
    const found =
      /^ {4}(?:Back Squat|Front Squat|Bench Press|Deadlift|Overhead Press|Romanian Deadlift): \d+x\d(?= @ \d)/.exec(
        written,
      );
    if (found) spots.push({ offset: start + found[0].length, line });
    start += written.length + 1;
    line++;
  }
  if (spots.length === 0) throw new Error('There is no set to type into');
  return spots;
}

/** A digit typed and taken out again, that many keystrokes in all, here and there in the file. */
export function* listKeystrokes(
  text: string,
  count: number,
  random: Random,
): Iterable<Spot & { readonly removed: number; readonly typed: string }> {
  const spots = findSpots(text);
  for (let done = 0; done < count; done += 2) {
    const spot = random.pick(spots);
    yield { ...spot, removed: 0, typed: '1' };
    yield { ...spot, removed: 1, typed: '' };
  }
}
