import { provideDocumentLinks } from '@plimsoll/server/features/document-links';
import { expect, test } from 'vitest';
import { createContext } from '../support/feature-context.ts';

test("a session's plan leads to the day of the plan", () => {
  const context = createContext({
    'file:///log.plim': 'session 2026-11-03, Ebb week 1 day 2\n',
    'file:///plans.plim': 'plan Ebb\n  day 1\n    Dip: 5\n  day 2 Pull\n    Dip: 5\n',
  });
  expect(provideDocumentLinks(context, 'file:///log.plim')).toEqual([
    {
      range: { start: { line: 0, character: 20 }, end: { line: 0, character: 36 } },
      target: 'file:///plans.plim#4,3',
      tooltip: 'Ebb, day 2 Pull',
    },
  ]);
});
