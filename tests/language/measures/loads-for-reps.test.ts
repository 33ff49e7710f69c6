import { describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import {
  computeReynoldsShare,
  estimateByReynolds,
  findReynoldsLift,
  listLoadsForReps,
} from '../../../language/src/measures/loads-for-reps.ts';
import { findMaxOn } from '../../../language/src/measures/maxes.ts';
import { findBests } from '../../../language/src/measures/records.ts';
import { expectNear } from './expect-near.ts';
import { NAME, readWorks } from './read-works.ts';

const maxOf = (line: string, log = '') => {
  const { works } = readWorks(
    `athlete ${NAME}\n${line}\nexercise Bar Press\n  needs barbell\nexercise Hang Pull\n  bodyweight 95%, for this test\n`,
    log,
  );
  return findMaxOn(
    works,
    NAME,
    line.includes('Hang') ? 'Hang Pull' : 'Bar Press',
    toDayNumber('2026-03-01'),
  )!;
};

describe('loads for reps at a max', () => {
  // NSCA Training Load Chart, printed row for a max of 110: 104.5, 102.3, 99, 95.7, 93.5, 91.3, 88, 84.7, 82.5, and 77 for 12.
  test('are those of the chart', () => {
    const loads = listLoadsForReps(maxOf('  max Bar Press: 110 kg on 2026-01-05'));
    expect(loads.map(({ reps }) => reps)).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 12]);
    const printed = [104.5, 102.3, 99, 95.7, 93.5, 91.3, 88, 84.7, 82.5, 77];
    for (const [index, { result }] of loads.entries()) expectNear(result.value, printed[index]!, 1e-9);
    expect(loads[3]!.result).toMatchObject({
      unit: 'kg',
      method: 'nsca-chart',
      bound: 'exact',
      inputs: [
        { label: 'max', value: 110, unit: 'kg' },
        { label: 'reps', value: 5, unit: 'reps' },
        { label: 'share', value: 87, unit: '%' },
      ],
    });
  });

  test('of a lower bound are lower bounds', () => {
    const max = maxOf('', `session 2026-02-01 ${NAME}\n  Bar Press: 3 @ 100 kg\n`);
    expect(listLoadsForReps(max)[0]!.result.bound).toBe('at least');
  });

  test('none of what comes on top of the body, or of a max that is not known', () => {
    expect(listLoadsForReps(maxOf('  max Hang Pull: bw+20 kg on 2026-01-05'))).toEqual([]);
    const max = maxOf('  max Bar Press: 110 kg on 2026-01-05');
    expect(listLoadsForReps({ ...max, result: { ...max.result, value: undefined } })).toEqual([]);
  });
});

// Reynolds JM, Gordon TJ, Robergs RA (2006) J Strength Cond Res 20(3):584-592.
describe('the max of a tested machine lift', () => {
  const bestOf = (line: string) => {
    const { works } = readWorks(`athlete ${NAME}\n`, `session 2026-02-01 ${NAME}\n  ${line}\n`);
    return findBests(works, NAME)[0]?.byReps[5];
  };

  test('from its best set of five, give or take the standard error of estimate', () => {
    // 1.0970 x 200 + 14.2546 = 233.6546 and 1.1307 x 80 + 0.6999 = 91.1559.
    const leg = estimateByReynolds('leg press', bestOf('Leg Press: 5 @ 200 kg'))!;
    expectNear(leg.value, 233.6546, 1e-9);
    expectNear(leg.spread!.low, 217.4946, 1e-9);
    expectNear(leg.spread!.high, 249.8146, 1e-9);
    expect(leg).toMatchObject({
      unit: 'kg',
      method: 'reynolds-leg-press',
      bound: 'at least',
      inputs: [{ label: '5 reps', value: 200, unit: 'kg' }],
    });
    const chest = estimateByReynolds('chest press', bestOf('Machine Chest Press: 5 @ 80 kg'))!;
    expectNear(chest.value, 91.1559, 1e-9);
    expectNear(chest.spread!.high - chest.value!, 2.98, 1e-9);
    expect(chest.method).toBe('reynolds-chest-press');
  });

  test('from no other number of reps', () => {
    expect(estimateByReynolds('leg press', bestOf('Leg Press: 6 @ 200 kg'))).toBeUndefined();
    expect(estimateByReynolds('leg press', undefined)).toBeUndefined();
  });

  test('of which movements', () => {
    expect(['leg press', 'machine chest press', 'bench press'].map(findReynoldsLift)).toEqual([
      'leg press',
      'chest press',
      undefined,
    ]);
  });

  // From memory of the paper: 10 reps at 75.409 % (chest press) and 70.661 % (leg press).
  test('and the share of it that goes with reps', () => {
    const share = computeReynoldsShare('leg press', 10);
    expectNear(share.value, 70.661);
    expectNear(computeReynoldsShare('chest press', 10).value, 75.409);
    expect(share).toMatchObject({
      unit: '%',
      method: 'reynolds-percent',
      inputs: [{ label: 'reps', value: 10, unit: 'reps' }],
    });
  });
});
