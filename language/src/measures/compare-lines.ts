import type { Block, MovementLine } from '../model/entry.ts';
import type { Load, Measure } from '../model/quantity.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { findPosition } from '../practice/session-list.ts';
import { expandLine } from './expand-sets.ts';
import { identifyBlock } from './same-block.ts';
import { findSeriesKey } from './series-sets.ts';
import { measureAmount } from './set-work.ts';

/** What of a line is compared with the last time the movement was done. */
export interface LineFacts {
  /** Heaviest load, in grams of one implement; negative for help taken off body mass. Absent without kilograms. */
  readonly top: number | undefined;
  /** Sum of reps, seconds, metres or calories, both sides and all rounds; absent where a set is not known. */
  readonly amount: number | undefined;
  readonly measure: Measure;
  readonly sets: number;
}

export function describeLine(block: Block, line: MovementLine, athleteIndex: number): LineFacts | undefined {
  const sets = expandLine(block, block.lines.indexOf(line), athleteIndex).filter(
    (set) => set.amount?.kind !== 'skipped',
  );
  const amounts = sets.map((set) => (set.amount ? measureAmount(set.amount) : undefined));
  const measure = amounts.find((amount) => amount !== undefined)?.quantity.measure;
  if (!measure) return undefined;
  const comparable = amounts.every((amount) => amount?.quantity.measure === measure);
  const loads = sets.map((set) => gramsOf(set.group.load)).filter((grams) => grams !== undefined);
  return {
    top: loads.length === sets.length ? Math.max(...loads) : undefined,
    amount: comparable ? amounts.reduce((sum, amount) => sum + amount!.total, 0) : undefined,
    measure,
    sets: sets.length,
  };
}

/** Grams of one implement; body weight alone is 0, and no load at all counts as it. */
function gramsOf(load: Load | undefined): number | undefined {
  if (!load) return 0;
  if (load.kind === 'mass' && !load.high && !load.other && !load.chain && !load.band) return load.mass.grams;
  if (load.kind === 'bodyweight' && load.pin === undefined && !load.band) {
    return load.mass ? (load.sign === '-' ? -load.mass.grams : load.mass.grams) : 0;
  }
  return undefined;
}

/** Straight sets are compared with straight sets, a circuit's rounds with a circuit's, intervals with the same intervals. */
function kindOf(practice: Practice, block: Block): string {
  switch (block.kind) {
    case 'straight':
    case 'superset':
    case 'giant set':
      return 'straight';
    case 'circuit':
      return 'circuit';
    default:
      return identifyBlock(practice, block).frame;
  }
}

/** The last working line of the same movement, settings and implements, in a block of like kind, before a session. */
export function findLastLine(
  practice: Practice,
  record: SessionRecord,
  block: Block,
  line: MovementLine,
): { record: SessionRecord; block: Block; line: MovementLine } | undefined {
  const key = keyOf(practice, line);
  const kind = kindOf(practice, block);
  const movement = findSeriesKey(practice, line.name.text);
  const records = practice.sessionsWith(record.athlete, movement);
  for (let index = findPosition(records, record) - 1; index >= 0; index--) {
    const earlier = records[index]!;
    for (const other of earlier.entry.blocks) {
      const found = other.lines.find(
        (candidate) => candidate.purpose !== 'warmup' && keyOf(practice, candidate) === key,
      );
      if (found && kindOf(practice, other) === kind && describeLine(other, found, earlier.index))
        return { record: earlier, block: other, line: found };
    }
  }
  return undefined;
}

/** Behind the movement's key; of what the line alone says, since several sessions and practices may share it. */
const settingsOf = new WeakMap<MovementLine, string>();

function keyOf(practice: Practice, line: MovementLine): string {
  const known = settingsOf.get(line) ?? printSettings(line);
  settingsOf.set(line, known);
  return `${findSeriesKey(practice, line.name.text)}${known}`;
}

/** ` | box 40 cm | two implements`, or nothing. */
function printSettings(line: MovementLine): string {
  const modifiers = [...line.modifiers, ...line.cells.flatMap((cell) => cell.modifiers)];
  const settings = modifiers.flatMap((modifier) =>
    modifier.kind === 'setting' ? [modifier.text.toLowerCase()] : [],
  );
  const two = line.cells.some((cell) =>
    cell.sets.some(({ load }) => load?.kind === 'mass' && load.implements === 2),
  );
  return [...settings, ...(two ? ['two implements'] : [])].map((part) => ` | ${part}`).join('');
}
