import { checkFileAlone } from '@plimsoll/language/checks/check-file';
import { expect, test } from 'vitest';
import { check, lines, openPractice, toUri } from './workspace.ts';

const says =
  'A merge left two versions here, and both are counted: keep one, then take out the lines that begin with <<<<<<<, ======= and >>>>>>> [merge-conflict]';
const text = lines(
  'session 2026-11-17',
  '<<<<<<< HEAD',
  '  Dip: 8',
  '=======',
  '  Dip: 9',
  '>>>>>>> heavy',
  '  Turnip Tally: 5',
);

test('what a merge left is told at each of its lines, and nothing else of them', () => {
  expect(check(text, 'unknown-movement')).toEqual([
    `log.plim:2:1 ${says}`,
    `log.plim:4:1 ${says}`,
    `log.plim:6:1 ${says}`,
  ]);
});

test('it is told before the other files are read', () => {
  expect(checkFileAlone(openPractice(text), toUri('log.plim')).map(({ problem }) => problem.code)).toEqual([
    'merge-conflict',
    'merge-conflict',
    'merge-conflict',
  ]);
});

test('a line that a coach drew is a stray one', () => {
  expect(check(lines('session 2026-11-17', '  Dip: 8', '======='))).toEqual([
    expect.stringMatching(/^log\.plim:3:1 .* \[stray-line\]/),
  ]);
});

test('it is told as soon as it is typed, and no longer than it stands there', () => {
  const practice = openPractice('session 2026-11-17\n  Dip: 8\n');
  const uri = toUri('log.plim');
  const listCodes = () => checkFileAlone(practice, uri).map(({ problem }) => problem.code);
  practice.editFile(uri, { first: 2, removed: 1, added: ['>>>>>>> heavy', ''] });
  expect(listCodes()).toEqual(['merge-conflict']);
  practice.editFile(uri, { first: 2, removed: 1, added: ['  Dip: 9'] });
  expect(listCodes()).toEqual([]);
  // Above the first header too.
  practice.editFile(uri, { first: 0, removed: 0, added: ['<<<<<<< HEAD', ''] });
  expect(listCodes()).toContain('merge-conflict');
});
