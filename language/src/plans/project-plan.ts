/** A plan's line becomes, for each week and day, the sets that its athlete is to do: the numbers a coach would work out. */
import { countRounds } from '../measures/expand-sets.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { SessionWorks } from '../measures/session-work.ts';
import type { Block, PlanEntry } from '../model/entry.ts';
import type { Load, MassUnit, Rating, SetGroup } from '../model/quantity.ts';
import { type Maxes, openMaxes } from './latest-max.ts';
import { clamp, followSteps, moveSet } from './move-amount.ts';
import type { PlanTurn } from './plan-calendar.ts';
import type {
  ProjectedBlock,
  ProjectedDay,
  ProjectedLine,
  ProjectedLoad,
  ProjectedSet,
} from './projected.ts';
import { findTop, resolveLoad } from './resolve-load.ts';
import type { TakenStep } from './step-kinds.ts';
import type { LoadContext } from './wanted-load.ts';
import { takeTurn, type WeekLine } from './week-blocks.ts';

export interface ProjectionOptions {
  /** Folded name. */
  readonly athlete: string;
  /** Days since 1970-01-01: counts where the plan has no dates. */
  readonly today: number;
  readonly unit: MassUnit;
  readonly formula: OneRepMaxFormula;
  /** Another day than the plan's, for a session that is written late. */
  readonly on?: number;
  /** For whoever wants to know which of that day's maxes are asked for. */
  readonly maxes?: Maxes;
}

/** One day of a plan in one of its weeks. */
export function projectTurn(
  works: SessionWorks,
  plan: PlanEntry,
  turn: PlanTurn,
  options: ProjectionOptions,
): ProjectedDay {
  const { practice } = works;
  const place = plan.place && practice.findPlace(plan.place.text)?.entry;
  const { athlete, formula } = options;
  const day = options.on ?? turn.date ?? options.today;
  const context: LoadContext = {
    works,
    athlete,
    day,
    maxes: options.maxes ?? openMaxes(works, athlete, day, formula),
    place,
    unit: practice.findAthlete(athlete)?.entry.units ?? options.unit,
    formula,
    trainingMax: plan.trainingMax,
  };
  const toKey = (name: string): string => practice.keyOf(name);
  const blocks = takeTurn(plan, turn, toKey).map(({ block, lines }): ProjectedBlock => {
    const projected = lines.map((line) => projectLine(context, block, turn, line));
    return { block: { ...block, lines: projected.map(({ line }) => line) }, lines: projected };
  });
  return { turn, blocks };
}

function projectLine(context: LoadContext, block: Block, turn: PlanTurn, weekLine: WeekLine): ProjectedLine {
  const { line, source, steps } = weekLine;
  const cell = line.cells[0];
  if (!cell) return { line, source, sets: [] };
  const movement = context.works.practice.findMovement(line.name.text);
  // A max is tested at full load, in a deload too; a warm-up is as it is written.
  const isLightened = line.purpose === 'work' && block.kind !== 'warmup' && block.kind !== 'cooldown';
  const share = isLightened ? turn.deload?.load : undefined;
  const perRound = expandRounds(cell.sets, steps.eachRound, countRounds(block), block.passes);
  const ask = (
    { amount }: Pick<SetGroup, 'amount'>,
    load: Load,
    taken: readonly TakenStep[],
    top: number | undefined,
  ): ProjectedLoad =>
    resolveLoad(context, {
      name: line.name.text,
      movement,
      amount,
      load,
      steps: taken,
      share,
      top,
    });
  const asked = perRound.map(({ group, taken }) => {
    const all = [...steps.taken, ...taken];
    const load =
      group.load && group.load.kind !== 'offset' ? ask(group, group.load, all, undefined) : undefined;
    return { group, all, load };
  });
  const top = findTop(asked.map(({ load }) => load));
  const resolved = asked.map(({ group, all, load: known }): ProjectedSet => {
    const { loadText: _text, ...kept } = group;
    const load = known ?? (group.load && ask(group, group.load, all, top));
    const drops = group.drops.map((drop) => ({
      drop,
      load: drop.load && ask(drop, drop.load, followSteps(all, group.load), top),
    }));
    return {
      group: {
        ...kept,
        ratings: moveRatings(group.ratings, all),
        ...(load && { load: load.load }),
        drops: drops.map(({ drop, load: ofDrop }) => ({ ...drop, ...(ofDrop && { load: ofDrop.load }) })),
      },
      ...(load && { load }),
      dropLoads: drops.flatMap((each) => each.load ?? []),
    };
  });
  const shown = shareEqualLoads(resolved);
  const projected = { ...line, cells: [{ ...cell, sets: shown.map(({ group }) => group) }] };
  return { source, line: projected, sets: shown };
}

interface RoundSet {
  readonly group: SetGroup;
  readonly taken: readonly TakenStep[];
}

/** `12, +1 rep each round` in three rounds: 12, 13, 14, each written out. */
function expandRounds(
  groups: readonly SetGroup[],
  eachRound: readonly TakenStep['step'][],
  rounds: number | undefined,
  passes: number,
): RoundSet[] {
  if (eachRound.length === 0 || rounds === undefined) return groups.map((group) => ({ group, taken: [] }));
  const written = groups.flatMap((group) => Array.from({ length: group.count }, () => group));
  const count = written.length === 1 ? rounds : written.length;
  return Array.from({ length: count }, (_, index): RoundSet => {
    const group = { ...(written.length === 1 ? written[0]! : written[index]!), count: 1, counted: false };
    const round = count > rounds ? Math.floor(index / passes) : index;
    const taken = eachRound.map((step) => ({ step, times: round }));
    return { group: moveSet(group, taken), taken };
  });
}

function moveRatings(ratings: readonly Rating[], taken: readonly TakenStep[]): Rating[] {
  return ratings.map((rating) => {
    const steps = taken.filter(({ step }) => step.unit === rating.scale);
    const move = (value: number): number =>
      Math.min(
        10,
        Math.max(
          0,
          steps.reduce((moved, { step, times }) => clamp(moved, step, times), value),
        ),
      );
    return {
      ...rating,
      value: move(rating.value),
      ...(rating.high !== undefined && { high: move(rating.high) }),
    };
  });
}

/** The sets before the first load share it, where it is the same: `5, 5 @ 80 kg`; after that each writes its own. */
function shareEqualLoads(sets: readonly ProjectedSet[]): ProjectedSet[] {
  const keys = sets.map(({ group }) => JSON.stringify(group.load ?? null));
  const isShared = (index: number): boolean =>
    keys.slice(0, index + 2).every((key) => key === keys[0]) &&
    index + 1 < keys.length &&
    !sets[index]!.group.ownLoad;
  return sets.map((set, index) => ({
    ...set,
    group: { ...set.group, ownLoad: set.group.load !== undefined && !isShared(index) },
  }));
}
