/** Distances are kept in metres. One yard is exactly 0.9144 m (international yard and pound agreement of 1959). */
import { printNumber, roundTo } from './number.ts';

export type DistanceUnit = 'm' | 'km' | 'cm' | 'yd' | 'mi';

/** Metres in one unit, all exact; a mile is 1 760 yards. */
export const METRES_PER: Readonly<Record<DistanceUnit, number>> = {
  m: 1,
  km: 1000,
  cm: 0.01,
  yd: 0.9144,
  mi: 1609.344,
};

/** 20 yd → 18.288. */
export function toMetres(amount: number, unit: DistanceUnit): number {
  return amount * METRES_PER[unit];
}

/** 18.288 in yd → 20. */
export function fromMetres(metres: number, unit: DistanceUnit): number {
  return metres / METRES_PER[unit];
}

/** `1200` → `1.2 km`, `40` → `40 m`; from one kilometre up in kilometres. */
export function printDistance(metres: number): string {
  return Math.abs(roundTo(metres, 1)) < 1000
    ? `${printNumber(metres, 1)} m`
    : `${printNumber(metres / 1000, 2)} km`;
}
