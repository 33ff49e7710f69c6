import fc, { type Arbitrary } from 'fast-check';
import type { Modifier, Step, StepUnit } from '../../../../language/src/model/quantity.ts';
import { toQuantity } from '../../../../language/src/reading/build-values.ts';
import { maybe, movementName, NOWHERE, shortText } from './names.ts';
import { decimal, secondsRange, whole } from './quantities.ts';

const STEP_UNITS: readonly StepUnit[] = [
  'rep',
  'set',
  'round',
  'kg',
  'lb',
  '%',
  'rpe',
  'rir',
  's',
  'min',
  'h',
  'm',
  'km',
  'yd',
  'mi',
  'cal',
];
const stepUnit = fc.constantFrom(...STEP_UNITS);
const span = fc.constant(NOWHERE);

const bound = fc.oneof(
  fc.constant({}),
  decimal(1, 200).map((bound) => ({ bound })),
  fc.record({ bound: decimal(1, 200), boundUnit: stepUnit }),
);

const bareStep = fc
  .tuple(
    fc.record({
      kind: fc.constant('step' as const),
      sign: fc.constantFrom(1 as const, -1 as const),
      amount: fc.oneof(fc.constant(1), decimal(0, 20)),
      unit: stepUnit,
      each: maybe(fc.constantFrom('round' as const, 'session' as const, 'week' as const, 'cycle' as const)),
      from: maybe(whole(1, 20)),
      span,
    }),
    bound,
  )
  .map(([step, bound]) => ({ ...step, ...bound, onRest: false, whenFull: false }));

const step: Arbitrary<Step> = fc
  .tuple(bareStep, fc.boolean())
  .map(([step, whenFull]) => ({ ...step, whenFull }));

/** `+1 round each week` */
export const roundStep: Arbitrary<Step> = bareStep.map((step) => ({ ...step, unit: 'round' }));

/** `rest -10 s each week` */
export const restStep: Arbitrary<Step> = bareStep.map((step) => ({ ...step, onRest: true }));

const restRange = secondsRange.map(({ low, high }) => ({
  kind: 'rest' as const,
  low: toQuantity(low, 'clock'),
  ...(high !== undefined && { high: toQuantity(high, 'clock') }),
  span: NOWHERE,
}));

const phase = fc.oneof(whole(0, 9), fc.constant('X' as const));

export const modifier: Arbitrary<Modifier> = fc.oneof(
  fc.record({
    kind: fc.constant('tempo' as const),
    phases: fc.array(phase, { minLength: 3, maxLength: 4 }),
    span,
  }),
  restRange,
  fc.record({ kind: fc.constant('setting' as const), text: shortText, span }),
  fc.record({ kind: fc.constant('pain' as const), score: whole(0, 10), where: maybe(shortText), span }),
  fc.record({ kind: fc.constant('instead' as const), of: movementName, span }),
  fc.record({ kind: fc.constant('stall' as const), misses: whole(1, 5), step: bareStep, span }),
  { weight: 2, arbitrary: step },
  restStep,
);
