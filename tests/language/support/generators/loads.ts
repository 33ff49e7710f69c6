import fc, { type Arbitrary } from 'fast-check';
import type { Load, MassUnit } from '../../../../language/src/model/quantity.ts';
import { maybe, movementName } from './names.ts';
import { decimal, mass, massIn, massUnit, whole } from './quantities.ts';

const band = fc.constantFrom('red', 'blue', 'thick black', 'grün', 'красная');

const massLoad = (unit: MassUnit): Arbitrary<Load> =>
  fc
    .tuple(
      massIn(unit),
      fc.oneof(
        { weight: 4, arbitrary: fc.constantFrom({ implements: 1 as const }, { implements: 2 as const }) },
        massIn(unit).map((other) => ({ implements: 2 as const, other })),
        fc.record({ implements: fc.constantFrom(1 as const, 2 as const), high: massIn(unit, 301, 400) }),
      ),
      fc.oneof(
        { weight: 4, arbitrary: fc.constant({}) },
        mass.map((chain) => ({ chain })),
        band.map((band) => ({ band })),
      ),
    )
    .map(([mass, hands, added]) => ({ kind: 'mass' as const, mass, ...hands, ...added }));

const sign = fc.constantFrom('+' as const, '-' as const);

const bodyweight: Arbitrary<Load> = fc
  .oneof(
    fc.constant({}),
    fc.record({ sign, mass }),
    fc.record({ sign, pin: whole(1, 20) }),
    fc.record({ sign, band }),
  )
  .map((extra) => ({ kind: 'bodyweight' as const, ...extra }));

const setting: Arbitrary<Load> = fc
  .oneof(
    fc.record({ setting: fc.constant('height' as const), value: decimal(10, 120) }),
    fc.record({ setting: fc.constant('power' as const), value: whole(0, 900) }),
    fc.record({ setting: fc.constant('speed' as const), value: decimal(1, 25) }),
    fc.record({
      setting: fc.constant('pace' as const),
      value: whole(1, 900),
      metres: fc.constantFrom(500, 1000, 1609.344),
    }),
  )
  .map((set) => ({ kind: 'setting' as const, ...set }));

const percent: Arbitrary<Load> = fc.record({
  kind: fc.constant('percent' as const),
  low: decimal(1, 70),
  high: maybe(decimal(71, 110)),
  of: maybe(movementName),
});

const target: Arbitrary<Load> = fc.record({
  kind: fc.constant('target' as const),
  scale: fc.constantFrom('rpe' as const, 'rir' as const),
  low: whole(0, 5),
  high: maybe(whole(6, 10)),
});

export const load: Arbitrary<Load> = fc.oneof(
  { weight: 8, arbitrary: massUnit.chain(massLoad) },
  fc.tuple(mass, mass).map(([left, right]) => ({ kind: 'sides' as const, left, right })),
  { weight: 3, arbitrary: bodyweight },
  decimal(1, 100).map((percent) => ({ kind: 'bodyweight-share' as const, percent })),
  fc.record({ kind: fc.constant('pin' as const), pin: whole(0, 30), plus: maybe(mass) }),
  band.map((band) => ({ kind: 'band' as const, band })),
  { weight: 2, arbitrary: setting },
  { weight: 3, arbitrary: percent },
  fc.oneof(
    decimal(1, 50).map((percent) => ({ kind: 'offset' as const, percent })),
    mass.map((mass) => ({ kind: 'offset' as const, mass })),
  ),
  target,
  fc.constant({ kind: 'unrecorded' as const }),
);
