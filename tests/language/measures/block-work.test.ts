import { describe, expect, test } from 'vitest';
import type { BlockWork } from '../../../language/src/measures/block-work.ts';
import { isWorking } from '../../../language/src/measures/block-work.ts';
import { NO_WORK } from '../../../language/src/measures/work.ts';
import { NAME, readWorks } from './read-works.ts';

const DEFINITIONS = `athlete ${NAME}\nexercise Bar Press\n  needs barbell\nexercise Ring Plank\n`;

function blockOf(lines: string): BlockWork {
  const { sessions } = readWorks(DEFINITIONS, `session 2026-02-02 ${NAME}\n  ${lines}\n`);
  return sessions[0]!.blocks[0]!;
}

/** `[sets, reps, kilograms]`. */
const brief = ({ sets, reps, external }: BlockWork['total']) => [sets, reps, external / 1000];

describe('the work of a block', () => {
  test('is the sum of its sets, and of each of its rounds', () => {
    // A round: 5 x 20 = 100 kg and 8 reps without kilograms.
    const work = blockOf('circuit, 2 rounds\n    Bar Press: 5, 4 @ 20 kg\n    Ring Plank: 8');
    expect(brief(work.total)).toEqual([4, 25, 180]);
    expect(work.rounds.map(brief)).toEqual([
      [2, 13, 100],
      [2, 12, 80],
    ]);
    expect(work.roundCount).toBe(2);
    expect(work.sets.map((set) => set.work.reps)).toEqual([5, 4, 8, 8]);
  });

  test('of straight sets has no rounds', () => {
    const work = blockOf('Bar Press: 2x5 @ 20 kg');
    expect(brief(work.total)).toEqual([2, 10, 200]);
    expect(work.rounds).toEqual([]);
    expect(work.roundCount).toBeUndefined();
  });

  test('has nothing in a round that only other lines reached', () => {
    // Each line has one turn: the plank in round 2, and the third round is of nobody.
    const work = blockOf(
      'every 1:00 for 3:00, alternating\n    warmup Bar Press: 5 @ 20 kg\n    Ring Plank: 8\n    Bar Press: 2 @ 50 kg',
    );
    expect(work.rounds).toHaveLength(3);
    expect(work.rounds[0]).toEqual(NO_WORK);
    expect(work.rounds.slice(1).map(brief)).toEqual([
      [1, 8, 0],
      [1, 2, 100],
    ]);
  });

  test('leaves warm-up sets out of the sums, and keeps them', () => {
    const work = blockOf('straight\n    warmup Bar Press: 5 @ 40 kg\n    Bar Press: 5 @ 80 kg');
    expect(brief(work.total)).toEqual([1, 5, 400]);
    expect(work.sets.map(({ set }) => isWorking(set, work.block))).toEqual([false, true]);
    expect(work.sets.map((set) => set.work.external / 1000)).toEqual([200, 400]);
  });

  test.each(['warmup', 'cooldown'])('of a %s is no working one', (kind) => {
    const work = blockOf(`${kind}\n    Bar Press: 5 @ 40 kg`);
    expect(work.total).toEqual(NO_WORK);
    expect(work.sets).toHaveLength(1);
  });

  test('is a lower bound where part of a line could not be read', () => {
    const work = blockOf('straight\n    Bar Press: 5 @ 80 kg, 3 @ @ kg');
    expect(work.total.atLeast).toBe(true);
    expect(work.total.omitted).toContainEqual({
      what: 'Bar Press',
      why: 'part of the line could not be read',
    });
  });

  test('is exact where every line was read', () => {
    expect(blockOf('straight\n    Bar Press: 5 @ 80 kg').total).toMatchObject({
      atLeast: false,
      omitted: [],
    });
  });

  test('of an amrap without its score is a lower bound and says so', () => {
    const omitted = [{ what: 'amrap', why: 'its rounds are not written (done 4 rounds + 5)' }];
    expect(blockOf('amrap 10:00\n    Bar Press: 5 @ 20 kg').total).toMatchObject({ atLeast: true, omitted });
    expect(blockOf('amrap 10:00\n    Bar Press: 5 @ 20 kg\n    done 0 rounds').total).toMatchObject({
      atLeast: false,
      omitted: [],
    });
    // Without a line there is nothing that could be more.
    expect(blockOf('amrap 10:00\n    > no time today').total).toMatchObject({ atLeast: false, omitted: [] });
  });
});
