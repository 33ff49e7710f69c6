import { addPlannedRound, addRoundWithRep, addSameRound } from '@plimsoll/language/rewrites/add-round';
import type { Rewriter } from '@plimsoll/language/rewrites/rewrite';
import { describe, expect, test } from 'vitest';
import { listErrors, rewriteLog, sumSessions } from '../support/apply-rewrite.ts';

const HEAD = 'session 2026-11-17 Nell Fenwick\n';

const BLOCK = `  B circuit, 4 rounds, rest 1:15
    One-Arm Row: 10/side, 10/side, 9/side, 8/side @ 22 kg
    Push-up: 14, 13, 11, 11
    Goblet Squat: 8 @ 20 kg
    Suitcase Carry: 30 m/side @ 24 kg
    time 2:55, 3:02, 3:10, ?
  C straight
    Dip: 5
`;

const at = (rewriter: Rewriter, block: string): string | undefined =>
  rewriteLog(rewriter, HEAD + block.replace('circuit', 'cir<|>cuit'))?.slice(HEAD.length);

test('the same again', () =>
  expect(at(addSameRound, BLOCK)).toBe(`  B circuit, 5 rounds, rest 1:15
    One-Arm Row: 10/side, 10/side, 9/side, 8/side, 8/side @ 22 kg
    Push-up: 14, 13, 11, 11, 11
    Goblet Squat: 8 @ 20 kg
    Suitcase Carry: 30 m/side @ 24 kg
    time 2:55, 3:02, 3:10, ?, ?
  C straight
    Dip: 5
`));

test('with one rep more', () =>
  expect(at(addRoundWithRep, BLOCK)).toBe(`  B circuit, 5 rounds, rest 1:15
    One-Arm Row: 10/side, 10/side, 9/side, 8/side, 9/side @ 22 kg
    Push-up: 14, 13, 11, 11, 12
    Goblet Squat: 4x8, 9 @ 20 kg
    Suitcase Carry: 30 m/side @ 24 kg
    time 2:55, 3:02, 3:10, ?, ?
  C straight
    Dip: 5
`));

test.each([
  ['3x8 @ 20 kg', '4x8 @ 20 kg', '3x8, 9 @ 20 kg'],
  ['3x8 @ 20 kg rpe 7', '3x8 @ 20 kg rpe 7, 8 @ 20 kg', '3x8 @ 20 kg rpe 7, 9 @ 20 kg'],
  [
    '8 @ 20, 8 @ 22, 7 @ 24 kg',
    '8 @ 20, 8 @ 22, 7 @ 24 kg, 7 @ 24 kg',
    '8 @ 20, 8 @ 22, 7 @ 24 kg, 8 @ 24 kg',
  ],
  ['8, 8, 8', '8, 8, 8, 8', '8, 8, 8, 9'],
  ['8, 8, 8, tempo 3-1-1-0', '8, 8, 8, 8, tempo 3-1-1-0', '8, 8, 8, 9, tempo 3-1-1-0'],
  ['8 rpe 7', '8 rpe 7', '3x8 rpe 7, 9'],
  ['8, 8, ? | 10', '8, 8, ?, ? | 10', '8, 8, ?, ? | 3x10, 11'],
])('the sets %s', (sets, same, more) => {
  const block = (written: string, rounds: number): string =>
    `  circuit, ${rounds} rounds\n    Row: ${written}\n`;
  expect(at(addSameRound, block(sets, 3))).toBe(block(same, 4));
  expect(at(addRoundWithRep, block(sets, 3))).toBe(block(more, 4));
});

test('with passes, the new round has each of them', () => {
  const block = '  circuit, 2 rounds x 2 passes\n    Row: 8, 8, 7, 7\n    Dip: 5, 4\n    time 1:00 | 2:00\n';
  expect(at(addSameRound, block)).toBe(
    '  circuit, 3 rounds x 2 passes\n    Row: 8, 8, 7, 7, 7, 7\n    Dip: 5, 4, 4\n    time 1:00, ? | 2:00, ?\n',
  );
});

test.each([
  ['sets that are neither one nor one a round', '  circuit, 3 rounds\n    Row: 8, 8\n'],
  ['a block that ended early', '  circuit, 3 rounds\n    Row: 8\n    done 2 of 3 rounds\n'],
  ['a block without rounds', '  circuit\n    Row: 8\n'],
  ['a broken line', '  circuit, 3 rounds\n    Row: 8 8\n'],
])('not offered for %s', (_name, block) => expect(at(addSameRound, block)).toBeUndefined());

test('one rep more of nothing is not offered', () =>
  expect(at(addRoundWithRep, '  circuit, 3 rounds\n    Plank: 30 s\n')).toBeUndefined());

test('the total grows by what the round adds', () => {
  const text = `${HEAD}  circuit, 3 rounds\n    Goblet Squat: 8 @ 20 kg\n`;
  const reps = [
    text,
    ...[addSameRound, addRoundWithRep].map((rewriter) => HEAD + at(rewriter, text.slice(HEAD.length))),
  ].map((log) => {
    expect(listErrors(log)).toEqual([]);
    return sumSessions({ 'log.plim': log })[0]![1].reps;
  });
  expect(reps).toEqual([24, 32, 33]);
});

describe('as planned', () => {
  const PLAN = `plan Brass Almanac
  weeks 4
  day 1
    B circuit, 3 rounds
      One-Arm Row: 10/side @ 20 kg
      Push-up: 12, +1 rep each week
      Plank: 40 s
  day 2
    B circuit, 3 rounds
      Push-up: 8-12
`;
  const asked = (lines: string, week = 2, day = 1): string | undefined => {
    const header = `session 2026-11-17 Nell Fenwick, Brass Almanac week ${week} day ${day}\n`;
    const log = `${header}  B cir<|>cuit, 3 rounds\n${lines}`;
    return rewriteLog(addPlannedRound, { 'log.plim': log, 'plan.plim': PLAN })?.slice(header.length);
  };

  test('each line gets what the plan asks in that week, at the load of the last round', () => {
    const done =
      '    One-Arm Row: 10/side, 9/side, 8/side @ 20 kg\n    Push-up: 13, 12, 10\n    Plank: 40 s\n';
    expect(asked(done)).toBe(
      '  B circuit, 4 rounds\n    One-Arm Row: 10/side, 9/side, 8/side, 10/side @ 20 kg\n    Push-up: 13, 12, 10, 13\n    Plank: 40 s\n',
    );
  });

  test.each([
    ['all went as planned: a round like the last says it', '    Push-up: 13\n    Plank: 40 s\n', 2, 1],
    ['the plan asks for a range', '    Push-up: 10\n', 1, 2],
    ['a line is not planned', '    Push-up: 13, 12, 10\n    Dip: 5\n', 2, 1],
    ['the plan has no such day', '    Push-up: 10\n', 1, 3],
  ])('not offered where %s', (_name, lines, week, day) => {
    expect(asked(lines, week, day)).toBeUndefined();
  });

  test('not offered without a plan', () => expect(at(addPlannedRound, BLOCK)).toBeUndefined());
});
