import { provideHover } from '@plimsoll/server/features/hover';
import { expect, test } from 'vitest';
import { readCursor } from '../support/at-cursor.ts';
import { createContext } from '../support/feature-context.ts';

function hover(marked: string): string | undefined {
  const { text, ...position } = readCursor(marked);
  const found = provideHover(createContext({ 'a.plim': text }), 'a.plim', position);
  return (found?.contents as { value: string } | undefined)?.value;
}

test('the header of a circuit tells what it needs and repeats, and what would go well with it', () => {
  const text = hover(
    'session 2026-11-24\n  B cir<|>cuit, 3 rounds\n    Goblet Squat: 10 @ 16 kg\n    Push-up: 10\n',
  );
  expect(text).toMatch(/^The movements in turn, round by round\./);
  expect(text).toContain('Needs dumbbell');
  expect(text).toContain('A round takes about 1:15, 0:56 to 1:34, by common practice');
  expect(text).toMatch(
    /Would go well with it:\n\n- \*\*.+\*\*: .+ \((Goblet Squat|Push-up): .+\); .+ \((Goblet Squat|Push-up): .+\)\n- /,
  );
});

test.each<[title: string, text: string, expected: RegExp | undefined]>([
  [
    'done: no more movements are offered',
    'session 2026-11-24\n  cir<|>cuit, 1 round\n    Push-up: 10\n    time 0:50\n',
    /A round takes/,
  ],
  ['a plan', 'plan Ebb\n  day 1\n    B super<|>set, 3 rounds\n      Push-up: 10\n', /Would go well with it/],
  ['straight sets', 'session 2026-11-24\n  A stra<|>ight\n    Push-up: 10\n', undefined],
  ['nothing in it yet', 'session 2026-11-24\n  B cir<|>cuit, 3 rounds\n', undefined],
])('%s', (_title, text, expected) => {
  const found = hover(text);
  expect(found).toBeDefined();
  if (expected) expect(found).toMatch(expected);
  else expect(found).not.toMatch(/A round takes|Would go well/);
  if (text.includes('time 0:50')) expect(found).not.toContain('Would go well');
});

test('a name marks nothing up', () => {
  const text = hover(
    'exercise *Odd* Row\n\nsession 2026-11-24\n  cir<|>cuit, 2 rounds\n    *Odd* Row: 5\n    <b>: 3\n',
  );
  expect(text).not.toMatch(/(?<!\\)\*Odd|(?<!\\)<b/);
});
