import type { Entry, SessionEntry } from '../model/entry.ts';
import type { Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { findNearHeader } from '../syntax/line-kind.ts';
import { shorten } from '../text/shorten.ts';
import type { MassUnit } from '../units/mass.ts';
import { buildAthleteFacts } from './build-athlete.ts';
import { buildExerciseFacts } from './build-exercise.ts';
import { buildPlaceFacts } from './build-place.ts';
import { buildTraining } from './build-training.ts';
import { buildDate, buildName, buildNames, readUnit } from './build-values.ts';
import {
  type EntryReading,
  type Holed,
  present,
  replaceBy,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';
import { makeSession, type SessionHeader } from './session-entry.ts';

/** Facts that every entry has, gathered by the caller from the text itself. */
export type EntryFrame = Pick<Entry, 'lineCount' | 'header' | 'ignores'>;

type FreeLines = readonly { readonly $type: string; readonly $cstNode?: unknown }[];

/** Turns the tree of one entry into its model; what is found wrong goes to `reading`. */
export function buildEntry(reading: EntryReading, frame: EntryFrame, node: ast.Entry | ast.Loose): Entry {
  switch (node.$type) {
    case 'Units':
      return {
        ...frame,
        ...readFree(node.lines),
        kind: 'units',
        ...unitOf(reading, frame, node.header),
        problems: reading.problems,
      };
    case 'Exercise':
      return {
        ...frame,
        ...readFree(node.lines),
        kind: 'exercise',
        ...nameOf(reading, frame, node.header, "a movement's name after exercise"),
        ...buildExerciseFacts(reading, node.lines),
        problems: reading.problems,
      };
    case 'Place':
      return {
        ...frame,
        ...readFree(node.lines),
        kind: 'place',
        ...nameOf(reading, frame, node.header, "a place's name after place"),
        ...buildPlaceFacts(reading, node.lines),
        problems: reading.problems,
      };
    case 'Athlete':
      return {
        ...frame,
        ...readFree(node.lines),
        kind: 'athlete',
        ...nameOf(reading, frame, node.header, "an athlete's name after athlete"),
        ...buildAthleteFacts(reading, node.lines),
        problems: reading.problems,
      };
    case 'Plan': {
      const { notes, strays, days, blocks, plan } = buildTraining(reading, node.lines);
      const name = nameOf(reading, frame, node.header, "a plan's name after plan");
      // Lines before the first day belong to a plan that has just one.
      const only = blocks.length > 0 ? [{ number: 1, blocks, notes: [], span: blocks[0]!.span }] : [];
      return {
        ...frame,
        kind: 'plan',
        ...name,
        ...plan,
        days: [...only, ...days],
        notes,
        strays,
        problems: reading.problems,
      };
    }
    case 'Session': {
      const { notes, strays, days, blocks, session } = buildTraining(reading, node.lines);
      const header = buildSessionHeader(reading, frame, node.header);
      const all = [...blocks, ...days.flatMap((day) => day.blocks)];
      return makeSession(frame, header, { session, notes, strays }, all, reading.problems);
    }
    case 'Unknown': {
      const { notes, strays, days, blocks, session } = buildTraining(reading, node.lines);
      const title = node.header?.title;
      reportTitle(reading, frame, title);
      return {
        ...frame,
        kind: 'unknown',
        ...(title !== undefined && { title: { text: title, span: frame.header } }),
        ...session,
        blocks: [...blocks, ...days.flatMap((day) => day.blocks)],
        notes,
        strays,
        problems: reading.problems,
      };
    }
    case 'Loose': {
      const { notes, strays, days, blocks, session } = buildTraining(reading, node.lines);
      const first = node.lines.find((line) => line.$cstNode && line.$type !== 'NoteLine');
      if (first) {
        const message = 'These lines stand before any session: begin with session, a date and an athlete';
        reading.report('outside-entry', spanOf(first), message);
      }
      const all = [...blocks, ...days.flatMap((day) => day.blocks)];
      return {
        ...frame,
        kind: 'unknown',
        ...session,
        blocks: all,
        notes,
        strays,
        problems: reading.problems,
      };
    }
  }
}

function readFree(lines: FreeLines): { notes: Written[]; strays: Written[] } {
  const found = { notes: [] as Written[], strays: [] as Written[] };
  for (const line of lines) {
    if (!line.$cstNode) continue;
    const free = line as unknown as ast.FreeLine;
    if (free.$type === 'NoteLine')
      found.notes.push({ text: free.text.replace(/^>\s*/, ''), span: spanOf(free) });
    else if (free.$type === 'StrayLine') found.strays.push({ text: free.text, span: spanOf(free) });
  }
  return found;
}

function unitOf(
  reading: EntryReading,
  frame: EntryFrame,
  header: Holed<ast.UnitsHeader> | undefined,
): { unit?: MassUnit } {
  if (header?.unit === undefined)
    return reading.expect('missing-value', frame.header, 'Expected kg or lb after units') ?? {};
  return { unit: readUnit(reading, header.unit, unitSpan(header, frame)) as MassUnit };
}

/** The header ends with its unit. */
function unitSpan(header: Holed<ast.UnitsHeader>, frame: EntryFrame): Span {
  const { end } = spanOf(header);
  return { ...frame.header, start: end - header.unit!.length, end };
}

function nameOf(
  reading: EntryReading,
  frame: EntryFrame,
  header: { readonly name?: ast.Name } | undefined,
  expected: string,
): { name?: Written } {
  if (header?.name?.$cstNode) return { name: buildName(header.name) };
  return reading.expect('missing-name', frame.header, `Expected ${expected}`) ?? {};
}

function buildSessionHeader(
  reading: EntryReading,
  frame: EntryFrame,
  node: Holed<ast.SessionHeader> | undefined,
): SessionHeader {
  if (!node?.$cstNode) return { athletes: [] };
  const missing = (message: string): undefined => reading.expect('missing-value', frame.header, message);
  if (!node.date) missing('Expected a date after session, such as 2026-11-17');
  if (node.isAt && !node.place) missing("Expected a place's name after at");
  if (node.isPlanned && !node.plan) missing('Expected a plan with its week and day after the comma');
  const date = buildDate(reading, node.date);
  const clock = node.clock !== undefined && isTimeOfDay(reading, frame, node.clock) ? node.clock : undefined;
  const place = present(node.place);
  const plan = present(node.plan);
  return {
    ...(date && { date }),
    ...(clock !== undefined && { clock }),
    athletes: buildNames(node.athletes),
    ...(place && { place: buildName(place) }),
    ...(plan && present(plan.plan) && { plan: buildPlanReference(reading, plan) }),
  };
}

function isTimeOfDay(reading: EntryReading, frame: EntryFrame, clock: string): boolean {
  const [hours, minutes, seconds] = clock.split(':').map(Number) as [number, number, number?];
  if (hours < 24 && minutes < 60 && seconds === undefined) return true;
  reading.report('unclear-time', frame.header, `${clock} is no time of day: write it such as 07:10 or 18:30`);
  return false;
}

function buildPlanReference(reading: EntryReading, node: Holed<ast.PlanReference>): SessionEntry['plan'] {
  const read = (text: string | undefined): number | undefined => {
    if (text === undefined) return undefined;
    const number = toNumber(text);
    return reading.acceptWhole('weeks', number, spanOf(node), textOf(node)) ? number : undefined;
  };
  const [week, day] = [read(node.week), read(node.day)];
  return {
    name: buildName(node.plan!),
    ...(week !== undefined && { week }),
    ...(day !== undefined && { day }),
  };
}

function reportTitle(reading: EntryReading, frame: EntryFrame, title: string | undefined): void {
  const word = title === undefined ? undefined : /^[\p{L}\p{M}]+/u.exec(title)?.[0];
  if (word === undefined) return;
  const dated = /^[\s:]*\d/.test(title!.slice(word.length));
  const near = findNearHeader(word) ?? (dated ? 'session' : undefined);
  const span = { ...frame.header, end: frame.header.start + word.length };
  const message = near
    ? `No entry begins with ${shorten(word)}: did you mean ${near}? Until then its lines count in no total`
    : `No entry begins with ${shorten(word)}: its lines count in no total`;
  reading.report('unknown-entry', span, message, near ? [replaceBy(span, near)] : []);
}
