import { describe, expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { findAsked } from '../../../language/src/plans/asked-memory.ts';
import { findCourse } from '../../../language/src/plans/plan-calendar.ts';

const PLAN = `athlete Hesper Quillon
plan Copper Autumn
  for Hesper Quillon
  starts 2026-11-02
  weeks 2
  day 1
    Back Squat: 3x5 @ 80%
    Bench Press: 3x8-10 @ 50 kg
`;

/** Days since 1970-01-01: of 2026-11-09, the plan's second week. */
const ON = 20766;

function open(...sessions: string[]) {
  const practice = createPractice();
  practice.setFile('plan.plim', PLAN);
  sessions.forEach((session, index) => {
    practice.setFile(`${index}.plim`, session);
  });
  const works = new SessionWorks(practice);
  const { entry } = practice.findPlan('Copper Autumn')!;
  const turn = findCourse(practice, entry).turns[1]!;
  const ask = () => findAsked(works, entry, turn, { athlete: 'hesper quillon', on: ON, formula: 'epley' });
  const write = (index: number, session: string) => practice.setFile(`${index}.plim`, session);
  return { practice, ask, write };
}

const BEFORE = 'session 2026-11-02 Hesper Quillon\n  test Back Squat: 1 @ 100 kg\n';
const THAT_DAY = 'session 2026-11-09 Hesper Quillon, Copper Autumn week 2 day 1\n  Back Squat: 5 @ 80 kg\n';

// 80 % of 110 kg is 88 kg: 87.5 kg on a bar in steps of 2.5 kg.
describe('what a plan asks for on a day, remembered', () => {
  test('stays the same object while only that day and later ones are edited', () => {
    const { ask, write } = open(BEFORE, THAT_DAY);
    const asked = ask();
    write(1, THAT_DAY.replace('5 @ 80', '5, 5 @ 82.5'));
    expect(ask()).toBe(asked);
  });

  test('stays the same object while an edit before changes no max that it is made from', () => {
    const { ask, write } = open(`${BEFORE}  Back Squat: 5 @ 70 kg\n  Bench Press: 8 @ 40 kg\n`, THAT_DAY);
    const asked = ask();
    write(0, `${BEFORE}  Back Squat: 5 @ 75 kg\n  Bench Press: 8 @ 45 kg\n`);
    expect(ask()).toBe(asked);
  });

  test.each([
    ['a max before it', BEFORE.replace('100 kg', '110 kg'), 87_500],
    ['the body mass it can count with', `${BEFORE}  bodyweight 61 kg\n`, 80_000],
  ])('is another after an edit of %s', (_, session, grams) => {
    const { ask, write } = open(BEFORE, THAT_DAY);
    const asked = ask();
    write(0, session);
    expect(ask()).not.toBe(asked);
    expect(ask()[0]!.lines[0]!.low.grams).toBe(grams);
  });

  test.each([
    ['a movement that it names', 'exercise Back Squat\n  needs dumbbell\n'],
    ['its athlete', `athlete Hesper Quillon\n  units lb\n`],
  ])('is another after a definition of %s', (_, text) => {
    const { practice, ask } = open(BEFORE, THAT_DAY);
    const asked = ask();
    practice.setFile('another.plim', text);
    expect(ask()).not.toBe(asked);
  });

  test('stays the same object after a definition of a movement that it does not name', () => {
    const { practice, ask } = open(BEFORE, THAT_DAY);
    const asked = ask();
    practice.setFile('another.plim', 'exercise Sack Heave\n  needs dumbbell\n');
    expect(ask()).toBe(asked);
  });

  test('is another after an edit of the plan', () => {
    const { practice, ask } = open(BEFORE);
    expect(ask()[0]!.lines[0]!.low.sets).toBe(3);
    practice.setFile('plan.plim', PLAN.replace('3x5', '4x5'));
    const works = new SessionWorks(practice);
    const { entry } = practice.findPlan('Copper Autumn')!;
    const turn = findCourse(practice, entry).turns[1]!;
    const asked = findAsked(works, entry, turn, { athlete: 'hesper quillon', on: ON, formula: 'epley' });
    expect(asked[0]!.lines[0]!.low.sets).toBe(4);
  });
});
