import { createPractice } from '@plimsoll/language/create-practice';
import type { SessionEntry } from '@plimsoll/language/model/entry';
import { findChangedNames } from '@plimsoll/language/practice/changed-names';
import { expect, test } from 'vitest';

const TEXT = `session 2026-11-02 07:10 Ann Vell
  A superset, 3 rounds
    Back Squat: 5, 5, 5 @ 60 kg rpe 8
    Bench Press: 5, 5, 5 @ 40 kg rpe 8, tempo 3-1-X-1
    time 4:00, 4:10, 4:20
  B straight
    Goblet Squat: 10 @ 20 kg, instead of Leg Press
  effort 7
`;

function read(text: string): SessionEntry {
  const practice = createPractice();
  practice.setFile('log.plim', text);
  return practice.file('log.plim')!.model.entries[0]!.entry as SessionEntry;
}

const listChanged = (after: string) => {
  const names = findChangedNames(read(TEXT), read(after));
  return names && [...names].sort();
};

const replaced = (from: string, to: string) => TEXT.replace(from, to);

test.each([
  ['nothing', TEXT, []],
  ['a comment behind the last line', `${TEXT}# to be asked\n`, []],
  ['a set', replaced('@ 60 kg', '@ 62.5 kg'), ['Back Squat']],
  ['a set of what was done instead', replaced('@ 20 kg', '@ 24 kg'), ['Goblet Squat']],
  ['a tempo, which makes another block', replaced('3-1', '4-1'), ['Back Squat', 'Bench Press']],
  ['a movement', replaced('Bench Press', 'Push Press '), ['Back Squat', 'Bench Press', 'Push Press']],
  ['the time of a round', replaced('4:10', '4:15'), ['Back Squat', 'Bench Press']],
  ['a block that went', TEXT.replace(/ {2}B straight\n.*\n/, ''), undefined],
  ['the effort', replaced('effort 7', 'effort 8'), undefined],
  ['a weigh-in', replaced('effort 7', 'bodyweight 60 kg'), undefined],
  ['the day', replaced('11-02', '11-03'), undefined],
  ['the time of day', replaced('07:10', '07:20'), undefined],
  ['somebody else', replaced('Ann', 'Oda'), undefined],
])('%s', (_what, after, names) => {
  expect(listChanged(after)).toEqual(names);
});

test('a block that comes last says something of its movements alone', () => {
  const before = read('session 2026-11-02\n  A straight\n    Back Squat: 5 @ 60 kg\n');
  const after = read(
    'session 2026-11-02\n  A straight\n    Back Squat: 5 @ 60 kg\n  B straight\n    Plank: 40 s\n',
  );
  expect([...findChangedNames(before, after)!]).toEqual(['Plank']);
});
