import type { Load, Mass, MassLoad } from '../model/quantity.ts';
import { printClock } from '../units/duration.ts';
import { printPlain } from './print-quantity.ts';

/** `85 kg`: in the unit it was written in, and always with it, so that no other line decides what it means. */
export function printWrittenMass(mass: Mass): string {
  return `${printPlain(mass.written)} ${mass.unit}`;
}

/** What follows `@`: `2x18 kg`, `bw+5 kg`, `75% of Back Squat`, `2:05/500 m`. */
export function printLoad(load: Load): string {
  switch (load.kind) {
    case 'mass':
      return printMassLoad(load);
    case 'sides':
      return `${printWrittenMass(load.left)} left ${printWrittenMass(load.right)} right`;
    case 'bodyweight':
      return printBodyweight(load);
    case 'bodyweight-share':
      return `${printPlain(load.percent)}% of bw`;
    case 'pin':
      return `pin ${printPlain(load.pin)}${load.plus ? ` + ${printWrittenMass(load.plus)}` : ''}`;
    case 'band':
      return `${load.band} band`;
    case 'setting':
      return printSetting(load);
    case 'percent':
      return `${printRange(load)}%${load.of ? ` of ${load.of.text}` : ''}`;
    case 'offset':
      return load.mass ? `-${printWrittenMass(load.mass)}` : `-${printPlain(load.percent ?? 0)}%`;
    case 'target':
      return `${load.scale} ${printRange(load)}`;
    case 'unrecorded':
      return '?';
  }
}

/** `7-8`, or `8` alone. */
export function printRange(range: { readonly low: number; readonly high?: number }): string {
  return range.high === undefined
    ? printPlain(range.low)
    : `${printPlain(range.low)}-${printPlain(range.high)}`;
}

function printMassLoad(load: MassLoad): string {
  const { mass, high, other, chain, band } = load;
  const count = load.implements === 2 && !other ? '2x' : '';
  const second = high ? `-${printPlain(high.written)}` : other ? `&${printPlain(other.written)}` : '';
  const added = chain ? ` + ${printWrittenMass(chain)} chain` : band ? ` + ${band} band` : '';
  return `${count}${printPlain(mass.written)}${second} ${mass.unit}${added}`;
}

function printBodyweight(load: Extract<Load, { kind: 'bodyweight' }>): string {
  const { sign, mass, pin, band } = load;
  if (mass) return `bw${sign}${printWrittenMass(mass)}`;
  if (pin !== undefined) return `bw${sign}pin ${printPlain(pin)}`;
  return band === undefined ? 'bw' : `bw${sign}${band} band`;
}

function printSetting(load: Extract<Load, { kind: 'setting' }>): string {
  switch (load.setting) {
    case 'height':
      return `${printPlain(load.value)} cm`;
    case 'power':
      return `${printPlain(load.value)} W`;
    case 'speed':
      return `${printPlain(load.value)} km/h`;
    case 'pace':
      return `${printClock(load.value)}/${printPlain(load.metres ?? 0)} m`;
  }
}
