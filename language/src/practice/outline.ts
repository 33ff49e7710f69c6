import type { IsoDate } from '../calendar/iso-date.ts';
import { toIsoWeek } from '../calendar/iso-week.ts';
import type { Block, PlacedEntry, PlanDay, PlanEntry, SessionEntry } from '../model/entry.ts';
import type { Span } from '../model/source.ts';
import { type Extent, findBlockExtent, findDayExtent, findEntryExtent } from './extents.ts';
import type { Practice } from './practice.ts';

export type OutlineKind =
  | 'exercise'
  | 'athlete'
  | 'place'
  | 'plan'
  | 'units'
  | 'unknown'
  /** An athlete's sessions in a row, and the weeks they fall into. */
  | 'log'
  | 'week'
  | 'session'
  | 'day'
  | 'block';

/** One thing in a file's outline, with the lines it takes. */
export interface OutlineNode extends Extent {
  readonly kind: OutlineKind;
  readonly name: string;
  /** What is said beside the name; may be empty. */
  readonly detail: string;
  /** What is selected when it is gone to; its line counts from the file's first. */
  readonly selection: Span;
  readonly children: readonly OutlineNode[];
}

interface DatedSession {
  readonly week: string;
  readonly node: OutlineNode;
}

/**
 * What a file holds, in its own order: definitions by name, a plan's days, and sessions under their athlete and week.
 * Sessions that stand in a row share an athlete and a week, so that what holds a line is found by its place.
 */
export function outlineFile(practice: Practice, uri: string): readonly OutlineNode[] {
  const file = practice.file(uri);
  if (!file) return [];
  const { model, lines } = file;
  const nodes: OutlineNode[] = [];
  let run: DatedSession[] = [];
  let whose: string | undefined;
  const close = () => {
    if (run.length > 0) nodes.push(...nameRun(whose!, groupByWeek(run)));
    run = [];
  };
  for (const placed of model.entries) {
    if (placed.entry.kind !== 'session') {
      close();
      nodes.push(outlineEntry(lines, placed));
      continue;
    }
    const athletes = nameAthletes(practice, placed.entry);
    if (athletes !== whose) close();
    whose = athletes;
    const date = placed.entry.date?.date;
    run.push({ week: date ? nameWeek(date) : '', node: outlineSession(lines, placed, placed.entry) });
  }
  close();
  return nodes;
}

/** Sessions of nobody have no level of their own. */
function nameRun(whose: string, weeks: readonly OutlineNode[]): readonly OutlineNode[] {
  return whose === '' ? weeks : [enclose('log', whose, weeks)];
}

function nameAthletes(practice: Practice, { athletes }: SessionEntry): string {
  if (athletes.length === 0) return practice.athleteName(practice.resolveAthlete(''));
  return athletes.map(({ text }) => practice.findAthlete(text)?.name ?? text).join(' | ');
}

/** A session without a day stands in no week. */
function groupByWeek(sessions: readonly DatedSession[]): readonly OutlineNode[] {
  const weeks: { name: string; nodes: OutlineNode[] }[] = [];
  for (const { week, node } of sessions) {
    if (weeks.at(-1)?.name === week) weeks.at(-1)!.nodes.push(node);
    else weeks.push({ name: week, nodes: [node] });
  }
  return weeks.flatMap(({ name, nodes }) => (name === '' ? nodes : [enclose('week', name, nodes)]));
}

/** `Week 47, 2026`. */
function nameWeek(date: IsoDate): string {
  const { week, year } = toIsoWeek(date);
  return `Week ${week}, ${year}`;
}

function enclose(kind: OutlineKind, name: string, children: readonly OutlineNode[]): OutlineNode {
  const [first, last] = [children[0]!, children.at(-1)!];
  return {
    kind,
    name,
    detail: '',
    first: first.first,
    last: last.last,
    selection: first.selection,
    children,
  };
}

function outlineEntry(lines: readonly string[], placed: PlacedEntry): OutlineNode {
  const { line, entry } = placed;
  const written = 'name' in entry ? entry.name : 'title' in entry ? entry.title : undefined;
  const header = lines[line]!.slice(entry.header.start, entry.header.end);
  const children =
    entry.kind === 'plan'
      ? outlineDays(lines, placed, entry)
      : entry.kind === 'unknown'
        ? outlineBlocks(lines, placed, entry.blocks)
        : [];
  return {
    kind: entry.kind as OutlineKind,
    name: written?.text || header.trim() || entry.kind,
    detail: written && entry.kind !== 'unknown' ? entry.kind : '',
    ...findEntryExtent(lines, placed),
    selection: toFileSpan(line, written?.span ?? entry.header),
    children,
  };
}

function outlineSession(lines: readonly string[], placed: PlacedEntry, entry: SessionEntry): OutlineNode {
  const { date, clock, place, plan, blocks, header } = entry;
  const day = date ? (date.date ?? date.text) : 'session';
  const asked = plan && [plan.name.text, plan.week && `week ${plan.week}`, plan.day && `day ${plan.day}`];
  return {
    kind: 'session',
    name: clock === undefined ? day : `${day} ${clock}`,
    detail: [place?.text, asked?.filter(Boolean).join(' ')].filter(Boolean).join(', '),
    ...findEntryExtent(lines, placed),
    selection: toFileSpan(placed.line, date?.span ?? header),
    children: outlineBlocks(lines, placed, blocks),
  };
}

function outlineDays(lines: readonly string[], placed: PlacedEntry, { days }: PlanEntry): OutlineNode[] {
  return days.map((day: PlanDay, index) => ({
    kind: 'day',
    name: `Day ${day.number}${day.name ? ` ${day.name}` : ''}`,
    detail: '',
    ...findDayExtent(lines, placed, day, days[index + 1]),
    selection: toFileSpan(placed.line, day.span),
    children: outlineBlocks(lines, placed, day.blocks),
  }));
}

/** A block without a header is known by its movements. */
function outlineBlocks(
  lines: readonly string[],
  placed: PlacedEntry,
  blocks: readonly Block[],
): OutlineNode[] {
  return blocks.map((block) => {
    const movements = [...new Set(block.lines.map(({ name }) => name.text))].join(', ');
    const kind = block.letter === undefined ? block.kind : `${block.letter} ${block.kind}`;
    const isNamed = !block.implicit || movements === '';
    return {
      kind: 'block',
      name: isNamed ? kind : movements,
      detail: isNamed ? movements : '',
      ...findBlockExtent(lines, placed, block),
      selection: toFileSpan(placed.line, block.span),
      children: [],
    };
  });
}

function toFileSpan(entryLine: number, span: Span): Span {
  return { ...span, line: entryLine + span.line };
}
