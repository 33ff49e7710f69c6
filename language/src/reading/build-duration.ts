import type { Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { SECONDS_PER } from '../units/duration.ts';
import { roundTo } from '../units/number.ts';
import { lastTokenSpan, lineOf, readClock, readUnit } from './build-values.ts';
import {
  addAfter,
  type EntryReading,
  type Holed,
  replaceBy,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';

/** How a bare or doubtful duration may be meant, most likely first. */
export type DurationKind = 'short' | 'session' | 'hours';

/** Seconds of `1:30`, `90 s`, `58 min`; a bare number is reported with the units it may have. */
export function buildDuration(
  reading: EntryReading,
  node: Holed<ast.Duration> | undefined,
  kind: DurationKind = 'short',
): number | undefined {
  if (!node?.$cstNode) return undefined;
  const span = spanOf(node);
  const text = textOf(node);
  if (node.clock !== undefined) {
    const parts = node.clock.split(':');
    if (kind === 'session' && parts.length === 2)
      return reportShortClock(reading, parts[0]!, parts[1]!, span);
    // Nobody notes the seconds of a night.
    return readClock(reading, kind === 'hours' && parts.length === 2 ? `${node.clock}:00` : node.clock, span);
  }
  if (node.value === undefined) return undefined;
  const value = toNumber(node.value);
  if (node.unit === undefined) {
    const { line, end } = lineOf(node);
    // A mark stands for the unit, and the line breaks off there.
    if (/^\s*['’′"”″]/.test(line.slice(end))) return undefined;
    const clock = kind === 'short' ? /^(\d{1,2})[.,]([0-5]\d)$/.exec(text) : undefined;
    if (clock) {
      const written = `${clock[1]}:${clock[2]}`;
      const message = `Write ${written}: minutes and seconds stand on both sides of a colon`;
      reading.report('unclear-time', span, message, [replaceBy(span, written)]);
      return undefined;
    }
    reading.report(
      'missing-unit',
      span,
      `Which unit has ${text}? Write it behind the number, such as ${text} ${BARE_UNITS[kind][0]}`,
      BARE_UNITS[kind].map((unit) => addAfter(span, ` ${unit}`, `Write ${text} ${unit}`)),
    );
    return undefined;
  }
  const unit = readUnit(reading, node.unit, lastTokenSpan(node));
  if (unit === 'm') {
    reading.report('unclear-time', span, 'm stands for metres: write min for minutes', [
      replaceBy(span, `${node.value} min`),
    ]);
    return undefined;
  }
  if (unit !== 's' && unit !== 'min' && unit !== 'h') {
    reading.report('unclear-time', span, `${text} is a distance: a time is written such as 1:30 or 45 s`);
    return undefined;
  }
  const seconds = roundTo(value * SECONDS_PER[unit], 3);
  return reading.accept('seconds', seconds, span, text) ? seconds : undefined;
}

const BARE_UNITS: Readonly<Record<DurationKind, readonly string[]>> = {
  short: ['s', 'min'],
  session: ['min'],
  hours: ['h'],
};

/** `lasted 1:05`: an hour and five minutes, or a minute and five seconds? */
function reportShortClock(reading: EntryReading, first: string, second: string, span: Span): undefined {
  const minutes = Number(first) * 60 + Number(second);
  const asHours = Number(second) < 60 && minutes <= 24 * 60 ? [replaceBy(span, `${minutes} min`)] : [];
  const asMinutes =
    Number(second) < 60 && Number(first) < 60
      ? [replaceBy(span, `0:${first.padStart(2, '0')}:${second}`)]
      : [];
  const message = `Is ${first}:${second} hours and minutes, or minutes and seconds? Write it such as 65 min`;
  reading.report('unclear-time', span, message, [...asHours, ...asMinutes]);
}
