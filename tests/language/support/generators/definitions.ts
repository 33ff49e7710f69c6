import fc, { type Arbitrary } from 'fast-check';
import { addDays } from '../../../../language/src/calendar/iso-date.ts';
import type {
  AthleteEntry,
  ExerciseEntry,
  MassRange,
  PlaceEntry,
  UnitsEntry,
} from '../../../../language/src/model/entry.ts';
import type { MassUnit } from '../../../../language/src/model/quantity.ts';
import { load } from './loads.ts';
import {
  freeText,
  isoDate,
  maybe,
  movementName,
  NOWHERE,
  names,
  notes,
  placeName,
  plainName,
  reason,
  strays,
  written,
} from './names.ts';
import { bodyMass, decimal, mass, massIn, massUnit, toMass, whole } from './quantities.ts';
import { setGroup } from './sets.ts';

const span = fc.constant(NOWHERE);
const few = <T>(value: Arbitrary<T>): Arbitrary<T[]> => fc.array(value, { maxLength: 3 });

/** What every entry has. */
export const entryBase = {
  notes,
  strays,
  lineCount: fc.constant(1),
  header: span,
  problems: fc.constant([]),
  ignores: fc.constant([]),
};

export const units: Arbitrary<UnitsEntry> = fc.record({
  kind: fc.constant('units' as const),
  unit: maybe(fc.constantFrom('kg' as const, 'lb' as const)),
  ...entryBase,
});

const fraction = fc
  .tuple(whole(1, 5), whole(1, 5))
  .map(([over, more]) => [over, over + more] as const satisfies readonly [number, number]);

const muscle = fc
  .record({ name: plainName, fraction: maybe(fraction) })
  .map(({ name, fraction }) =>
    fraction ? { name, share: fraction[0] / fraction[1], fraction } : { name, share: 1 },
  );

export const exercise: Arbitrary<ExerciseEntry> = fc.record({
  kind: fc.constant('exercise' as const),
  name: movementName,
  pattern: maybe(plainName),
  work: maybe(plainName),
  position: maybe(plainName),
  trunk: few(
    fc.record({ demand: fc.constantFrom('resists' as const, 'moves' as const), direction: plainName }),
  ),
  muscles: few(muscle),
  needs: names,
  repMoves: maybe(fc.constantFrom('one' as const, 'both' as const)),
  bodyShare: maybe(
    fc
      .record({ percent: decimal(0, 100), source: maybe(reason) })
      .map((share) => ({ ...share, share: share.percent / 100, span: NOWHERE })),
  ),
  countsContacts: fc.boolean(),
  also: names,
  easier: names,
  harder: names,
  setups: few(written(freeText)),
  cues: few(written(freeText)),
  cautions: few(written(freeText)),
  ...entryBase,
});

const rangeIn = (unit: MassUnit, stepUnit: MassUnit): Arbitrary<MassRange> =>
  fc.record({
    low: massIn(unit, 0, 40),
    high: massIn(unit, 40, 200),
    step: fc.oneof(fc.constant(toMass(1, unit)), massIn(stepUnit, 1, 10)),
    sold: maybe(fc.constantFrom('pairs' as const, 'singles' as const)),
  });

const massRange = fc.tuple(massUnit, massUnit).chain(([unit, stepUnit]) => rangeIn(unit, stepUnit));

export const place: Arbitrary<PlaceEntry> = fc.record({
  kind: fc.constant('place' as const),
  name: placeName,
  bars: few(mass),
  plates: few(fc.record({ count: whole(1, 20), mass })),
  collars: maybe(mass),
  dumbbells: few(massRange),
  kettlebells: few(mass),
  stacks: few(fc.tuple(plainName, massRange).map(([name, range]) => ({ ...range, name }))),
  has: names,
  ...entryBase,
});

const daysAway = fc.oneof(
  isoDate.map((from) => ({ from })),
  fc.tuple(isoDate, whole(0, 60)).map(([from, days]) => ({ from, to: addDays(from, days) })),
);

const away = fc.tuple(daysAway, maybe(reason)).map(([days, reason]) => ({ ...days, reason, span: NOWHERE }));

export const athlete: Arbitrary<AthleteEntry> = fc.record({
  kind: fc.constant('athlete' as const),
  name: plainName,
  born: maybe(whole(1930, 2015)),
  sex: maybe(fc.constantFrom('female' as const, 'male' as const)),
  units: maybe(fc.constantFrom('kg' as const, 'lb' as const)),
  weighIns: few(fc.record({ mass: bodyMass, date: isoDate, span })),
  maxes: few(
    fc
      .record({ movement: movementName, load: maybe(load), date: maybe(isoDate), span })
      .map((max) => (max.load ? max : { ...max, date: undefined })),
  ),
  goals: few(
    fc
      .record({ movement: movementName, set: maybe(setGroup), by: maybe(isoDate), span })
      .map((goal) => (goal.set ? goal : { ...goal, by: undefined })),
  ),
  retests: few(
    fc
      .record({ movement: movementName, masses: few(mass), date: maybe(isoDate), span })
      .map((retest) => (retest.masses.length > 0 ? retest : { ...retest, date: undefined })),
  ),
  avoid: few(fc.record({ what: movementName, until: maybe(isoDate), reason: maybe(reason), span })),
  away: few(away),
  screened: few(fc.record({ date: isoDate, by: maybe(reason), span })),
  ...entryBase,
});
