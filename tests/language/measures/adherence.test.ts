import { describe, expect, test } from 'vitest';
import { computeAdherence } from '../../../language/src/measures/adherence.ts';
import { practiceOf, printWithOmissions } from './practice-of.ts';

const PLAN = `
exercise Bar Press
  also Loft Press
athlete Cuthbert Fennel
plan Gorse Winter
  weeks 4
  deload week 4, sets 50%
  days Mon, Thu
  day 1 Press
    A straight, rest 2:00
      warmup Bar Press: 5 @ 40 kg
      Bar Press: 4x5 @ 70% | 5x3 @ 80%
    B superset, 3 rounds, rest 1:00
      Long Hinge: 8 @ 60 kg
      Press Up: 12
  day 2 Carry
    amrap 10:00
      Press Up: 10
    straight
      Bar Press: 2x5 @ 60%
`;
/** Week 1 day 1 as it was planned: 4 + 3 + 3 sets. */
const AS_PLANNED = `  A straight
    warmup Bar Press: 5 @ 40 kg
    Bar Press: 4x5 @ 70 kg
  B superset, 3 rounds
    Long Hinge: 8 @ 60 kg
    Press Up: 12`;

function adherence(lines: string, slot = 'week 1 day 1') {
  const { works, practice } = practiceOf(
    `${PLAN}\nsession 2026-04-06 Cuthbert Fennel, Gorse Winter ${slot}\n${lines}\n`,
  );
  return computeAdherence(works, practice.sessionsOf('Cuthbert Fennel')[0]!);
}

