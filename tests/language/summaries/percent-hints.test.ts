import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { describePercentHints } from '@plimsoll/language/summaries/percent-hints';
import { expect, test } from 'vitest';
import { openPractice, TODAY, toUri } from '../checks/workspace.ts';

const ATHLETE = 'athlete Nell Fenwick\n  max Back Squat: 100 kg on 2026-11-01\n';
const OPTIONS = { today: TODAY, formula: 'epley', unit: 'kg', complete: true } as const;

/** `70% = 70 kg` for each hint of a plan's line, with its tooltip behind. */
function list(line: string, complete = true): string[] {
  const plan = `plan Brass Almanac\n  for Nell Fenwick\n  starts 2026-11-16\n  weeks 4\n  day 1\n    ${line}\n`;
  const practice = openPractice({ 'athletes.plim': ATHLETE, 'plan.plim': plan });
  const [placed] = practice.file(toUri('plan.plim'))!.model.entries;
  const works = new SessionWorks(practice);
  return describePercentHints(works, placed!, { ...OPTIONS, complete }).map(
    ({ column, text, tooltip }) => `${/\S+$/.exec(`    ${line}`.slice(0, column))![0]} ${text} (${tooltip})`,
  );
}

// Today, 24 November, is in the second week, which the second cell stands for.
test('each percentage has its kilograms: the week at hand first, the others from their first week', () => {
  expect(list('Back Squat: 5 @ 70% | 5 @ 80%').map((hint) => hint.replace(/ \(.*/, ''))).toEqual([
    '80% = 80 kg',
    '70% = 70 kg',
  ]);
  expect(list('Back Squat: 5 @ 80%')[0]).toContain('Back Squat in week 2');
});

test.each([
  ['no max is known', 'Front Squat: 5 @ 80%'],
  ['the load is written', 'Back Squat: 5 @ 80 kg'],
  ['a target is chosen on the day', 'Back Squat: 5 @ rpe 8'],
])('nothing where %s', (_name, line) => {
  expect(list(line)).toEqual([]);
});

test('nothing until all files are read', () => {
  expect(list('Back Squat: 5 @ 80%', false)).toEqual([]);
});
