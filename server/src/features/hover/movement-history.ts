import { isPreparation, listLines } from '@plimsoll/language/checks/check-context';
import { findCell } from '@plimsoll/language/measures/expand-sets';
import type { Amount, Cell, SetGroup } from '@plimsoll/language/model/quantity';
import type { SessionRecord } from '@plimsoll/language/practice/athlete';
import type { Practice } from '@plimsoll/language/practice/practice';
import { foldName } from '@plimsoll/language/text/names';

/** One day on which an athlete did a movement: its working sets as they were written. */
export interface MovementDay {
  readonly record: SessionRecord;
  readonly text: string;
}

export interface BestSet {
  readonly record: SessionRecord;
  readonly text: string;
}

export interface MovementHistory {
  /** Latest first. */
  readonly days: readonly MovementDay[];
  /** The heaviest set with a rep made, and of those the one with most reps. */
  readonly heaviest?: BestSet;
}

/** What an athlete did of a movement before a session, or ever where none is given. */
export function findMovementHistory(
  practice: Practice,
  name: string,
  athlete: string,
  before?: SessionRecord,
): MovementHistory {
  const key = practice.findMovement(name)?.key ?? foldName(name);
  const days: MovementDay[] = [];
  let best: { set: SetGroup; grams: number; reps: number; record: SessionRecord } | undefined;
  for (const record of listBefore(practice.sessionsOf(athlete), before)) {
    const cells = findCells(practice, record, key);
    const texts = cells.map((cell) => readCell(practice, record, cell)).filter((text) => text !== '');
    if (texts.length === 0) continue;
    days.unshift({ record, text: texts.join('; ') });
    for (const set of cells.flatMap(({ sets }) => sets)) {
      const [grams, reps] = [gramsOf(set), countReps(set.amount)];
      if (grams === undefined || reps < 1) continue;
      if (!best || grams > best.grams || (grams === best.grams && reps > best.reps)) {
        best = { set, grams, reps, record };
      }
    }
  }
  const heaviest = best && { record: best.record, text: readSet(practice, best.record, best.set) };
  return { days, ...(heaviest && { heaviest }) };
}

function listBefore(
  records: readonly SessionRecord[],
  before: SessionRecord | undefined,
): readonly SessionRecord[] {
  const at = records.findIndex(({ uri, line }) => uri === before?.uri && line === before.line);
  return at < 0 ? records : records.slice(0, at);
}

function findCells(practice: Practice, record: SessionRecord, key: string): Cell[] {
  return listLines(record.entry)
    .filter((one) => !isPreparation(one))
    .filter(({ line }) => (practice.findMovement(line.name.text)?.key ?? foldName(line.name.text)) === key)
    .flatMap(({ line }) => findCell(line, record.index) ?? []);
}

/** Mass in hand of one set: both implements together, added mass with body weight. */
function gramsOf({ load }: SetGroup): number | undefined {
  if (load?.kind === 'mass')
    return load.mass.grams + (load.other?.grams ?? (load.implements - 1) * load.mass.grams);
  if (load?.kind === 'bodyweight' && load.mass) return (load.sign === '-' ? -1 : 1) * load.mass.grams;
  return undefined;
}

function countReps(amount: Amount | undefined): number {
  switch (amount?.kind) {
    case 'quantity':
      return amount.quantity.value;
    case 'sides':
      return Math.min(amount.left.value, amount.right.value);
    case 'attempt':
      return amount.made;
    case 'cluster':
      return amount.parts.reduce((sum, { value }) => sum + value, 0);
    default:
      return 0;
  }
}

function readCell(practice: Practice, record: SessionRecord, { sets }: Cell): string {
  const [first, last] = [sets[0], sets.at(-1)];
  return first && last ? readText(practice, record, first.span.line, first.span.start, last.span.end) : '';
}

/** A set whose load stands at a later one is shown with it. */
function readSet(
  practice: Practice,
  record: SessionRecord,
  { span, load, ownLoad, amountSpan }: SetGroup,
): string {
  const text = readText(practice, record, span.line, span.start, span.end);
  if (ownLoad || load?.kind !== 'mass') return text;
  const amount = readText(practice, record, amountSpan.line, amountSpan.start, amountSpan.end);
  return `${amount} @ ${load.implements === 2 ? '2x' : ''}${load.mass.written} ${load.mass.unit}`;
}

/** A span of a session, as it is written in its file. */
function readText(
  practice: Practice,
  { uri, line }: SessionRecord,
  entryLine: number,
  start: number,
  end: number,
): string {
  return practice.file(uri)?.lines[line + entryLine]?.slice(start, end) ?? '';
}
