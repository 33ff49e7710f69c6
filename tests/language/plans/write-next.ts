import { expect } from 'vitest';
import type { IsoDate } from '../../../language/src/calendar/iso-date.ts';
import { checkFile } from '../../../language/src/checks/check-file.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { writeNextSession } from '../../../language/src/plans/next-session.ts';
import { ATHLETE, PERSON, PLACE } from './project-text.ts';

export const LOG = 'file:///logs/hesper/2026-11.plim';

export interface Case {
  readonly today?: IsoDate;
  /** What stands in the plan's one day, a line each. */
  readonly plan?: readonly string[];
  readonly properties?: readonly string[];
  readonly person?: readonly string[];
  /** Sessions, oldest first: a header's date and rest, and its lines. */
  readonly log?: readonly (readonly [header: string, ...lines: string[]])[];
}

export function open({ plan, properties = ['weeks 6'], person = [], log = [] }: Case) {
  const practice = createPractice();
  const written = plan
    ? [
        'plan Copper Autumn',
        `  for ${ATHLETE}`,
        '  at Rookery Cellar',
        '  starts 2026-11-02',
        ...properties.map((line) => `  ${line}`),
        '  day 1',
        ...plan.map((line) => `    ${line}`),
      ]
    : [];
  practice.setFile(
    'file:///logs/practice.plim',
    [PLACE, PERSON + person.map((line) => `  ${line}\n`).join(''), ...written].join('\n'),
  );
  const sessions = log.map(([header, ...lines]) => {
    const [date, slot] = header.split(' ');
    const start = `session ${date} ${ATHLETE} at Rookery Cellar${slot ? `, Copper Autumn week ${slot} day 1` : ''}`;
    return [start, ...lines.map((line) => `  ${line}`)].join('\n');
  });
  if (sessions.length > 0) practice.setFile(LOG, `${sessions.join('\n\n')}\n`);
  return { practice, works: new SessionWorks(practice) };
}

export function next(example: Case): string[] {
  const { works } = open(example);
  const found = writeNextSession(works, {
    athlete: 'hesper quillon',
    today: example.today ?? '2026-11-09',
    unit: 'kg',
    formula: 'epley',
  });
  if ('refused' in found) return [found.refused];
  // What is written must be a session that can be read, and asks for nothing that a session cannot have.
  const practice = works.practice;
  practice.setFile('file:///logs/next.plim', `${found.text}\n`);
  const problems = checkFile(practice, 'file:///logs/next.plim', { today: '2027-12-31' });
  expect(
    problems
      .filter(({ problem }) => ['error', 'warning'].includes(problem.severity))
      .map(({ problem }) => problem.message),
  ).toEqual([]);
  return found.text.split('\n');
}

export const HEADER = (date: string, week: number) =>
  `session ${date} ${ATHLETE} at Rookery Cellar, Copper Autumn week ${week} day 1`;
