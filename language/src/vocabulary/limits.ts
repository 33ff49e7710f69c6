import { printNumber } from '../units/number.ts';

/** Past these a number cannot be meant. One table for reading and checks; the message names the limit. */
export const LIMITS = {
  reps: { low: 0, high: 1000, unit: 'reps' },
  plates: { low: 1, high: 1000, unit: 'plates' },
  sets: { low: 1, high: 50, unit: 'sets' },
  seconds: { low: 0, high: 24 * 3600, unit: '24 h', highText: '24 h' },
  metres: { low: 0, high: 500_000, unit: 'km', highText: '500 km' },
  calories: { low: 0, high: 10_000, unit: 'cal' },
  grams: { low: 0, high: 1_000_000, unit: 'kg', highText: '1 000 kg' },
  sledGrams: { low: 0, high: 2_000_000, unit: 'kg', highText: '2 000 kg' },
  bodyGrams: { low: 20_000, high: 400_000, unit: 'kg', lowText: '20 kg', highText: '400 kg' },
  watts: { low: 0, high: 2500, unit: 'W' },
  speed: { low: 0, high: 60, unit: 'km/h' },
  height: { low: 0, high: 500, unit: 'cm' },
  bodyPercent: { low: 0, high: 100, unit: '%' },
  percent: { low: 0, high: 300, unit: '%' },
  pin: { low: 0, high: 100, unit: '' },
  rpe: { low: 0, high: 10, unit: '' },
  rir: { low: 0, high: 10, unit: '' },
  hr: { low: 25, high: 250, unit: 'beats a minute' },
  v: { low: 0, high: 3, unit: 'm/s' },
  pain: { low: 0, high: 10, unit: '' },
  effort: { low: 0, high: 10, unit: '' },
  readiness: { low: 1, high: 5, unit: '' },
  sleep: { low: 0, high: 24, unit: 'h' },
  rounds: { low: 1, high: 200, unit: 'rounds' },
  roundsDone: { low: 0, high: 1000, unit: 'rounds' },
  passes: { low: 1, high: 50, unit: 'passes' },
  weekday: { low: 1, high: 7, unit: 'days a week' },
  weeks: { low: 1, high: 104, unit: 'weeks' },
  misses: { low: 1, high: 20, unit: 'misses' },
} as const satisfies Record<string, Limit>;

/** A set with a load hardly has more reps: a higher number beside one is taken for a load (our choice). */
export const MOST_LOADED_REPS = 30;

interface Limit {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly lowText?: string;
  readonly highText?: string;
}

export type LimitName = keyof typeof LIMITS;

/** `0 to 10`, `20 kg to 400 kg`: the limit in words. */
export function describeLimit(name: LimitName): string {
  const limit: Limit = LIMITS[name];
  const unit = limit.unit === '' || limit.unit === '%' ? limit.unit : ` ${limit.unit}`;
  const low = limit.lowText ?? String(limit.low);
  const high = limit.highText ?? `${printNumber(limit.high)}${unit}`;
  return `${low} to ${high}`;
}
