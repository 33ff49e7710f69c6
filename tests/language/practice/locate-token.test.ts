import { locateToken } from '@plimsoll/language/practice/locate-token';
import { expect, test } from 'vitest';
import { readCursor } from '../../server/support/at-cursor.ts';
import { openPractice, toUri } from '../checks/workspace.ts';

/** What stands at the cursor, and its text. */
function locate(marked: string): string | undefined {
  const { text, line, character } = readCursor(marked);
  const file = openPractice(text).file(toUri('log.plim'))!;
  const found = locateToken(file, line, character);
  if (!found) return undefined;
  const { span } = found;
  const written = file.lines[found.placed.line + span.line]!.slice(span.start, span.end);
  const what =
    found.kind === 'word' ? found.word : found.kind === 'check' ? `check ${found.code}` : found.kind;
  return `${what}: ${written}`;
}

test.each([
  ['place Low Hall\n  bars 20, 1<|>5 kg', 'load: 15'],
  ['place Low Hall\n  plates <|>4x20 kg', 'plates: 4'],
  ['athlete Ann Vell\n  away 2026-07-06 t<|>o 2026-07-19', 'until: to'],
  ['athlete Ann Vell\n  away 2026-07-<|>06 to 2026-07-19', 'date: 2026-07-06'],
  ['session 2026-11-03 07:<|>10 Ann Vell', 'clock: 07:10'],
  ['session 2026-11-03\n  B circuit, 3 rounds, re<|>st 1:00', 'block rest: rest'],
  ['session 2026-11-03\n  rest 0:2<|>0', 'rest line: 0:20'],
  ['session 2026-11-03\n  Push-up: <|>3x8', 'count: 3'],
  ['session 2026-11-03\n  Push-up: 8 <|>| 9', 'athletes: |'],
  ['plan High Water\n  day 1\n    Push-up: 8 <|>| 9', 'weeks of a line: |'],
  ['exercise Net Haul\n  muscles lats, glutes 1<|>/2', 'muscles: /'],
  ['session 2026-11-03\n  Push-up: 8 # ignore no-load, load-<|>jump', 'check load-jump: load-jump'],
])('%s', (marked, expected) => {
  expect(locate(marked)).toBe(expected);
});

test.each([
  ['the kind of a block, which the facts know', 'session 2026-11-03\n  for ti<|>me'],
  ['a comment', 'session 2026-11-03\n  Push-up: 8 # wa<|>rm'],
  ['a comma', 'session 2026-11-03\n  Push-up: 8  <|>,  9'],
  ['nothing', 'session 2026-11-03\n<|>\n'],
])('says nothing of %s', (_name, marked) => {
  expect(locate(marked)).toBeUndefined();
});
