import { provideAthleteWeek } from '@plimsoll/server/features/athlete-week';
import { expect, test } from 'vitest';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

test('answers what the status shows, in the unit that was chosen, and nothing before all logs are read', () => {
  const { text, ...position } = readCursor('session 2026-11-23 Quill<|> Harrow\n  Deadlift: 5 @ 100 kg\n');
  const files = { 'a.plim': text };
  expect(provideAthleteWeek(createContext(files), 'a.plim', position)).toEqual({
    text: 'Quill · week 48 so far: 1 session, 500 kg',
    detail: '',
  });
  expect(
    provideAthleteWeek(createContext(files, { settings: { unit: 'lb' } }), 'a.plim', position)?.text,
  ).toMatch(/1\s102 lb$/);
  expect(provideAthleteWeek(createContext(files, { complete: false }), 'a.plim', position)).toBeUndefined();
});
