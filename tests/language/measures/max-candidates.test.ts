import { describe, expect, test } from 'vitest';
import { findCandidates, readReps } from '../../../language/src/measures/max-candidates.ts';
import { lastWork, practiceOf } from './practice-of.ts';

test('reps of the first part of a set', () => {
  const reps = (value: number) => ({ measure: 'reps', value, written: value, unit: 'rep' }) as const;
  const seconds = { measure: 'seconds', value: 30, written: 30, unit: 's' } as const;
  expect(readReps({ kind: 'attempt', made: 2, tried: 2, perSide: false })).toEqual({
    reps: 2,
    failed: false,
    partial: false,
  });
  expect(readReps({ kind: 'attempt', made: 2, tried: 3, perSide: false })!.failed).toBe(true);
  expect(readReps({ kind: 'cluster', parts: [reps(3)], perSide: false })).toEqual({
    reps: 3,
    failed: false,
    partial: false,
  });
  expect(readReps({ kind: 'cluster', parts: [reps(3), reps(2)], perSide: false })!.partial).toBe(true);
  expect(readReps({ kind: 'cluster', parts: [seconds], perSide: false })).toBeUndefined();
  expect(readReps({ kind: 'cluster', parts: [], perSide: false })).toBeUndefined();
  expect(readReps({ kind: 'sides', left: reps(8), right: reps(7) })).toEqual({
    reps: 7,
    failed: false,
    partial: false,
  });
  expect(readReps({ kind: 'sides', left: seconds, right: seconds })).toBeUndefined();
  expect(readReps({ kind: 'skipped' })).toBeUndefined();
  expect(readReps(undefined)).toBeUndefined();
});

describe('the sets of a line that say something about a max', () => {
  const { works } = practiceOf(`athlete Hesper Quillon
  bodyweight 60 kg on 2026-11-01
session 2026-11-02 Hesper Quillon
  A straight
    Pull-up: 5, 3 @ bw+10 kg rpe 9
`);
  const { blocks, context } = lastWork(works, 'hesper quillon');
  const { block } = blocks[0]!;
  const line = block.lines[0]!;
  const candidates = findCandidates(block, line, 0, context, undefined);

  test('are found once as long as all that they rest on is the same', () => {
    expect(candidates.map(({ reps, setNumber, atLeast }) => [reps, setNumber, atLeast])).toEqual([
      [5, 1, true],
      [3, 2, false],
    ]);
    expect(findCandidates(block, line, 0, context, undefined)).toBe(candidates);
  });

  test('are others in a circuit of turns, on a heavier day, of another sex and elsewhere', () => {
    const turns = findCandidates({ ...block, alternating: true }, line, 0, context, undefined);
    expect(turns.map(({ atLeast }) => atLeast)).toEqual([true, true]);
    const heavier = findCandidates(block, line, 0, { ...context, bodyMass: 70_000 }, undefined);
    expect(heavier[0]!.total).toBeGreaterThan(candidates[0]!.total);
    expect(findCandidates(block, line, 0, { ...context, sex: 'female' }, undefined)).not.toBe(candidates);
    expect(findCandidates(block, line, 0, context, 'Belfry Loft')).not.toBe(candidates);
    const unknown = { ...context, findMovement: () => undefined };
    expect(findCandidates(block, line, 0, unknown, undefined)).not.toBe(candidates);
  });
});
