import { provideInlayHints } from '@plimsoll/server/features/inlay-hints';
import { expect, test } from 'vitest';
import { type ContextOptions, createContext } from '../support/feature-context.ts';

const practice = `place Lamp Room
  bars 20 kg
  plates 4x20, 2x10, 2x2.5 kg

athlete Quill Harrow
`;

const log = `session 2026-11-23 Quill Harrow at Lamp Room
  A straight
    Back Squat: 5 @ 20, 3x5 @ 65 kg, 5 @ 66 kg
    Goblet Squat: 3x8 @ 20 kg
  B circuit, 3 rounds
    Push-up: 12
    Plank: 30 s, 30 s, 20 s
    Dead Bug: skipped
  C circuit, 2 rounds x 2 passes
    Burpee: 5
  D amrap 9:00
    Air Squat: 10
`;

const ALL = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };

function list(settings: ContextOptions['settings'], range = ALL, text = log): string[] {
  const context = createContext({ 'practice.plim': practice, 'log.plim': text }, { settings });
  const lines = text.split('\n');
  return provideInlayHints(context, 'log.plim', range).map(({ position: { line, character }, label }) => {
    const text = lines[line]!;
    return `${text.slice(0, character).trim()} [${label}]${text.slice(character)}`;
  });
}

const ROUNDS = ['Push-up: 12 [= 3 sets]', 'Burpee: 5 [= 4 sets]'];

test('a lone number of a block with rounds says how many sets it is', () => {
  expect(list({})).toEqual(ROUNDS);
});

test('plates stand behind what a bar can be loaded with, if they are asked for', () => {
  expect(list({ plates: true })).toEqual([
    ...ROUNDS,
    'Back Squat: 5 @ 20, 3x5 @ 65 kg [20 + 2.5 kg a side], 5 @ 66 kg',
  ]);
});

test('only lines in sight are asked about', () => {
  expect(list({ plates: true }, { ...ALL, end: { line: 5, character: 0 } })).toEqual([
    ROUNDS[0],
    'Back Squat: 5 @ 20, 3x5 @ 65 kg [20 + 2.5 kg a side], 5 @ 66 kg',
  ]);
});

test('without hints there are none', () => {
  expect(list({ hints: false, plates: true })).toEqual([]);
});

const plan = `plan Low Tide
  for Quill Harrow
  at Lamp Room
  starts 2026-11-16
  weeks 4
  day 1
    A straight
      Back Squat: 3x5 @ 70% | 4x4 @ 75%, 2x5 @ -10% | 1 @ 90% of Front Squat
      Back Squat: 5 @ 60 kg
      Front Squat: 5 @ rpe 8
      week 4 Back Squat: 1 @ 95%
athlete Quill Harrow
  max Back Squat: 100 kg on 2026-11-01
`;

// The room makes 60, 65, 80, 85 and 100 kg of what is asked: 70 and 75 kg, 10 % off 75 (67.5), and 95 kg.
test('kilograms stand behind the percentages of a plan, in every week that it writes', () => {
  expect(list({}, ALL, plan)).toEqual([
    'Back Squat: 3x5 @ 70% | 4x4 @ 75% [= 80 kg], 2x5 @ -10% | 1 @ 90% of Front Squat',
    'Back Squat: 3x5 @ 70% | 4x4 @ 75%, 2x5 @ -10% [= 65 kg] | 1 @ 90% of Front Squat',
    'Back Squat: 3x5 @ 70% [= 65 kg] | 4x4 @ 75%, 2x5 @ -10% | 1 @ 90% of Front Squat',
    'week 4 Back Squat: 1 @ 95% [= 100 kg]',
  ]);
});

test('kilograms behind percentages go with the other hints', () => {
  expect(list({ hints: false }, ALL, plan)).toEqual([]);
});
