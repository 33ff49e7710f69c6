import { describe, expect, test } from 'vitest';
import { explain } from '../../../language/src/measures/explain.ts';
import { NO_WORK, type Work } from '../../../language/src/measures/work.ts';
import { describeSession, printSum } from '../../../language/src/summaries/session-lens.ts';
import { lastWork, practiceOf } from '../measures/practice-of.ts';

const NAME = 'Thaddea Quillon';
const DEFINITIONS = `
exercise Bar Press
  needs barbell
exercise Press Up
  bodyweight 50%, for the sums of this test
athlete ${NAME}
`;

describe('the main sum of some work', () => {
  test.each<[string, Partial<Work>, string | undefined]>([
    [
      'kilograms first',
      { external: 400_000, body: 380_000, reps: 9, carriedMetres: 40 },
      '780 kg incl. body',
    ],
    ['then loaded distance', { carried: 2_560_000, carriedMetres: 40 }, '2 560 kg·m'],
    [
      'metres of three kinds, never added',
      { metres: 5000, carriedMetres: 40, machineMetres: 2000 },
      '40 m carried, 2 000 m on machines, 5 000 m',
    ],
    ['of one kind alone', { machineMetres: 500 }, '500 m on machines'],
    ['a lower bound', { metres: 500, atLeast: true }, 'at least 500 m'],
    ['nothing', {}, undefined],
  ])('%s', (_name, work, expected) => {
    expect(printSum({ ...NO_WORK, ...work }, 'kg')).toBe(expected);
  });
});

/** The change of the week behind the lens of the last session. */
function changeOf(athlete: string, before: string, now: string) {
  const { works } = practiceOf(
    `${DEFINITIONS}${athlete}\nsession 2026-03-02 ${NAME}\n${before}\nsession 2026-03-09 ${NAME}\n${now}\n`,
  );
  const { record } = lastWork(works, NAME);
  const lens = describeSession(works, [record], {
    today: '2026-03-31',
    formula: 'epley',
    unit: 'kg',
    complete: true,
  });
  return { text: lens.text, change: lens.explain().find(({ method }) => method === 'change') };
}

describe('the change of the week', () => {
  test('names what was left out of both weeks once, and what a week is', () => {
    const { change } = changeOf('', '  Bar Press: 5 @ 60 kg + red band', '  Bar Press: 5 @ 66 kg + red band');
    expect(change!.value).toBeCloseTo(10, 9);
    expect(change!.omitted).toEqual([{ what: 'Bar Press', why: 'red band: no kilograms' }]);
    expect(explain(change!)).toContain(
      '- Rests on: ISO week: Monday to Sunday; week 1 holds the first Thursday',
    );
  });

  test.each([
    ['more at least', '  Bar Press: 5 @ 60 kg', '  Bar Press: 6, ? @ 60 kg', { bound: 'at least' }],
    ['or less', '  Bar Press: 5, ? @ 60 kg', '  Bar Press: 4 @ 60 kg', { bound: 'exact', remark: 'or less' }],
  ])('is %s where a total is a lower bound', (_name, before, now, expected) => {
    expect(changeOf('', before, now).change).toMatchObject(expected);
  });

  test('says where only the weigh-in changed it', () => {
    const twice = '  bodyweight 100 kg on 2026-01-01\n  bodyweight 110 kg on 2026-03-05';
    const { change } = changeOf(twice, '  Press Up: 10', '  Press Up: 10');
    expect(change!.value).toBeCloseTo(10, 9);
    expect(change!.omitted).toEqual([
      { what: 'body mass', why: 'another weigh-in than then is part of the change' },
    ]);
    expect(changeOf(twice, '  Bar Press: 5 @ 60 kg', '  Bar Press: 6 @ 60 kg').change!.omitted).toEqual([]);
    const once = '  bodyweight 100 kg on 2026-01-01';
    expect(changeOf(once, '  Press Up: 10', '  Press Up: 11').change!.omitted).toEqual([]);
  });
});
