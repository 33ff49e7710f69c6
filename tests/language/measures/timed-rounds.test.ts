import { describe, expect, test } from 'vitest';
import { type Demand, listTimedRounds, NO_DEMAND } from '../../../language/src/measures/timed-rounds.ts';
import { practiceOf } from './practice-of.ts';

const NAME = 'Barnabina Wick';

function roundsOf(lines: string) {
  const { practice } = practiceOf(
    `exercise Loft Rower\n  work conditioning\nsession 2026-05-04 ${NAME}\n${lines}\n`,
  );
  return listTimedRounds(practice, NAME);
}

/** What is not 0. */
const short = (demand: Demand): Partial<Demand> =>
  Object.fromEntries(
    Object.entries(demand).filter(([key, value]) => value !== NO_DEMAND[key as keyof Demand]),
  );

describe('what a timed round asked for', () => {
  test.each<[string, string, Partial<Demand>]>([
    ['reps of both sides', 'One Hand Row: 10/side', { reps: 20, sets: 1 }],
    ['uneven sides', 'One Hand Row: 8 left 7 right', { reps: 15, sets: 1 }],
    ['two lines', 'Press Up: 10\n    Bar Press: 5 @ 40 kg', { reps: 15, sets: 2 }],
    ['seconds held on each side', 'Side Lean: 30 s/side', { seconds: 60, sets: 1 }],
    ['reps at a tempo: 8 × (3 + 1 + 1 + 0)', 'Bar Press: 8 @ 40 kg, tempo 3-1-X-0', { seconds: 40, sets: 1 }],
    ['metres walked', 'Loft Carry: 30 m @ 20 kg', { metres: 30, sets: 1 }],
    ['metres on a machine', 'Loft Rower: 250 m', { machineMetres: 250, sets: 1 }],
    ['its written time instead of the metres', 'Loft Rower: 250 m in 1:02', { seconds: 62, sets: 1 }],
    ['calories', 'Loft Rower: 12 cal', { calories: 12, sets: 1 }],
    ['the tries of an attempt', 'Bar Press: 3 of 5 @ 80 kg', { reps: 5, sets: 1 }],
    [
      'mini-sets and the rests between',
      'Bar Press: (2+2+2 rest 20 s) @ 80 kg',
      { reps: 6, seconds: 40, sets: 1 },
    ],
    ['nothing of a skipped line', 'Press Up: 10\n    Bar Press: skipped', { reps: 10, sets: 1 }],
    ['something not recorded', 'Press Up: 10\n    Bar Press: ? @ 40 kg', { reps: 10, sets: 2, isOpen: true }],
    [
      'a rest between lines, not the one behind',
      'Press Up: 10\n    rest 0:20\n    Long Hinge: 5\n    rest 0:40',
      { reps: 15, seconds: 20, sets: 2 },
    ],
  ])('%s', (_name, lines, expected) => {
    const [round] = roundsOf(`  circuit, 1 rounds\n    ${lines}\n    time 2:00`);
    expect(short(round!.demand)).toEqual(expected);
    expect(round!.seconds).toBe(120);
  });

  test('passes and the rests in each', () => {
    const [round] = roundsOf(
      '  circuit, 1 rounds x 2 passes\n    Press Up: 10\n    rest 0:20\n    Long Hinge: 5\n    time 2:00',
    );
    expect(short(round!.demand)).toEqual({ reps: 30, seconds: 40, sets: 4 });
  });

  test('round by round, those without a time left out', () => {
    const rounds = roundsOf('  circuit, 3 rounds\n    Press Up: 10, 9, 8\n    time 1:00, ?, 1:20');
    expect(rounds.map(({ seconds, demand }) => [seconds, demand.reps])).toEqual([
      [60, 10],
      [80, 8],
    ]);
  });

  test.each([
    ['no time', '  circuit, 2 rounds\n    Press Up: 10'],
    ['a time of nothing', '  circuit, 1 rounds\n    Press Up: 10\n    time 0:00'],
    ['a time without a round', '  circuit, 0 rounds\n    time 1:00'],
  ])('none of %s', (_name, lines) => {
    expect(roundsOf(lines)).toEqual([]);
  });
});
