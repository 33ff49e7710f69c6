import { expect, test } from 'vitest';
import { printRevised } from './revise.ts';

const head = 'plan Ebb\n  weeks 2\n';
const days = (...lines: readonly string[]): string => `${head}${lines.map((line) => `  ${line}\n`).join('')}`;

/** What changed in the days, without what it costs. */
const compare = (before: string, after: string): string[] =>
  printRevised(before, after)
    .slice(1)
    .filter((line) => !/^ {2}(?:since|hard sets|week |\d)/.test(line))
    .map((line) => line.trim());

test.each<[title: string, before: string[], after: string[], expected: string[]]>([
  ['sets', ['Dip: 3x8'], ['Dip: 4x8'], ['Dip: 3x8 → 4x8']],
  ['sets with a load', ['Back Squat: 3x5 @ 70%'], ['Back Squat: 4x5 @ 70%'], ['Back Squat: 3x5 → 4x5 @ 70%']],
  ['a load', ['Back Squat: 3x5 @ 70%'], ['Back Squat: 3x5 @ 72.5%'], ['Back Squat: 3x5 @ 70% → 72.5%']],
  [
    'both, and a target',
    ['Back Squat: 3x5 @ 70%'],
    ['Back Squat: 5x3 @ rpe 8'],
    ['Back Squat: 3x5 @ 70% → 5x3 @ rpe 8'],
  ],
  [
    'several groups',
    ['Back Squat: 1 @ 90%, 3x5 @ 70%'],
    ['Back Squat: 1 @ 90%, 4x5 @ 70%'],
    ['Back Squat: 1 @ 90%, 3x5 @ 70% → 1 @ 90%, 4x5 @ 70%'],
  ],
  [
    'one week of several',
    ['Back Squat: 3x5 @ 70% | 3x4 @ 75%'],
    ['Back Squat: 3x5 @ 70% | 3x4 @ 77.5%'],
    ['Back Squat: week 2: 3x4 @ 75% → 77.5%'],
  ],
  [
    'more weeks',
    ['Back Squat: 3x5 @ 70%'],
    ['Back Squat: 3x5 @ 70% | 3x3 @ 80%'],
    ['Back Squat: 3x5 @ 70% → 3x5 @ 70% | 3x3 @ 80%'],
  ],
  ['a rest', ['Dip: 3x8, rest 2:00'], ['Dip: 3x8, rest 3:00'], ['Dip: rest 2:00 → 3:00']],
  ['a rest that came', ['Dip: 3x8'], ['Dip: 3x8, rest 3:00'], ['Dip: rest none → 3:00']],
  [
    'a progression',
    ['Dip: 3x8, +1 rep each week'],
    ['Dip: 3x8, +1 rep each week to 12'],
    ['Dip: progression +1 rep each week → +1 rep each week to 12'],
  ],
  ['a tempo that went', ['Dip: 3x8, tempo 3-1-X-0'], ['Dip: 3x8'], ['Dip: tempo 3-1-X-0 → none']],
  ['a note', ['Dip: 3x8', '> slow'], ['Dip: 3x8', '> slower'], ['Dip: note slow → slower']],
  ['a movement that came', ['Dip: 3x8'], ['Dip: 3x8', 'Plank: 30 s'], ['+ Plank: 30 s']],
  ['one that went', ['Dip: 3x8', 'Plank: 30 s'], ['Dip: 3x8'], ['- Plank: 30 s']],
  [
    'another at its place',
    ['Dip: 3x8', 'Plank: 30 s', 'Push-up: 10'],
    ['Dip: 3x8', 'Side Plank: 30 s/side', 'Push-up: 10'],
    ['Side Plank in place of Plank: 30 s → 30 s/side'],
  ],
  ['another with the same sets', ['Dip: 3x8'], ['Push-up: 3x8'], ['Push-up in place of Dip']],
  ['a line for one week', ['Dip: 3x8'], ['Dip: 3x8', 'week 2 Dip: 1x8'], ['+ week 2 Dip: 1x8']],
  [
    'a warm-up apart from the work',
    ['warmup Dip: 3', 'Dip: 3x8'],
    ['warmup Dip: 5', 'Dip: 3x8'],
    ['warmup Dip: 3 → 5'],
  ],
  [
    'the order in a block',
    ['A circuit, 3 rounds', 'Dip: 8', 'Plank: 30 s'],
    ['A circuit, 3 rounds', 'Plank: 30 s', 'Dip: 8'],
    ['A circuit: order Dip, Plank → Plank, Dip'],
  ],
  [
    'the settings of a block',
    ['B circuit, 3 rounds, rest 1:30', 'Dip: 8'],
    ['B circuit, 4 rounds, rest 1:30', 'Dip: 8'],
    ['B circuit: 3 rounds → 4 rounds'],
  ],
  [
    'its kind',
    ['B superset, 3 rounds', 'Dip: 8'],
    ['B circuit, 3 rounds', 'Dip: 8'],
    ['B circuit: superset → circuit'],
  ],
  ['its letter alone', ['A straight', 'Dip: 8'], ['B straight', 'Dip: 8'], []],
  [
    'a block that came',
    ['A straight', 'Dip: 8'],
    ['A straight', 'Dip: 8', 'B circuit, 3 rounds', 'Plank: 30 s'],
    ['+ B circuit, 3 rounds', '+ Plank: 30 s'],
  ],
  [
    'into another block',
    ['A straight', 'Dip: 8', 'Plank: 30 s', 'B circuit, 2 rounds', 'Push-up: 10'],
    ['A straight', 'Dip: 8', 'B circuit, 2 rounds', 'Push-up: 10', 'Plank: 30 s'],
    ['Plank: moved here from A straight'],
  ],
])('%s', (_title, before, after, expected) => {
  const [was, is] = [before, after].map((lines) => days('day 1', ...lines));
  expect(compare(was!, is!).filter((line) => line !== 'day 1')).toEqual(expected);
});

test('into another day, and changed on the way', () => {
  const before = days('day 1 Push', 'Dip: 3x8', 'Plank: 30 s', 'day 2 Pull', 'Pull-up: 3x5');
  const after = days('day 1 Push', 'Dip: 3x8', 'day 2 Pull', 'Pull-up: 3x5', 'Plank: 45 s');
  expect(compare(before, after)).toEqual(['day 2 Pull', 'Plank: moved here from day 1 Push, 30 s → 45 s']);
});

test('a day that came, and one with another name', () => {
  const before = days('day 1 Push', 'Dip: 3x8');
  const after = days('day 1 Press', 'Dip: 3x8', 'day 2 Pull', 'Pull-up: 3x5');
  expect(compare(before, after)).toEqual([
    'day 1 Push → Press',
    '+ day 2 Pull',
    'day 2 Pull',
    '+ Pull-up: 3x5',
  ]);
});

test('another spelling is no change', () => {
  expect(printRevised(days('day 1', 'Push-up: 3x8'), days('day 1', 'push up: 3x8'))).toEqual([
    'Nothing that counts has changed since HEAD.',
  ]);
});
