import type { PerAthlete, SessionEntry, SessionFacts, UnknownEntry } from '../model/entry.ts';
import { printBlocks } from './print-block.ts';
import { indent, printNotes, printProperty, printReason, textsOf } from './print-lines.ts';
import { printWrittenMass } from './print-load.ts';
import { printPlain, printTime } from './print-quantity.ts';

/** `session 2026-11-17 07:10 Nell | Tibor at Herne Loft, Wicker Base week 2 day 1`. */
export function printSessionHeader(entry: SessionEntry): string {
  const { date, clock, athletes, place, plan } = entry;
  const header = [
    'session',
    ...(date ? [date.date ?? date.text] : []),
    ...(clock === undefined ? [] : [clock]),
    ...(athletes.length > 0 ? [textsOf(athletes).join(' | ')] : []),
    ...(place ? [`at ${place.text}`] : []),
  ].join(' ');
  if (!plan) return header;
  const week = plan.week === undefined ? '' : ` week ${plan.week}`;
  const day = plan.day === undefined ? '' : ` day ${plan.day}`;
  return `${header}, ${plan.name.text}${week}${day}`;
}

export function printSession(entry: SessionEntry): string[] {
  return [printSessionHeader(entry), ...indent(printSessionBody(entry))];
}

/** Lines under a header that nothing knows, or before any header. */
export function printUnknown(entry: UnknownEntry): string[] {
  return [...(entry.title ? [entry.title.text] : []), ...indent(printSessionBody(entry))];
}

/**
 * First how the athlete came, then the training, then how it went. The entry's notes stand behind a property or the
 * header: behind a block they would be the block's.
 */
function printSessionBody(entry: SessionEntry | UnknownEntry): string[] {
  const notes = printNotes(entry.notes);
  const blocks = printBlocks(entry.blocks);
  const [before, after] = [printBefore(entry), printAfter(entry)];
  return after.length > 0 ? [...before, ...blocks, ...after, ...notes] : [...before, ...notes, ...blocks];
}

function printBefore({ bodyweight, sleep, readiness }: SessionFacts): string[] {
  return [
    ...printProperty('bodyweight', bodyweight && printWrittenMass(bodyweight.mass)),
    ...printProperty('sleep', sleep && printHours(sleep.hours)),
    ...printProperty('readiness', readiness && printPlain(readiness.score)),
  ];
}

function printAfter({ efforts, lasted, pains, missed }: SessionFacts): string[] {
  return [
    ...printProperty('effort', printEach(efforts, printPlain)),
    ...printProperty('lasted', printEach(lasted, printLasted)),
    ...pains.map(({ score, where }) => `pain ${printPlain(score)}${where === undefined ? '' : ` ${where}`}`),
    ...(missed ? [`missed${printReason(missed.reason)}`] : []),
  ];
}

/** One value for each athlete of a group: `7 | 8 | ?`. */
function printEach(
  list: PerAthlete<number | undefined> | undefined,
  print: (value: number) => string,
): string | undefined {
  return list?.values.map((value) => (value === undefined ? '?' : print(value))).join(' | ');
}

/** 58 minutes → `58 min`; 3725 seconds → `1:02:05`, with its hours, so that minutes and hours cannot be confused. */
function printLasted(seconds: number): string {
  if (seconds % 30 === 0) return `${printPlain(seconds / 60)} min`;
  const clock = printTime(seconds);
  return /^\d+:\d\d$/.test(clock) ? `0:${clock.padStart(5, '0')}` : clock;
}

/** 7.5 → `7.5 h`; hours that are no short decimal are written as a clock: `6:50:00`. */
function printHours(hours: number): string {
  const seconds = Math.round(hours * 3600);
  const isShort = Number.isInteger(hours * 100);
  return isShort || seconds / 3600 !== hours || seconds < 3600
    ? `${printPlain(hours)} h`
    : printTime(seconds);
}
