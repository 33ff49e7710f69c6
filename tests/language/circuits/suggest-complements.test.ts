import { printReason } from '@plimsoll/language/circuits/print-circuit';
import { suggestComplements } from '@plimsoll/language/circuits/suggest-complements';
import type { PlanEntry, SessionEntry } from '@plimsoll/language/model/entry';
import { describe, expect, test } from 'vitest';
import { openWithoutLibrary } from '../checks/workspace.ts';
import { readFiles } from '../support/marked-practice.ts';

const movement = (name: string, ...lines: readonly string[]): string =>
  `exercise ${name}\n${lines.map((line) => `  ${line}\n`).join('')}\n`;

const squat = movement(
  'Turnip Squat',
  'pattern squat',
  'trunk resists flexion',
  'muscles quadriceps',
  'needs kettlebell',
);
const press = movement(
  'Turnip Press',
  'pattern horizontal push',
  'trunk resists extension',
  'muscles chest',
  'needs kettlebell',
);
const row = movement('Turnip Row', 'pattern horizontal pull', 'muscles lats', 'needs kettlebell');
const hinge = movement('Turnip Hinge', 'pattern hinge', 'muscles hamstrings', 'needs barbell');
const lunge = movement('Turnip Lunge', 'pattern lunge', 'muscles quadriceps');
const stretch = movement('Turnip Stretch', 'pattern mobility', 'work mobility', 'muscles hamstrings');
const deep = movement('Deep Turnip Squat', 'pattern squat', 'muscles quadriceps', 'needs kettlebell');
const all = squat + press + row + hinge + lunge + stretch + deep;

/** `Turnip Press: reason; reason`, for the last block of the only session or plan. */
function suggest(text: string, limit = 9): string[] {
  const practice = openWithoutLibrary(text);
  const [uri] = [...practice.fileUris()];
  const entries = practice.file(uri!)!.model.entries.map(({ entry }) => entry);
  const training = entries.find(({ kind }) => kind === 'session' || kind === 'plan') as
    | SessionEntry
    | PlanEntry;
  const blocks = training.kind === 'plan' ? training.days.flatMap((day) => day.blocks) : training.blocks;
  return suggestComplements(practice, training, blocks.at(-1)!, limit).map(
    ({ movement: { name }, reasons }) => `${name}: ${reasons.map(printReason).join('; ')}`,
  );
}

const names = (list: readonly string[]): string[] => list.map((line) => line.split(':')[0]!);
const circuit = '  B circuit, 3 rounds\n    Turnip Squat: 10 @ 16 kg\n';

test('other patterns with what is out already, each with the two facts of every reason', () => {
  expect(suggest(`${all}session 2026-11-24\n${circuit}`)).toEqual([
    'Turnip Press: horizontal push (Turnip Squat: squat); trains chest (Turnip Squat: trains quadriceps); resists extension (Turnip Squat: resists flexion); needs kettlebell (Turnip Squat: needs kettlebell)',
    'Turnip Row: horizontal pull (Turnip Squat: squat); trains lats (Turnip Squat: trains quadriceps); needs kettlebell (Turnip Squat: needs kettlebell)',
    'Turnip Lunge: lunge (Turnip Squat: squat); needs nothing (Turnip Squat: needs kettlebell)',
  ]);
});

test('of equals, what the athlete did more often', () => {
  const twins = all + row.replace('Turnip Row', 'Beet Row');
  const begun = `session 2026-11-24\n${circuit}    Turnip Press: 8 @ 12 kg\n`;
  expect(names(suggest(twins + begun))[0]).toBe('Beet Row');
  const done = 'athlete Ann Vell\n\nsession 2026-11-20 Ann Vell\n  Turnip Row: 8 @ 12 kg\n\n';
  const practice = openWithoutLibrary(twins + done + begun.replace('24', '24 Ann Vell'));
  const [uri] = [...practice.fileUris()];
  const session = practice.file(uri!)!.model.entries.at(-1)!.entry as SessionEntry;
  expect(suggestComplements(practice, session, session.blocks[0]!, 1)[0]!.movement.name).toBe('Turnip Row');
});

test('the other side of a pattern comes first', () => {
  const text = `${all}session 2026-11-24\n${circuit}    Turnip Press: 8 @ 12 kg\n`;
  expect(names(suggest(text))).toEqual(['Turnip Row', 'Turnip Lunge']);
});

