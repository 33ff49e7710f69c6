import { findNearestMass, hasInventory } from '../checks/inventory.ts';
import { findMaxOn } from '../measures/maxes.ts';
import { takeWeek } from '../measures/planned-sets.ts';
import type { Block, MovementLine, PlanEntry } from '../model/entry.ts';
import type { Amount, Cell, Load, Mass, MassUnit, Modifier, SetGroup, Step } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import { fromGrams, toGrams } from '../units/mass.ts';
import { roundTo } from '../units/number.ts';
import { keyOf } from './history.ts';
import { printCell } from './print-cell.ts';
import { findSpotPlace, type Spot, type Trainee } from './spot.ts';

/** What the plan asks for on the day that the session names. */
export interface PlannedDay {
  readonly plan: PlanEntry;
  readonly week: number;
  /** The day's blocks as they stand in that week: one cell a line. */
  readonly blocks: readonly Block[];
}

export function findPlannedDay({ practice, placed }: Spot): PlannedDay | undefined {
  const asked = placed?.entry.kind === 'session' ? placed.entry.plan : undefined;
  const plan = asked && practice.findPlan(asked.name.text)?.entry;
  const day = plan?.days.find(({ number }) => number === asked?.day);
  if (!plan || !day) return undefined;
  const week = asked?.week ?? 1;
  return { plan, week, blocks: takeWeek(day, week, (name) => keyOf(practice, name)) };
}

/** The planned line of a movement, a working one unless a preparation is asked. */
export function findPlannedLine(
  { practice }: Spot,
  planned: PlannedDay | undefined,
  key: string,
  preparing: boolean,
): MovementLine | undefined {
  return planned?.blocks
    .flatMap(({ lines }) => lines)
    .find((line) => (line.purpose === 'warmup') === preparing && keyOf(practice, line.name.text) === key);
}

/**
 * The sets of a planned line in a session's words: `3x5 @ 75%` → `3x5 @ 105 kg`, of the max valid on the day and
 * rounded to what the place can load. Of a range it is the lower end; `each week` steps are taken, once for each week
 * that was no deload. What only the day can tell (a target, an amrap, a percentage without a max) is `?`.
 */
export function writePlanned(
  spot: Spot,
  trainee: Trainee,
  { plan, week }: PlannedDay,
  line: MovementLine,
): { readonly text: string; readonly week: number; readonly sets: readonly SetGroup[] } | undefined {
  const cell = line.cells[0];
  if (!cell || cell.sets.length === 0) return undefined;
  const movement = spot.practice.findMovement(line.name.text);
  const modifiers = [...cell.modifiers, ...line.modifiers];
  const deload = plan.deloads.find((candidate) => candidate.week === week);
  const weeksBefore = Array.from({ length: week - 1 }, (_, index) => index + 1);
  const taken = weeksBefore.filter((one) => !plan.deloads.some((other) => other.week === one)).length;
  const steps = modifiers.filter(
    (modifier): modifier is Step =>
      modifier.kind === 'step' && !modifier.onRest && !modifier.whenFull && modifier.each === 'week',
  );
  const frame = {
    spot,
    trainee,
    plan,
    line,
    movement,
    steps,
    taken,
    loadShare: deload?.load,
    setShare: deload?.sets,
  };
  let top: Mass | undefined;
  const sets = cell.sets.map((set): SetGroup => {
    const load = set.load && writeLoad(frame, set.load, top);
    if (load?.kind === 'mass' && (!top || load.mass.grams > top.grams)) top = load.mass;
    return {
      ...set,
      count: writeCount(frame, set.count, cell),
      counted: set.counted || writeCount(frame, set.count, cell) > 1,
      ...(set.amount && { amount: writeAmount(frame, set.amount) }),
      ...(load && { load }),
    };
  });
  return { text: printCell(sets, modifiers.flatMap(writeModifier)), week, sets };
}

interface Frame {
  readonly spot: Spot;
  readonly trainee: Trainee;
  readonly plan: PlanEntry;
  readonly line: MovementLine;
  readonly movement: Movement | undefined;
  readonly steps: readonly Step[];
  /** How often a week's step was taken before. */
  readonly taken: number;
  /** Percent of the deload, where this week is one. */
  readonly loadShare: number | undefined;
  readonly setShare: number | undefined;
}

/** A value with its week's steps in one of those units. */
function takeSteps({ steps, taken }: Frame, value: number, units: readonly Step['unit'][]): number {
  let stepped = value;
  for (const { unit, sign, amount, bound } of steps) {
    if (!units.includes(unit)) continue;
    stepped += sign * amount * taken;
    if (bound !== undefined) stepped = sign > 0 ? Math.min(stepped, bound) : Math.max(stepped, bound);
  }
  return Math.max(0, stepped);
}

