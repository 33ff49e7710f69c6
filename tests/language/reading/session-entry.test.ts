import type { SessionEntry } from '@plimsoll/language/model/entry';
import { expect, test } from 'vitest';
import { readText } from '../support/read-text.ts';

function readSession(...written: readonly string[]): SessionEntry {
  return readText(...written).entries[0]!.entry as SessionEntry;
}

test('sessions that say more and less are objects of one form', () => {
  const bare = readSession('session 2026-11-17');
  const full = readSession(
    'session 2026-11-17 07:10 Odalys Fenn at Kelp Cellar, Base week 2 day 1',
    '  Back Squat: 3x5 @ 60 kg',
    '  effort 7',
    '  lasted 58 min',
    '  > Slow.',
  );
  expect(Object.keys(bare)).toEqual(Object.keys(full));
  expect([bare.clock, bare.plan, bare.efforts]).toEqual([undefined, undefined, undefined]);
  expect([full.clock, full.plan?.week, full.efforts?.values]).toEqual(['07:10', 2, [7]]);
});

test('what few sessions say stands in those alone', () => {
  const rare = ['bodyweight', 'sleep', 'readiness', 'missed'];
  expect(Object.keys(readSession('session 2026-11-17')).filter((key) => rare.includes(key))).toEqual([]);
  const said = readSession(
    'session 2026-11-17',
    '  bodyweight 70 kg',
    '  sleep 7 h',
    '  readiness 4',
    '  missed, ill',
  );
  expect(Object.keys(said).filter((key) => rare.includes(key))).toEqual(rare);
});
