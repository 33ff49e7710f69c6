import type { Entry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import { foldName } from '../text/names.ts';
import { describeLimit, LIMITS } from '../vocabulary/limits.ts';
import { type CheckContext, listLines, problem } from './check-context.ts';
import { listMasses } from './written-masses.ts';

/** What carries more than any bar does: its limit is the higher one, which reading knows. */
const HEAVY_DUTY: ReadonlySet<string> = new Set([
  'sled',
  'leg press machine',
  'leg press',
  'hack squat machine',
]);

/** A load past what a bar holds, on a movement that is no sled or leg press. */
export function* checkHeavy(entry: Entry, { practice }: CheckContext): Iterable<Problem> {
  for (const { line } of listLines(entry)) {
    const heavy = listMasses(line.cells).filter(({ load }) => load.mass.grams > LIMITS.grams.high);
    if (heavy.length === 0) continue;
    const needs = practice.findMovement(line.name.text)?.entry.needs ?? [];
    if (needs.some((need) => HEAVY_DUTY.has(foldName(need.text)))) continue;
    for (const { set } of heavy) {
      yield problem(
        'out-of-range',
        set.loadSpan,
        `${set.loadText} is out of range: ${describeLimit('grams')}`,
      );
    }
  }
}
