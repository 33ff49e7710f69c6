import { hasTrait, haveTrait, type Trait } from '@plimsoll/language/checks/line-traits';
import type { Block } from '@plimsoll/language/model/entry';
import { expect, test } from 'vitest';
import { readText } from '../support/read-text.ts';

function readBlocks(...written: readonly string[]): readonly Block[] {
  const [placed] = readText('session 2026-11-17 Nell | Tibor', ...written.map((line) => `  ${line}`)).entries;
  return placed!.entry.kind === 'session' ? placed!.entry.blocks : [];
}

const ROWS: readonly (readonly [line: string, ...traits: Trait[]])[] = [
  ['Back Squat: 3x5 @ 60 kg'],
  ['Back Squat: 3x5 @ 60 kg, pain 3 left knee', 'pain'],
  ['test Back Squat: 1 @ 100 kg', 'maxTest'],
  ['test Plank: 90 s'],
  ['Back Squat: 5 @ 60 kg | 5 @ 80 kg', 'manyCells'],
  ['Back Squat: 5 @ 10, 5 @ 100 kg', 'unevenLoads'],
  ['Back Squat: 5-8 @ 60 kg', 'forPlans'],
  ['Back Squat: 5 @ 75 % | 5 @ 60 kg, pain 2', 'forPlans', 'manyCells', 'pain'],
];

test.each(ROWS)('%s', (line, ...expected) => {
  const blocks = readBlocks(line);
  const all: readonly Trait[] = ['pain', 'maxTest', 'manyCells', 'unevenLoads', 'forPlans'];
  expect(all.filter((trait) => haveTrait(blocks, trait)).sort()).toEqual([...expected].sort());
  expect(all.filter((trait) => hasTrait(blocks[0]!.lines[0]!, trait)).sort()).toEqual([...expected].sort());
});

test('blocks have what any of their lines has, whichever blocks were asked about before', () => {
  const plain = readBlocks('A straight', 'Back Squat: 5 @ 60 kg');
  const sore = readBlocks('A straight', 'Back Squat: 5 @ 60 kg', 'B straight', 'Plank: 30 s, pain 2');
  expect([plain, sore, plain].map((blocks) => haveTrait(blocks, 'pain'))).toEqual([false, true, false]);
});
