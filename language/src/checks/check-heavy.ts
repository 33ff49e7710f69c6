import { foldName } from '../text/names.ts';
import { describeLimit, LIMITS } from '../vocabulary/limits.ts';
import { problem } from './check-context.ts';
import type { LineCheck } from './line-checks.ts';
import { listMasses } from './written-masses.ts';

/** What carries more than any bar does: its limit is the higher one, which reading knows. */
const HEAVY_DUTY: ReadonlySet<string> = new Set([
  'sled',
  'leg press machine',
  'leg press',
  'hack squat machine',
]);

/** A load past what a bar holds, on a movement that is no sled or leg press. */
export const checkHeavy: LineCheck =
  (_entry, { practice }) =>
  ({ line }) => {
    const heavy = listMasses(line.cells).filter(({ load }) => load.mass.grams > LIMITS.grams.high);
    if (heavy.length === 0) return [];
    const needs = practice.findMovement(line.name.text)?.entry.needs ?? [];
    if (needs.some((need) => HEAVY_DUTY.has(foldName(need.text)))) return [];
    return heavy.map(({ set }) =>
      problem('out-of-range', set.loadSpan, `${set.loadText} is out of range: ${describeLimit('grams')}`),
    );
  };
