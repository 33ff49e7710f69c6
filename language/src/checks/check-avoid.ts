import { toDayNumber } from '../calendar/iso-date.ts';
import { findCell } from '../measures/expand-sets.ts';
import type { AthleteEntry, MovementLine, PlanEntry, SessionEntry } from '../model/entry.ts';
import type { Problem } from '../model/source.ts';
import type { Athlete } from '../practice/athlete.ts';
import type { Movement } from '../practice/movement.ts';
import type { Practice } from '../practice/practice.ts';
import { foldName } from '../text/names.ts';
import { CHECKS } from './catalogue.ts';
import { type CheckContext, listLines, NO_PROBLEMS, problem } from './check-context.ts';

/** When an athlete began to avoid something is not written: what was done long before is no slip. */
const { recent: RECENT_DAYS } = CHECKS['to-avoid'].numbers;

interface Trainee {
  readonly athlete: Athlete;
  readonly index: number;
  readonly day: number;
}

/** Movements that an athlete is to avoid on that day, by name or by pattern. A plan is judged from its first day. */
export function checkAvoid(entry: SessionEntry | PlanEntry, context: CheckContext): Iterable<Problem> {
  const all = entry.kind === 'session' ? listTrainees(context) : listPlanned(entry, context);
  const trainees = all.filter(({ athlete, day }) => athlete.entry.avoid.some((each) => isValid(each, day)));
  return trainees.length === 0 ? NO_PROBLEMS : findAllAvoided(entry, trainees, context.practice);
}

function* findAllAvoided(
  entry: SessionEntry | PlanEntry,
  trainees: readonly Trainee[],
  practice: Practice,
): Iterable<Problem> {
  for (const { line } of listLines(entry)) {
    const movement = practice.findMovement(line.name.text);
    for (const { athlete, index, day } of trainees) {
      if (!movement || !isDone(line, entry.kind === 'plan' ? 0 : index)) continue;
      const avoided = findAvoided(athlete.entry, movement, day, practice);
      if (!avoided) continue;
      const until = avoided.until ? ` until ${avoided.until}` : '';
      const reason = avoided.reason ? ` (${avoided.reason})` : '';
      const message = `${athlete.name} is to avoid ${avoided.what.text}${until}${reason}: choose another movement`;
      yield problem('to-avoid', line.name.span, message);
      break;
    }
  }
}

function listTrainees({ practice, records, today }: CheckContext): Trainee[] {
  const since = toDayNumber(today) - RECENT_DAYS;
  return records.flatMap(({ athlete, index, day }) => {
    const defined = day < since ? undefined : practice.findAthlete(athlete);
    return defined ? [{ athlete: defined, index, day }] : [];
  });
}

function listPlanned({ athletes, starts }: PlanEntry, { practice, today }: CheckContext): Trainee[] {
  return athletes.flatMap((name, index) => {
    const athlete = practice.findAthlete(name.text);
    return athlete ? [{ athlete, index, day: toDayNumber(starts?.date ?? today) }] : [];
  });
}

function isDone(line: MovementLine, index: number): boolean {
  const sets = findCell(line, index)?.sets ?? [];
  return sets.length === 0 || sets.some(({ amount }) => amount?.kind !== 'skipped');
}

function isValid({ until }: Pick<AthleteEntry['avoid'][number], 'until'>, day: number): boolean {
  return !until || toDayNumber(until) >= day;
}

export function findAvoided(
  { avoid }: AthleteEntry,
  movement: Movement,
  day: number,
  practice: Practice,
): AthleteEntry['avoid'][number] | undefined {
  const pattern = movement.entry.pattern && foldName(movement.entry.pattern.text);
  return avoid.find((each) => {
    if (!isValid(each, day)) return false;
    return (
      foldName(each.what.text) === pattern || practice.findMovement(each.what.text)?.key === movement.key
    );
  });
}
