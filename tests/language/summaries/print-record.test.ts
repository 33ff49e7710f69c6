import { expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { findRecordsOf } from '../../../language/src/measures/records.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import {
  printRecordMax,
  printRecordReps,
  printRecordSet,
} from '../../../language/src/summaries/print-record.ts';

const DEFINITIONS = `
athlete Ivo Fennimore
  bodyweight 80 kg on 2026-01-01
exercise Bar Press
  needs barbell
exercise Hand Press
  needs dumbbell
exercise Hang Pull
  bodyweight 95%, for the sums of this test
`;

function recordsOf(before: string, now: string) {
  const practice = createPractice();
  practice.setFile('definitions.plim', DEFINITIONS);
  const [first, second] = [before, now].map(
    (line, at) => `session 2026-02-0${at + 1} Ivo Fennimore\n  ${line}\n`,
  );
  practice.setFile('log.plim', `${first}${second}`);
  const works = new SessionWorks(practice);
  return findRecordsOf(works, works.of(practice.sessionsOf('Ivo Fennimore')[1]!));
}

// Estimates by Epley: 82.5 x 35/30 = 96.25, 24 x 35/30 = 28; of 76 kg of body 86 x 35/30 - 76 = 24.3.
test.each([
  ['Bar Press: 5 @ 80 kg', 'Bar Press: 5 @ 82.5 kg', 'kg', '5 @ 82.5 kg', 'e1RM at least 96 kg'],
  ['Bar Press: 5 @ 80 kg', 'Bar Press: 5 @ 82.5 kg', 'lb', '5 @ 181.88 lb', 'e1RM at least 212 lb'],
  ['Hand Press: 5 @ 2x22 kg', 'Hand Press: 5 @ 2x24 kg', 'kg', '5 @ 2x24 kg', 'e1RM at least 28 kg a hand'],
  ['Hang Pull: 5', 'Hang Pull: 5 @ bw+10 kg', 'kg', '5 @ bw+10 kg', 'e1RM at least bw+24.3 kg'],
  ['Hang Pull: 5', 'Hang Pull: 6', 'kg', '6 @ bw', 'e1RM at least bw+15.2 kg'],
  ['Hang Pull: 1 @ bw-20 kg rpe 10', 'Hang Pull: 1 @ bw-10 kg rpe 10', 'kg', '1 @ bw-10 kg', 'e1RM bw-10 kg'],
] as const)('%s, then %s, in %s', (before, now, unit, set, max) => {
  const { sets, maxes } = recordsOf(before, now);
  expect([printRecordSet(sets[0]!, unit), printRecordMax(maxes[0]!, unit)]).toEqual([set, max]);
});

test.each([
  ['Bar Press: 5 @ 80 kg', 'Bar Press: 5 @ 70 kg', undefined],
  ['Bar Press: 5 @ 80 kg', 'Bar Press: 5 @ 85 kg', 'record for 5 reps'],
  ['Bar Press: 5 @ 80 kg', 'Bar Press: 1 @ 100 kg', 'record for 1 rep'],
  ['Bar Press: 5 @ 80 kg', 'Bar Press: 1 @ 100, 5 @ 85 kg', 'record for 1 and 5 reps'],
  ['Bar Press: 5 @ 80 kg', 'Bar Press: 3 @ 90, 1 @ 100, 5 @ 85 kg', 'record for 1, 3 and 5 reps'],
])('%s, then %s', (before, now, expected) => {
  expect(printRecordReps(recordsOf(before, now).sets)).toBe(expected);
});
