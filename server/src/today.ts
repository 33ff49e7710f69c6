import { type IsoDate, parseIsoDate } from '@plimsoll/language/calendar/iso-date';

/** Which day it is, for all that depends on it. */
export interface Clock {
  today(): IsoDate;
  /** Calls back when another day has begun, until the answer is called. */
  onNewDay(callback: () => void): () => void;
}

/** A day that never ends, for tests and for `--today`. */
export function fixedClock(date: IsoDate): Clock {
  return { today: () => date, onNewDay: () => () => undefined };
}

/** The system's clock and time zone, or the day that PLIMSOLL_TODAY names. */
export function systemClock(environment: Readonly<Record<string, string | undefined>>): Clock {
  const fixed = parseIsoDate(environment.PLIMSOLL_TODAY ?? '');
  return fixed ? fixedClock(fixed) : { today: () => toLocalDate(new Date()), onNewDay };
}

export function toLocalDate(time: Date): IsoDate {
  const pad = (value: number, digits: number) => String(value).padStart(digits, '0');
  return `${pad(time.getFullYear(), 4)}-${pad(time.getMonth() + 1, 2)}-${pad(time.getDate(), 2)}` as IsoDate;
}

/** Asks every minute: a timer set for midnight is late on a machine that slept. */
function onNewDay(callback: () => void): () => void {
  let day = toLocalDate(new Date());
  const timer = setInterval(() => {
    const now = toLocalDate(new Date());
    if (now === day) return;
    day = now;
    callback();
  }, 60_000);
  timer.unref();
  return () => clearInterval(timer);
}
