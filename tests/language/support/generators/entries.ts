import fc, { type Arbitrary } from 'fast-check';
import type { Entry, EntryKind } from '../../../../language/src/model/entry.ts';
import { athlete, exercise, place, units } from './definitions.ts';
import { plan } from './plans.ts';
import { session, unknown } from './sessions.ts';

/** Everything the model can express, by kind of entry. Places in the text are left at nowhere. */
export const ENTRIES: { readonly [K in EntryKind]: Arbitrary<Extract<Entry, { kind: K }>> } = {
  units,
  exercise,
  place,
  athlete,
  plan,
  session,
  unknown,
};

export const entry: Arbitrary<Entry> = fc.oneof(...Object.values(ENTRIES));
