import { createPractice } from '@plimsoll/language/create-practice';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { PlacedEntry, PlanEntry } from '@plimsoll/language/model/entry';
import type { LensOptions } from '@plimsoll/language/summaries/lens';
import { recallPlanSpots } from '@plimsoll/language/summaries/plan-lens-memory';
import { expect, test } from 'vitest';

const OPTIONS: LensOptions = { today: '2026-11-24', formula: 'epley', unit: 'kg', complete: true };
const DEFINED = `athlete Ann Vell

athlete Oda Brill

plan Slow Tide
  for Ann Vell
  weeks 2
  day 1
    Back Squat: 3x5 @ 80%
`;
const session = (name: string, kilograms: number): string =>
  `session 2026-11-03 ${name}\n  Back Squat: 5 @ ${kilograms} kg rpe 8\n`;

/** Whether a plan's lenses are those of before once a log of somebody says something else. */
function areKept(name: string, options = OPTIONS): boolean {
  const practice = createPractice();
  const works = new SessionWorks(practice);
  practice.setFile('defined.plim', DEFINED);
  practice.setFile('log.plim', session(name, 80));
  const placed = practice.file('defined.plim')!.model.entries[2] as PlacedEntry & { entry: PlanEntry };
  const before = recallPlanSpots(works, placed, OPTIONS);
  practice.setFile('log.plim', session(name, 90));
  return recallPlanSpots(works, placed, options) === before;
}

test('a plan is worked out anew where its athlete did something else, and where it is asked for otherwise', () => {
  expect(areKept('Ann Vell')).toBe(false);
  expect(areKept('Oda Brill')).toBe(true);
  expect(areKept('Oda Brill', { ...OPTIONS, unit: 'lb' })).toBe(false);
});
