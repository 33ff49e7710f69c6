import type { PlacedEntry, SessionEntry } from '../model/entry.ts';
import type { Span } from '../model/source.ts';
import { scanLine } from '../syntax/line-scanner.ts';
import type { Practice } from './practice.ts';

/** What a session's header says of its plan, and where that stands. Lines count from the first of their file. */
export interface PlanLink {
  readonly from: Span;
  readonly uri: string;
  readonly line: number;
  readonly column: number;
  /** `Wicker Base, day 1 Squat`. */
  readonly text: string;
}

/** From each session of a file to the day of the plan that it followed, or to the plan where it names no day. */
export function listPlanLinks(practice: Practice, uri: string): readonly PlanLink[] {
  const file = practice.file(uri);
  return (file?.model.entries ?? []).flatMap((placed) => {
    const link = placed.entry.kind === 'session' && linkPlan(practice, file!.lines, placed, placed.entry);
    return link ? [link] : [];
  });
}

function linkPlan(
  practice: Practice,
  lines: readonly string[],
  { line }: PlacedEntry,
  { plan: asked }: SessionEntry,
): PlanLink | undefined {
  const plan = asked && practice.findPlan(asked.name.text);
  if (!plan) return undefined;
  const { start } = asked.name.span;
  const tokens = scanLine(lines[line]!, 'session').tokens.filter(({ kind }) => kind !== 'COMMENT');
  const day = plan.entry.days.find(({ number }) => number === asked.day);
  const span = day?.span ?? plan.entry.name!.span;
  const words = day ? [`day ${day.number}`, day.name].filter(Boolean).join(' ') : undefined;
  return {
    from: { line, start, end: tokens.at(-1)!.end },
    uri: plan.uri,
    line: plan.line + span.line,
    column: span.start,
    text: words ? `${plan.name}, ${words}` : plan.name,
  };
}
