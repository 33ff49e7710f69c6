/** Durations are kept in seconds. */
import { printNumber } from './number.ts';

export type DurationUnit = 's' | 'min' | 'h';

export const SECONDS_PER: Readonly<Record<DurationUnit, number>> = { s: 1, min: 60, h: 3600 };

/** `4:05` → 245, `1:02:03` → 3723; minutes may pass 59 in `m:ss` (`75:00`); anything else → undefined. */
export function parseClock(text: string): number | undefined {
  const match = /^(?:(\d+):(?=\d\d:))?(\d+):(\d\d)$/.exec(text);
  if (!match) {
    return undefined;
  }
  const hours = match[1] === undefined ? 0 : Number(match[1]);
  const minutes = Number(match[2]);
  const seconds = Number(match[3]);
  const minutesFit = match[1] === undefined || minutes < 60;
  return seconds < 60 && minutesFit ? hours * 3600 + minutes * 60 + seconds : undefined;
}

/** 245 → `4:05`, 3723 → `1:02:03`, 30 → `0:30`; to the nearest second. */
export function printClock(seconds: number): string {
  const total = Math.round(Math.abs(seconds));
  const sign = seconds < 0 && total > 0 ? '-' : '';
  const hours = Math.floor(total / 3600);
  const minutes = Math.floor((total % 3600) / 60);
  const rest = pad(total % 60);
  return sign + (hours > 0 ? `${hours}:${pad(minutes)}:${rest}` : `${minutes}:${rest}`);
}

/** 3480 → `58 min`, 1110 → `18.5 min`. */
export function printMinutes(seconds: number, maximumDecimals = 1): string {
  return `${printNumber(seconds / 60, maximumDecimals)} min`;
}

function pad(value: number): string {
  return String(value).padStart(2, '0');
}
