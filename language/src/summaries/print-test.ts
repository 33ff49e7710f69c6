import type { Unit } from '../measures/result.ts';
import type { TestResult } from '../measures/test-results.ts';
import { printDistance } from '../units/distance.ts';
import { printClock } from '../units/duration.ts';
import { printNumber } from '../units/number.ts';

/** `Plank 1:30 (before 1:15 on 2026-02-02), best so far`, `Rower 500 m in 1:40`. */
export function printTestResult({ movement, of, result, before, isBest }: TestResult): string {
  const amount = printAmount(result.value!, result.unit);
  const done = `${movement} ${of === undefined ? amount : `${of} in ${amount}`}`;
  if (!before) return done;
  const then = `before ${printAmount(before.value, result.unit)} on ${before.date}`;
  return `${done} (${then})${isBest ? ', best so far' : ''}`;
}

function printAmount(value: number, unit: Unit): string {
  if (unit === 's') return value < 60 ? `${printNumber(value, 1)} s` : printClock(value);
  if (unit === 'm') return printDistance(value);
  return unit === 'reps'
    ? `${printNumber(value)} rep${value === 1 ? '' : 's'}`
    : `${printNumber(value, 1)} ${unit}`;
}