/** A step of `%` multiplies a weight. */
function multiplySteps({ steps, taken }: Frame): number {
  return steps
    .filter(({ unit }) => unit === '%')
    .reduce((product, { sign, amount }) => product * (1 + (sign * amount) / 100) ** taken, 1);
}

/** A deload takes its share, rounds up, and never leaves less than one. */
function writeCount(frame: Frame, count: number, { sets }: Cell): number {
  if (sets.length > 1) return count;
  const stepped = Math.max(1, takeSteps(frame, count, ['set']));
  return frame.setShare === undefined ? stepped : Math.max(1, Math.ceil((stepped * frame.setShare) / 100));
}

function writeAmount(frame: Frame, amount: Amount): Amount {
  switch (amount.kind) {
    case 'range':
      return writeAmount(frame, { kind: 'quantity', quantity: amount.low, perSide: amount.perSide });
    case 'at-least':
      return writeAmount(frame, { ...amount, kind: 'quantity' });
    case 'amrap':
      return { kind: 'unrecorded' };
    case 'quantity': {
      const { quantity } = amount;
      const unit = quantity.unit === 'clock' ? 's' : quantity.unit;
      if (unit === 'h' || unit === 'mi') return amount;
      const written = takeSteps(frame, quantity.written, [unit]);
      return { ...amount, quantity: { ...quantity, written } };
    }
    default:
      return amount;
  }
}

function writeLoad(frame: Frame, load: Load, top: Mass | undefined): Load {
  switch (load.kind) {
    case 'percent':
      return writePercent(frame, load);
    case 'target':
      return { kind: 'unrecorded' };
    case 'offset': {
      if (!top) return { kind: 'unrecorded' };
      const off = load.mass?.grams ?? (top.grams * (load.percent ?? 0)) / 100;
      return toMassLoad(frame, top.grams - off, top.unit, 1);
    }
    case 'mass': {
      if (load.other || load.chain || load.band) return load;
      const { unit } = load.mass;
      const written = takeSteps(frame, load.mass.written, [unit]) * multiplySteps(frame);
      const isSame = written === load.mass.written && frame.loadShare === undefined;
      if (isSame) return { kind: 'mass', mass: load.mass, implements: load.implements };
      const grams = (toGrams(written, unit) * (frame.loadShare ?? 100)) / 100;
      return toMassLoad(frame, grams, unit, load.implements);
    }
    default:
      return load;
  }
}

function writePercent(frame: Frame, { low, of }: Extract<Load, { kind: 'percent' }>): Load {
  const { spot, trainee, plan, line } = frame;
  const { formula } = spot.options;
  const name = of?.text ?? line.name.text;
  const max = findMaxOn(spot.works, trainee.athlete, name, trainee.day, formula ? { formula } : {});
  // An added load is no share of a whole, and of a max that is off no load can be made.
  if (!max || max.added || max.result.value === undefined || max.result.value <= 0)
    return { kind: 'unrecorded' };
  const percent = takeSteps(frame, low, ['%']);
  const shares = [percent, plan.trainingMax ?? 100, frame.loadShare ?? 100];
  const grams = shares.reduce((product, share) => (product * share) / 100, max.result.value * 1000);
  const unit = spot.practice.findAthlete(trainee.athlete)?.entry.units ?? 'kg';
  return toMassLoad(frame, grams, unit, max.perHand ? 2 : 1);
}

/** Without an inventory a load is rounded to what most bars and dumbbells go by (common practice). */
const USUAL_STEP: Readonly<Record<MassUnit, number>> = { kg: 2.5, lb: 5 };

function toMassLoad({ spot, movement }: Frame, grams: number, unit: MassUnit, count: 1 | 2): Load {
  const place = findSpotPlace(spot);
  const wanted: Mass = { grams: Math.round(grams), written: fromGrams(grams, unit), unit };
  const nearest =
    place && movement && hasInventory(place.entry)
      ? findNearestMass(place.entry, movement, wanted)
      : undefined;
  const [below, above] = [nearest?.below, nearest?.above];
  // Of two that are as near the upper one is taken, as when loads are rounded.
  const isLower = below && above && wanted.grams - below.grams < above.grams - wanted.grams;
  const found = isLower ? below : (above ?? below);
  const shown = found?.unit ?? unit;
  const step = USUAL_STEP[unit];
  const written = found
    ? roundTo(fromGrams(found.grams, shown), 2)
    : Math.max(step, Math.round(fromGrams(grams, unit) / step) * step);
  return {
    kind: 'mass',
    mass: { grams: found?.grams ?? toGrams(written, unit), written, unit: shown },
    implements: count,
  };
}

/** A session keeps what was set; steps are the plan's. */
function writeModifier(modifier: Modifier): Modifier[] {
  switch (modifier.kind) {
    case 'tempo':
    case 'setting':
      return [modifier];
    case 'rest':
      return [{ kind: 'rest', low: modifier.low, span: modifier.span }];
    default:
      return [];
  }
}
