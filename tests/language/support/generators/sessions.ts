import fc, { type Arbitrary } from 'fast-check';
import type {
  PerAthlete,
  SessionEntry,
  SessionFacts,
  UnknownEntry,
} from '../../../../language/src/model/entry.ts';
import { blocks } from './blocks.ts';
import { entryBase } from './definitions.ts';
import {
  maybe,
  NOWHERE,
  names,
  placeName,
  plainName,
  reason,
  shortText,
  written,
  writtenDate,
} from './names.ts';
import { bodyMass, decimal, seconds, whole } from './quantities.ts';

const span = fc.constant(NOWHERE);

const perAthlete = <T>(value: Arbitrary<T>): Arbitrary<PerAthlete<T | undefined>> =>
  fc.record({ values: fc.array(maybe(value), { minLength: 1, maxLength: 3 }), span });

/** Where it hurts; a colon would make a movement of the line. */
const place = shortText.filter((text) => !text.includes(':'));

const hours = fc.oneof(
  whole(0, 48).map((halves) => halves / 2),
  whole(60, 1439).map((minutes) => (minutes * 60) / 3600),
);

const facts: { [K in keyof SessionFacts]-?: Arbitrary<SessionFacts[K]> } = {
  efforts: maybe(perAthlete(decimal(0, 10))),
  lasted: maybe(
    perAthlete(
      fc.oneof(
        whole(1, 240).map((minutes) => minutes * 30),
        seconds,
      ),
    ),
  ),
  bodyweight: maybe(fc.record({ mass: bodyMass, span })),
  sleep: maybe(fc.record({ hours, span })),
  readiness: maybe(fc.record({ score: whole(1, 5), span })),
  pains: fc.array(fc.record({ score: whole(0, 10), where: maybe(place), span }), { maxLength: 2 }),
  missed: maybe(fc.record({ reason: maybe(reason), span })),
};

const clock = fc
  .tuple(whole(0, 23), whole(0, 59))
  .map(([hour, minute]) => `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}`);

const planReference = fc.record({ name: plainName, week: maybe(whole(1, 20)), day: maybe(whole(1, 7)) });

const dated = fc.record({
  date: writtenDate,
  clock: maybe(clock),
  athletes: names,
  place: maybe(placeName),
  plan: maybe(planReference),
});

/** A session without its date is a word alone: everything else stands behind the date. */
const header: Arbitrary<Pick<SessionEntry, 'date' | 'clock' | 'athletes' | 'place' | 'plan'>> = fc.oneof(
  { weight: 9, arbitrary: dated },
  fc.constant({ athletes: [] }),
);

export const session: Arbitrary<SessionEntry> = fc
  .tuple(header, fc.record({ kind: fc.constant('session' as const), ...facts, blocks, ...entryBase }))
  .map(([header, body]) => ({ ...header, ...body }));

const title = written(
  fc.oneof(
    fc.constantFrom(
      'sesion 2026-11-17 Quill',
      'athlet Nessa Quill',
      'workout 2026-11-17',
      'fixture Marsh Hall',
    ),
    fc.constantFrom('plann Slow Tide', 'exercice Ferry Pull'),
  ),
);

/** Lines under a header that nothing knows, or before any header: then there is at least one of them. */
export const unknown: Arbitrary<UnknownEntry> = fc
  .record({ kind: fc.constant('unknown' as const), title: maybe(title), ...facts, blocks, ...entryBase })
  .map((entry) => {
    const empty = entry.blocks.length === 0 && entry.strays.length === 0 && entry.notes.length === 0;
    return entry.title || !empty
      ? entry
      : { ...entry, strays: [{ text: 'felt heavy today', span: NOWHERE }] };
  });
