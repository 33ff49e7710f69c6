import type { Entry, SessionEntry } from '../model/entry.ts';
import type { Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { findNearHeader } from '../syntax/line-kind.ts';
import type { MassUnit } from '../units/mass.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { buildAthleteFacts, buildExerciseFacts, buildPlaceFacts } from './build-definitions.ts';
import { buildTraining } from './build-training.ts';
import { buildDate, buildName } from './build-values.ts';
import { type EntryReading, replaceBy, spanOf, toNumber } from './line-reading.ts';

/** Facts that every entry has, gathered by the caller from the text itself. */
export type EntryFrame = Pick<Entry, 'lineCount' | 'header' | 'ignores'>;

type FreeLines = readonly { readonly $type: string; readonly $cstNode?: unknown }[];

/** Turns the tree of one entry into its model; what is found wrong goes to `reading`. */
export function buildEntry(reading: EntryReading, frame: EntryFrame, node: ast.Entry | ast.Loose): Entry {
  switch (node.$type) {
    case 'Units':
      return { ...frame, ...readFree(reading, node.lines), kind: 'units', ...unitOf(node.header?.unit), problems: reading.problems };
    case 'Exercise':
      return {
        ...frame,
        ...readFree(reading, node.lines),
        kind: 'exercise',
        ...nameOf(reading, frame, node.header, "a movement's name"),
        ...buildExerciseFacts(reading, node.lines),
        problems: reading.problems,
      };
    case 'Place':
      return {
        ...frame,
        ...readFree(reading, node.lines),
        kind: 'place',
        ...nameOf(reading, frame, node.header, "a place's name"),
        ...buildPlaceFacts(reading, node.lines),
        problems: reading.problems,
      };
    case 'Athlete':
      return {
        ...frame,
        ...readFree(reading, node.lines),
        kind: 'athlete',
        ...nameOf(reading, frame, node.header, "an athlete's name"),
        ...buildAthleteFacts(reading, node.lines),
        problems: reading.problems,
      };
    case 'Plan': {
      const { notes, strays, days, blocks, plan } = buildTraining(reading, node.lines);
      const name = nameOf(reading, frame, node.header, "a plan's name");
      // Lines before the first day belong to a plan that has just one.
      const only = blocks.length > 0 ? [{ number: 1, blocks, notes: [], span: blocks[0]!.span }] : [];
      return { ...frame, kind: 'plan', ...name, ...plan, days: [...only, ...days], notes, strays, problems: reading.problems };
    }
    case 'Session': {
      const { notes, strays, days, blocks, session } = buildTraining(reading, node.lines);
      const header = buildSessionHeader(reading, frame, node.header);
      const all = [...blocks, ...days.flatMap((day) => day.blocks)];
      return { ...frame, kind: 'session', ...header, ...session, blocks: all, notes, strays, problems: reading.problems };
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
      const { notes, strays, blocks, session } = buildTraining(reading, node.lines);
      const first = node.lines.find((line) => line.$cstNode && line.$type !== 'NoteLine');
      if (first) {
        const message = 'These lines stand before any session: begin with session, a date and an athlete';
        reading.report('outside-entry', spanOf(first), message);
      }
      return { ...frame, kind: 'unknown', ...session, blocks, notes, strays, problems: reading.problems };
    }
  }
}

function readFree(_reading: EntryReading, lines: FreeLines): { notes: Written[]; strays: Written[] } {
  const found = { notes: [] as Written[], strays: [] as Written[] };
  for (const line of lines) {
    if (!line.$cstNode) continue;
    const free = line as unknown as ast.FreeLine;
    if (free.$type === 'NoteLine') found.notes.push({ text: free.text.replace(/^>\s*/, ''), span: spanOf(free) });
    else if (free.$type === 'StrayLine') found.strays.push({ text: free.text, span: spanOf(free) });
  }
  return found;
}

function unitOf(unit: string | undefined): { unit?: MassUnit } {
  return unit === undefined ? {} : { unit: UNIT_WORDS.get(unit.toLowerCase())!.unit as MassUnit };
}

function nameOf(
  reading: EntryReading,
  frame: EntryFrame,
  header: { readonly name?: ast.Name } | undefined,
  expected: string,
): { name?: Written } {
  if (header?.name?.$cstNode) return { name: buildName(header.name) };
  if (!reading.broken.has(0)) reading.report('missing-name', frame.header, `Expected ${expected}`);
  return {};
}

type Header = Pick<SessionEntry, 'date' | 'clock' | 'athletes' | 'place' | 'plan'>;

function buildSessionHeader(reading: EntryReading, frame: EntryFrame, node: ast.SessionHeader | undefined): Header {
  if (!node?.$cstNode) return { athletes: [] };
  const date = buildDate(reading, node.date);
  if (!node.date && !reading.broken.has(0)) {
    reading.report('missing-value', frame.header, 'Expected a date after session, such as 2026-11-17');
  }
  const plan = node.plan?.$cstNode && node.plan.plan?.$cstNode ? node.plan : undefined;
  return {
    ...(date && { date }),
    ...(node.clock !== undefined && { clock: node.clock }),
    athletes: node.athletes.filter((name) => name.$cstNode).map(buildName),
    ...(node.place?.$cstNode && { place: buildName(node.place) }),
    ...(plan && {
      plan: {
        name: buildName(plan.plan),
        ...(plan.week !== undefined && { week: toNumber(plan.week) }),
        ...(plan.day !== undefined && { day: toNumber(plan.day) }),
      },
    }),
  };
}

function reportTitle(reading: EntryReading, frame: EntryFrame, title: string | undefined): void {
  const word = title === undefined ? undefined : /^[\p{L}\p{M}]+/u.exec(title)?.[0];
  if (word === undefined) return;
  const dated = /^\S+\s*:?\s*\d/.test(title!);
  const near = findNearHeader(word) ?? (dated ? 'session' : undefined);
  const span = { ...frame.header, end: frame.header.start + word.length };
  const advice = near ? `: did you mean ${near}?` : '';
  reading.report(
    'unknown-entry',
    span,
    `No entry begins with ${word}${advice} Its lines count in no total`.replace('? Its', '? Until then its'),
    near ? [replaceBy(span, near)] : [],
  );
}