describe('sets done of sets planned', () => {
  test.each<[string, string, string, string]>([
    ['all of them', AS_PLANNED, 'week 1 day 1', '100 %'],
    ['under another spelling', AS_PLANNED.replaceAll('Bar Press', 'Loft Press'), 'week 1 day 1', '100 %'],
    [
      // 3 of 4, 3 of 3, 3 of 3.
      'one set short',
      AS_PLANNED.replace('4x5', '3x5'),
      'week 1 day 1',
      '90 % [Bar Press: 3 of 4 sets]',
    ],
    [
      'a skipped line, with its reason',
      AS_PLANNED.replace('Press Up: 12', 'Press Up: skipped, pain 4 left knee'),
      'week 1 day 1',
      '70 % [Press Up: none of 3 sets, pain 4 left knee]',
    ],
    [
      'a line that is not there',
      AS_PLANNED.replace('\n    Press Up: 12', ''),
      'week 1 day 1',
      '70 % [Press Up: none of 3 sets]',
    ],
    [
      'rounds cut short: 4 + 2 + 2',
      `${AS_PLANNED}\n    done 2 of 3 rounds`,
      'week 1 day 1',
      '80 % [Long Hinge: 2 of 3 sets] [Press Up: 2 of 3 sets]',
    ],
    [
      'sets beyond the plan make up for nothing',
      AS_PLANNED.replace('4x5', '6x5').replace('Press Up: 12', 'Press Up: skipped'),
      'week 1 day 1',
      '70 % [Press Up: none of 3 sets]',
    ],
    [
      'warm-up sets are no working sets',
      AS_PLANNED.replace('    Bar Press: 4x5 @ 70 kg', '    warmup Bar Press: 4x5 @ 70 kg'),
      'week 1 day 1',
      '60 % [Bar Press: none of 4 sets]',
    ],
    ['a set not recorded was done', AS_PLANNED.replace('4x5', '5, 5, 5, ?'), 'week 1 day 1', '100 %'],
    ['a failed attempt was a set', AS_PLANNED.replace('4x5', '5, 5, 5, 0 of 5'), 'week 1 day 1', '100 %'],
    ['of another week’s cell: 4 of 5', AS_PLANNED, 'week 2 day 1', '90.9 % [Bar Press: 4 of 5 sets]'],
    // Week 4 is the second cell again, 5 sets; half of it is 3, and 2 of each 3 rounds: 7.
    ['in a deload', AS_PLANNED, 'week 4 day 1', '100 %'],
    [
      'a missed session',
      '  missed, cold',
      'week 1 day 1',
      '0 % [Bar Press: none of 4 sets, missed: cold] [Long Hinge: none of 3 sets, missed: cold] [Press Up: none of 3 sets, missed: cold]',
    ],
    ['an amrap has no planned sets', '  straight\n    Bar Press: 2x5 @ 60 kg', 'week 1 day 2', '100 %'],
    [
      'a line of which part was not read',
      AS_PLANNED.replace('Press Up: 12', 'Press Up: 12 ///'),
      'week 1 day 1',
      'at least 100 % [Press Up: part of the line could not be read]',
    ],
  ])('%s', (_name, lines, slot, expected) => {
    expect(printWithOmissions(adherence(lines, slot)!.result)).toBe(expected);
  });

  test('an exchange counts for the movement it stands for', () => {
    const found = adherence(
      AS_PLANNED.replace('Long Hinge: 8 @ 60 kg', 'Box Climb: 8, instead of Long Hinge'),
    )!;
    expect(found.result.value).toBe(100);
    expect(found.swapped).toEqual([{ planned: 'Long Hinge', done: 'Box Climb', sets: 3 }]);
    expect(found.added).toEqual([]);
  });

  test('an exchange for something not planned is an addition', () => {
    const found = adherence(`${AS_PLANNED}\n  straight\n    Box Climb: 2x8, instead of Wall Crawl`)!;
    expect(found.swapped).toEqual([]);
    expect(found.added).toEqual([{ name: 'Box Climb', sets: 2 }]);
  });

  test('what was added is listed and counts for nothing', () => {
    const found = adherence(`${AS_PLANNED.replace('4x5', '3x5')}\n  straight\n    Ankle Rock: 2x8`)!;
    expect(found.result.value).toBe(90);
    expect(found.added).toEqual([{ name: 'Ankle Rock', sets: 2 }]);
  });

  test('what an amrap leaves open is no addition', () => {
    const found = adherence(
      '  amrap 10:00\n    Press Up: 10\n    done 5 rounds\n  straight\n    Bar Press: 2x5 @ 60 kg',
      'week 1 day 2',
    )!;
    expect(found.result.value).toBe(100);
    expect(found.added).toEqual([]);
  });

  test('each movement has its sets, and those beyond', () => {
    const { movements, result } = adherence(AS_PLANNED.replace('4x5', '6x5'))!;
    expect(movements[0]).toEqual({ name: 'Bar Press', planned: 4, done: 4, extra: 2 });
    expect(result.inputs).toEqual([
      { label: 'working sets done', value: 10, unit: 'sets' },
      { label: 'working sets planned', value: 10, unit: 'sets' },
    ]);
  });

  test.each([
    ['a plan that is not defined', 'session 2026-04-06 Cuthbert Fennel, Other Plan week 1 day 1'],
    ['no week', 'session 2026-04-06 Cuthbert Fennel, Gorse Winter day 1'],
    ['a day the plan has not', 'session 2026-04-06 Cuthbert Fennel, Gorse Winter week 1 day 7'],
    ['no day of several', 'session 2026-04-06 Cuthbert Fennel, Gorse Winter week 1'],
    ['no plan', 'session 2026-04-06 Cuthbert Fennel'],
  ])('none for %s', (_name, header) => {
    const { works, practice } = practiceOf(`${PLAN}\n${header}\n${AS_PLANNED}\n`);
    expect(computeAdherence(works, practice.sessionsOf('Cuthbert Fennel')[0]!)).toBeUndefined();
  });

  test('the only day of a plan needs no number', () => {
    const { works, practice } = practiceOf(
      'plan Gorse Spring\n  day 3\n    Bar Press: 2x5 @ 60 kg\nsession 2026-04-06 Cuthbert Fennel, Gorse Spring week 1\n  Bar Press: 5 @ 60 kg\n',
    );
    expect(computeAdherence(works, practice.sessionsOf('Cuthbert Fennel')[0]!)!.result.value).toBe(50);
  });
});
