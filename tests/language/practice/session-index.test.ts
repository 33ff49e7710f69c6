import { createPractice } from '@plimsoll/language/create-practice';
import type { SessionRecord } from '@plimsoll/language/practice/athlete';
import { expect, test } from 'vitest';

const NAME = 'Wendeline Tarn';

function open(files: Readonly<Record<string, string>>) {
  const practice = createPractice();
  for (const [uri, text] of Object.entries(files)) practice.setFile(uri, text);
  return practice;
}

const session = (date: string, ...lines: string[]) =>
  `session ${date} ${NAME}\n${lines.map((line) => `  ${line}: 5\n`).join('')}`;

const print = (records: readonly SessionRecord[]) => records.map(({ date, line }) => `${date} in ${line}`);

test('sessions are found by any spelling of a movement, each once and in order', () => {
  const practice = open({
    'a.plim': session('2026-03-05', 'Press Up', 'Push-up') + session('2026-03-01', 'push up'),
    'b.plim': session('2026-03-03', 'Plank') + session('2026-03-02', 'Push-Up'),
  });
  expect(print(practice.sessionsWith(NAME, 'push up'))).toEqual([
    '2026-03-01 in 3',
    '2026-03-02 in 2',
    '2026-03-05 in 0',
  ]);
});

test('what a name stands for is asked anew when a definition changes, and when a name comes', () => {
  const practice = open({ 'a.plim': session('2026-03-01', 'Sack Heave') });
  expect(practice.sessionsWith(NAME, 'turnip toss')).toEqual([]);
  practice.setFile('b.plim', 'exercise Turnip Toss\n  also Sack Heave\n');
  expect(print(practice.sessionsWith(NAME, 'turnip toss'))).toEqual(['2026-03-01 in 0']);
  expect(practice.sessionsWith(NAME, 'sack heave')).toEqual([]);
  practice.setFile('c.plim', session('2026-03-02', 'Turnip Toss'));
  expect(print(practice.sessionsWith(NAME, 'turnip toss'))).toEqual(['2026-03-01 in 0', '2026-03-02 in 0']);
});

test('a list stays the same object until one of its own sessions changes', () => {
  const practice = open({ 'a.plim': session('2026-03-01', 'Plank'), 'b.plim': session('2026-03-02', 'Dip') });
  const [all, planks, dips] = [
    practice.sessionsOf(NAME),
    practice.sessionsWith(NAME, 'plank'),
    practice.sessionsWith(NAME, 'dip'),
  ];
  practice.setFile('b.plim', session('2026-03-02', 'Dip', 'Dip'));
  expect(practice.sessionsOf(NAME)).not.toBe(all);
  expect(practice.sessionsWith(NAME, 'plank')).toBe(planks);
  expect(practice.sessionsWith(NAME, 'dip')).not.toBe(dips);
  // What was given out before is as it was.
  expect(print(all)).toEqual(['2026-03-01 in 0', '2026-03-02 in 0']);
});

test('a session that only moves within its file is found where it stands now', () => {
  const practice = open({ 'a.plim': session('2026-03-01', 'Plank') });
  practice.sessionsWith(NAME, 'plank');
  practice.setFile('a.plim', `\n\n${session('2026-03-01', 'Plank')}`);
  expect(print(practice.sessionsWith(NAME, 'plank'))).toEqual(['2026-03-01 in 2']);
  expect(practice.indexOf(practice.sessionsOf(NAME)[0]!)).toBe(0);
});

test('sessions that name nobody belong to the only athlete as long as there is one', () => {
  const nameless = session('2026-03-01', 'Plank').replace(` ${NAME}`, '');
  const practice = open({
    'a.plim': nameless,
    'b.plim': session('2026-03-02', 'Plank'),
    'c.plim': `athlete ${NAME}\n`,
  });
  expect(print(practice.sessionsOf(NAME))).toEqual(['2026-03-01 in 0', '2026-03-02 in 0']);
  expect(practice.sessionsWith(NAME, 'plank')).toHaveLength(2);
  // The same records again: what is kept by them stays.
  const [first] = practice.sessionsOf(NAME);
  practice.setFile('b.plim', session('2026-03-02', 'Plank', 'Dip'));
  expect(practice.sessionsOf(NAME)[0]).toBe(first);
  practice.setFile('d.plim', 'athlete Ambrose Kell\n');
  expect(print(practice.sessionsOf(NAME))).toEqual(['2026-03-02 in 0']);
  expect(print(practice.sessionsOf(''))).toEqual(['2026-03-01 in 0']);
});

test('the files in which an athlete has sessions, those included that name nobody', () => {
  const practice = open({
    'a.plim': session('2026-03-01', 'Plank') + session('2026-03-02', 'Plank'),
    'b.plim': 'session 2026-03-03\n  Plank: 5\n',
    'c.plim': session('2026-03-04', 'Plank').replace(NAME, 'Hobb Ferrier'),
  });
  expect([...practice.urisOf(NAME)]).toEqual(['a.plim']);
  practice.setFile('people.plim', `athlete ${NAME}\n`);
  expect([...practice.urisOf(NAME)].sort()).toEqual(['a.plim', 'b.plim']);
  practice.setFile('a.plim', session('2026-03-02', 'Plank'));
  expect([...practice.urisOf(NAME)].sort()).toEqual(['a.plim', 'b.plim']);
  practice.setFile('a.plim', '');
  expect([...practice.urisOf(NAME)]).toEqual(['b.plim']);
});