test('a pattern does not come twice before each had its turn', () => {
  const text = `${all}${row.replace('Turnip Row', 'Turnip Pull')}session 2026-11-24\n${circuit}    Turnip Press: 8 @ 12 kg\n`;
  expect(names(suggest(text))).toEqual(['Turnip Pull', 'Turnip Lunge', 'Turnip Row']);
  expect(names(suggest(text, 2))).toEqual(['Turnip Pull', 'Turnip Lunge']);
});

describe('what the athlete is to avoid', () => {
  const avoid = (line: string): string =>
    `${all}athlete Ann Vell\n  ${line}\n\nsession 2026-11-24 Ann Vell\n${circuit}`;

  test.each<[line: string, expected: string[]]>([
    ['avoid horizontal push', ['Turnip Row', 'Turnip Lunge']],
    ['avoid Turnip Row, sore elbow', ['Turnip Press', 'Turnip Lunge']],
    ['avoid horizontal push until 2026-11-24', ['Turnip Row', 'Turnip Lunge']],
    ['avoid horizontal push until 2026-11-23', ['Turnip Press', 'Turnip Row', 'Turnip Lunge']],
  ])('%s', (line, expected) => {
    expect(names(suggest(avoid(line)))).toEqual(expected);
  });

  test('is a reason for the others', () => {
    expect(suggest(avoid('avoid horizontal push until 2026-12-01'))[0]).toMatch(
      /; horizontal pull \(Ann Vell: to avoid horizontal push until 2026-12-01\)$/,
    );
  });

  test('in a plan from its first day on; without a day at any time', () => {
    const plan = (starts: string): string =>
      `${all}athlete Ann Vell\n  avoid horizontal push until 2026-12-01\n\nplan Ebb\n  for Ann Vell\n${starts}  day 1\n${circuit}`;
    expect(names(suggest(plan('  starts 2026-12-07\n')))).toContain('Turnip Press');
    expect(names(suggest(plan('  starts 2026-11-30\n')))).not.toContain('Turnip Press');
    expect(names(suggest(plan('')))).not.toContain('Turnip Press');
  });
});

test('a goal of the athlete goes before', () => {
  const text = `${all}athlete Ann Vell\n  goal Turnip Lunge: 12 by 2027-01-31\n\nsession 2026-11-24 Ann Vell\n${circuit}`;
  expect(suggest(text).find((line) => line.startsWith('Turnip Lunge'))).toContain(
    'lunge (Ann Vell: a goal in it by 2027-01-31)',
  );
});

test('what the place lacks is left out', () => {
  const bench = movement('Turnip Floor', 'pattern vertical pull', 'muscles lats', 'needs kettlebell, bench');
  const start = movement('Turnip Bench', 'pattern squat', 'muscles quadriceps', 'needs kettlebell, bench');
  const at = (place: string): string =>
    `${bench}${start}place Loft\n  kettlebells 16 kg\n  has ${place}\n\nsession 2026-11-24 at Loft\n  circuit, 2 rounds\n    Turnip Bench: 8\n`;
  expect(names(suggest(at('bench')))).toEqual(['Turnip Floor']);
  expect(names(suggest(at('mat')))).toEqual([]);
});

test('nothing for a circuit of which nothing is known', () => {
  expect(suggest(`${all}session 2026-11-24\n  B circuit, 3 rounds\n    Turnip Tally: 10\n`)).toEqual([]);
});

test('of the built-in movements every reason names two facts of two entries', () => {
  const practice = readFiles({
    'a.plim': 'session 2026-11-24\n  B circuit, 3 rounds\n    Goblet Squat: 10 @ 16 kg\n    Push-up: 10\n',
  });
  const session = practice.file('a.plim')!.model.entries[0]!.entry as SessionEntry;
  const found = suggestComplements(practice, session, session.blocks[0]!, 20);
  expect(found.length).toBeGreaterThan(5);
  for (const { movement: suggested, reasons } of found) {
    expect(reasons.length).toBeGreaterThan(0);
    for (const { facts } of reasons) {
      expect(facts.some(({ name }) => name === suggested.name)).toBe(true);
      expect(new Set(facts.map(({ name }) => name)).size).toBe(2);
    }
  }
});
