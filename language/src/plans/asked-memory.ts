/** What plans asked for, for as long as all is the same that it rests on. */
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import { isAlike } from '../model/alike.ts';
import type { PlanDay, PlanEntry } from '../model/entry.ts';
import type { Movements } from '../practice/change-log.ts';
import { listKeysIn } from '../practice/mentions.ts';
import type { Practice } from '../practice/practice.ts';
import { type AskedBlock, askTurn } from './asked-work.ts';
import { type KnownMax, type Maxes, openMaxes } from './latest-max.ts';
import type { PlanTurn } from './plan-calendar.ts';

interface Asked {
  readonly settingsVersion: number;
  /** Of the practice, when it was last known to be right. */
  edition: number;
  readonly movements: Movements;
  /** All that it has of the days before. */
  readonly maxes: readonly AskedMax[];
  readonly blocks: readonly AskedBlock[];
}

interface AskedMax {
  readonly kind: keyof Maxes;
  readonly movement: string;
  readonly max: KnownMax | undefined;
}

const known = new WeakMap<PlanDay, Map<string, Asked>>();

/**
 * A turn of a plan as it is asked for on a day, in days since 1970-01-01. It rests on definitions, on the days before and
 * on the body's mass that day, and stays the same while those do: what is done that day changes nothing of it.
 */
export function findAsked(
  works: SessionWorks,
  plan: PlanEntry,
  turn: PlanTurn,
  { athlete, on, formula }: { athlete: string; on: number; formula: OneRepMaxFormula },
): readonly AskedBlock[] {
  const { practice } = works;
  const { edition, settingsVersion } = practice;
  const doneBefore = [...turn.doneBefore].map(([day, times]) => `${day.number} ${times}`);
  const id = [athlete, on, formula, works.bodyMassOn(athlete, on)?.grams, turn.week, ...doneBefore].join(
    '\n',
  );
  const ofDay = known.get(turn.day) ?? new Map<string, Asked>();
  known.set(turn.day, ofDay);
  const before = ofDay.get(id);
  const maxes = openMaxes(works, athlete, on, formula);
  if (before && isStillRight(practice, before, athlete, on, maxes)) {
    before.edition = edition;
    return before.blocks;
  }
  const asked: AskedMax[] = [];
  const blocks = askTurn(works, plan, turn, { athlete, on, formula, maxes: noteAsked(maxes, asked) });
  const movements = listKeysOfDay(practice, plan, turn.day);
  ofDay.set(id, { settingsVersion, edition, movements, maxes: asked, blocks });
  return blocks;
}

/** Most edits of a set change no max that a plan asks for. */
function isStillRight(
  practice: Practice,
  { settingsVersion, edition, movements, maxes: asked }: Asked,
  athlete: string,
  on: number,
  maxes: Maxes,
): boolean {
  if (edition === practice.edition) return true;
  if (settingsVersion !== practice.settingsVersion || practice.hasRedefined(edition, movements)) return false;
  if (!practice.hasChangedSince(edition, athlete, on - 1, movements)) return true;
  return asked.every(({ kind, movement, max }) => isAlike(maxes[kind](movement), max));
}

function noteAsked(maxes: Maxes, asked: AskedMax[]): Maxes {
  const note =
    (kind: keyof Maxes) =>
    (movement: string): KnownMax | undefined => {
      const max = maxes[kind](movement);
      if (!asked.some((other) => other.kind === kind && other.movement === movement))
        asked.push({ kind, movement, max });
      return max;
    };
  return { percent: note('percent'), target: note('target') };
}

/** Keys of the movements whose maxes a plan's day may ask for. */
export function listKeysOfDay(practice: Practice, plan: PlanEntry, day: PlanDay): ReadonlySet<string> {
  const lines = new Set(day.blocks.flatMap((block) => block.lines.map(({ span }) => span.line)));
  return listKeysIn(practice, plan, (line) => lines.has(line));
}
