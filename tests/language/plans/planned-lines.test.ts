import { findPlannedLines } from '@plimsoll/language/plans/planned-lines';
import { printAmount } from '@plimsoll/language/printing/print-quantity';
import { expect, test } from 'vitest';
import { openPractice, toUri } from '../checks/workspace.ts';

const PLAN = `plan Brass Almanac
  weeks 4
  deload week 4, sets 50%
  day 1
    Push-up: 10, +1 rep each week
    week 2 Dip: 5
  day 2
    Plank: 40 s
`;

/** `Push-up: 11` for each line that the plan asks of a session. */
function list(reference: string): string[] {
  const practice = openPractice({ 'plan.plim': PLAN, 'log.plim': `session 2026-11-17${reference}` });
  const { entry } = practice.file(toUri('log.plim'))!.model.entries[0]!;
  return findPlannedLines(practice, entry.kind === 'session' ? entry : {}).map(
    ({ line, isDeload }) =>
      `${line.name.text}: ${printAmount(line.cells[0]!.sets[0]!.amount!)}${isDeload ? ', deload' : ''}`,
  );
}

test.each([
  [', Brass Almanac week 1 day 1', ['Push-up: 10']],
  [', Brass Almanac week 2 day 1', ['Push-up: 11', 'Dip: 5']],
  [', Brass Almanac day 2', ['Plank: 40 s']],
  [', Brass Almanac week 4 day 2', ['Plank: 40 s, deload']],
  [', Brass Almanac week 1 day 3', []],
  [', Brass Almanac', []],
  [', Tin Almanac week 1 day 1', []],
  ['', []],
])('session%s', (reference, lines) => {
  expect(list(reference)).toEqual(lines);
});
