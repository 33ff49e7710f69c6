import fc, { type Arbitrary } from 'fast-check';
import type { PlanDay, PlanEntry } from '../../../../language/src/model/entry.ts';
import { WEEKDAYS } from '../../../../language/src/reading/build-plan-facts.ts';
import { blocks } from './blocks.ts';
import { entryBase } from './definitions.ts';
import { maybe, NOWHERE, names, notes, placeName, plainName, writtenDate } from './names.ts';
import { decimal, whole } from './quantities.ts';

const span = fc.constant(NOWHERE);

const day: Arbitrary<PlanDay> = fc.record({
  number: whole(1, 14),
  name: maybe(plainName.map(({ text }) => text)),
  blocks,
  notes,
  span,
});

export const plan: Arbitrary<PlanEntry> = fc.record({
  kind: fc.constant('plan' as const),
  name: plainName,
  athletes: names,
  place: maybe(placeName),
  starts: maybe(writtenDate),
  follows: maybe(plainName),
  weeks: maybe(fc.record({ count: whole(1, 104), span })),
  deloads: fc.array(
    fc.record({ week: whole(1, 20), sets: maybe(decimal(1, 100)), load: maybe(decimal(1, 100)), span }),
    { maxLength: 2 },
  ),
  weekdays: fc.subarray([...WEEKDAYS]).map((days) => days.map((text) => ({ text, span: NOWHERE }))),
  alternate: maybe(fc.record({ perWeek: whole(1, 7) })),
  trainingMax: maybe(decimal(1, 100)),
  days: fc.array(day, { maxLength: 3 }),
  ...entryBase,
});
