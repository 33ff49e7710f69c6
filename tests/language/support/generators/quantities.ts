import fc, { type Arbitrary } from 'fast-check';
import type {
  Amount,
  Mass,
  MassUnit,
  Quantity,
  QuantityUnit,
} from '../../../../language/src/model/quantity.ts';
import { toQuantity } from '../../../../language/src/reading/build-values.ts';
import { toGrams } from '../../../../language/src/units/mass.ts';
import { maybe } from './names.ts';

export const whole = (min: number, max: number): Arbitrary<number> => fc.integer({ min, max });

/** Numbers with up to two decimals. */
export const decimal = (min: number, max: number): Arbitrary<number> =>
  fc.oneof(
    whole(min, max),
    fc.integer({ min: min * 100, max: max * 100 }).map((hundredths) => hundredths / 100),
  );

/** Whole seconds mostly; a part of a second is a time as well. */
export const seconds: Arbitrary<number> = fc.oneof(
  { weight: 5, arbitrary: whole(1, 900) },
  whole(3600, 80_000),
  whole(1, 200).map((tenths) => tenths / 10),
);

/** A time, or a range from a shorter to a longer one. */
export const secondsRange: Arbitrary<{ low: number; high: number | undefined }> = fc
  .tuple(seconds, maybe(whole(0, 600)))
  .map(([low, more]) => ({ low, high: more === undefined ? undefined : Math.round((low + more) * 10) / 10 }));

/** A rest or a finishing time, which the model keeps in seconds. */
export const time: Arbitrary<Quantity> = seconds.map((value) => toQuantity(value, 'clock'));

const AMOUNTS: Readonly<Record<QuantityUnit, Arbitrary<number>>> = {
  rep: whole(0, 40),
  s: decimal(1, 300),
  min: decimal(1, 90),
  h: decimal(1, 3),
  clock: whole(1, 8000),
  m: decimal(1, 2000),
  km: decimal(1, 40),
  yd: whole(1, 200),
  mi: decimal(1, 20),
  cal: whole(1, 200),
};

const unit = fc.constantFrom(
  ...([
    'rep',
    'rep',
    'rep',
    'rep',
    's',
    's',
    'min',
    'h',
    'clock',
    'm',
    'm',
    'km',
    'yd',
    'mi',
    'cal',
  ] as const),
);

const quantityIn = (unit: QuantityUnit): Arbitrary<Quantity> =>
  AMOUNTS[unit].map((amount) => toQuantity(amount, unit));

export const quantity: Arbitrary<Quantity> = unit.chain(quantityIn);

/** Two quantities of one measure, the smaller first; seconds and clock times may be mixed. */
const ascending: Arbitrary<readonly [Quantity, Quantity]> = unit
  .chain((first) =>
    (first === 's' ? fc.constantFrom('s', 'clock', 'min') : fc.constant(first)).chain((second) =>
      fc.tuple(quantityIn(first), quantityIn(second as QuantityUnit)),
    ),
  )
  .map(([one, other]) => (one.value <= other.value ? ([one, other] as const) : ([other, one] as const)))
  .filter(([low, high]) => low.value < high.value);

const perSide = fc.boolean();
const attempt = fc
  .tuple(whole(0, 10), whole(0, 10))
  .map(([made, missed]) => ({ made, tried: made + missed }));

const clusterParts = fc.oneof(
  fc.array(quantity, { minLength: 1, maxLength: 4 }),
  fc.tuple(quantity, whole(1, 10)).map(([part, count]) => Array<Quantity>(count).fill(part)),
);

export const amount: Arbitrary<Amount> = fc.oneof(
  { weight: 8, arbitrary: fc.record({ kind: fc.constant('quantity' as const), quantity, perSide }) },
  ascending.map(([left, right]) => ({ kind: 'sides' as const, left, right })),
  fc
    .tuple(ascending, perSide)
    .map(([[low, high], perSide]) => ({ kind: 'range' as const, low, high, perSide })),
  fc.record({ kind: fc.constant('at-least' as const), quantity, perSide }),
  fc.record({ kind: fc.constant('amrap' as const), perSide }),
  fc.tuple(attempt, perSide).map(([tries, perSide]) => ({ kind: 'attempt' as const, ...tries, perSide })),
  fc.record({ kind: fc.constant('cluster' as const), parts: clusterParts, perSide, rest: maybe(time) }),
  fc.constant({ kind: 'unrecorded' as const }),
  fc.constant({ kind: 'skipped' as const }),
);

export const massUnit: Arbitrary<MassUnit> = fc.constantFrom('kg', 'kg', 'kg', 'lb');

export const toMass = (written: number, unit: MassUnit): Mass => ({
  grams: toGrams(written, unit),
  written,
  unit,
});

export const massIn = (unit: MassUnit, min = 0, max = 300): Arbitrary<Mass> =>
  decimal(min, max).map((written) => toMass(written, unit));

export const mass: Arbitrary<Mass> = massUnit.chain((unit) => massIn(unit));

/** A body's mass, within its limits in both units. */
export const bodyMass: Arbitrary<Mass> = massUnit.chain((unit) => massIn(unit, 50, 350));
