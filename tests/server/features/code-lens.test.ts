import { findLensFile, provideCodeLenses, resolveCodeLens } from '@plimsoll/server/features/code-lens';
import type { FeatureContext } from '@plimsoll/server/features/context';
import { provideExplanation } from '@plimsoll/server/features/explain';
import type { ExplainParams } from '@plimsoll/server/messages';
import { describe, expect, test } from 'vitest';
import type { CodeLens } from 'vscode-languageserver';
import { createContext } from '../support/feature-context.ts';

const text = `athlete Ann Vell

session 2026-11-03 Ann Vell
  A straight
    Back Squat: 5 @ 60 kg rpe 8
`;

/** As an editor shows them: what it lacks it asks for. */
const listShown = (context: FeatureContext) =>
  provideCodeLenses(context, 'a.plim').map((lens) => (lens.command ? lens : resolveCodeLens(context, lens)));

test('each lens carries what its explanation is asked with', () => {
  const context = createContext({ 'a.plim': text });
  const lenses = listShown(context);
  expect(lenses.map(({ range }) => range.start.line)).toEqual([2, 3, 4]);
  for (const { command } of lenses) {
    expect(command!.command).toBe('plimsoll.explain');
    const [params] = command!.arguments as [ExplainParams];
    expect(provideExplanation(context, 'a.plim', params).markdown).toMatch(/^\*\*.+\*\*\n\n- Formula: /);
  }
});

test('until all files are read, what needs history shows as loading', () => {
  const titles = listShown(createContext({ 'a.plim': text }, { complete: false })).map(
    ({ command }) => command!.title,
  );
  expect(titles[0]).toContain('history loading…');
  expect(titles[2]).toContain('history loading…');
});

test('a lens that is no longer there has no explanation', () => {
  const context = createContext({ 'a.plim': text });
  const params: ExplainParams = { lens: [0, 2, 'line', 0] };
  expect(provideExplanation(context, 'a.plim', params)).toEqual({ uri: 'a.plim', line: 2, markdown: null });
});

test('of two maxes of a line each has its own explanation', () => {
  const line = '    Dumbbell Bench Press: 8 @ 2x20 kg rpe 8, 8 @ 30 kg rpe 8\n';
  const context = createContext({ 'a.plim': text.replace(/ {4}.*\n/, line) });
  const [one, other] = listShown(context).slice(2);
  const explanations = [one, other].map((lens) => {
    const [params] = lens!.command!.arguments as [ExplainParams];
    return provideExplanation(context, 'a.plim', params).markdown;
  });
  expect(explanations).toEqual([expect.stringContaining('20 kg'), expect.stringContaining('30 kg')]);
});

test('a lens of another server is not known', () => {
  expect(findLensFile([1_000_000, 2, 'line', 0])).toBeUndefined();
});

test('a lens gets its words when they are asked for, and none once the text has no such lens', () => {
  const context = createContext({ 'a.plim': text });
  const [, , line] = provideCodeLenses(context, 'a.plim');
  expect(line!.command).toBeUndefined();
  expect(resolveCodeLens(context, line!).command!.title).toMatch(/^e1RM /);
  context.practice.setFile('a.plim', text.replace(' @ 60 kg', ''));
  expect(resolveCodeLens(context, line!).command!.title).toBe('');
});

test('words that an edit leaves as they were come without being asked for', () => {
  const context = createContext({ 'a.plim': text });
  const before = listShown(context);
  context.practice.setFile('a.plim', `${text}\nsession 2026-11-20 Ann Vell\n  Push-Up: 9\n`);
  const after = provideCodeLenses(context, 'a.plim');
  expect(after.slice(0, before.length).map(({ command }) => command)).toEqual(
    before.map(({ command }) => command),
  );
  expect(after.at(-1)!.command).toBeUndefined();
});

describe('the lenses in sight', () => {
  const many = Array.from(
    { length: 100 },
    (_, index) =>
      `session 2026-11-03 ${String(index % 24).padStart(2, '0')}:00 Ann Vell\n  Push-Up: ${index + 1}\n\n`,
  ).join('');
  const lineOf = (lens: CodeLens) => lens.range.start.line;
  const listWorded = (context: FeatureContext) =>
    provideCodeLenses(context, 'a.plim').flatMap((lens) => (lens.command ? [lineOf(lens)] : []));

  test('come with their words after an edit, and no others', () => {
    const context = createContext({ 'a.plim': many });
    const seen = provideCodeLenses(context, 'a.plim').filter(
      (lens) => lineOf(lens) >= 30 && lineOf(lens) <= 60,
    );
    for (const lens of seen) resolveCodeLens(context, lens);
    context.practice.setFile('a.plim', many.replace('Push-Up: 1\n', 'Push-Up: 2\n'));
    expect(listWorded(context)).toEqual(seen.map(lineOf));
  });

  test('are others once the editor was scrolled', () => {
    const context = createContext({ 'a.plim': many });
    const lenses = provideCodeLenses(context, 'a.plim');
    for (const lens of [lenses[0]!, lenses.at(-1)!]) resolveCodeLens(context, lens);
    context.practice.setFile('a.plim', many.replace('Push-Up: 1\n', 'Push-Up: 2\n'));
    expect(listWorded(context)).toEqual([lineOf(lenses.at(-1)!)]);
  });
});

test('of a long file an editor that tells what it shows is given the lenses about that', () => {
  const long = `${text}
place Gantry Loft
${'\n'.repeat(900)}session 2026-11-10 Ann Vell\n  A straight\n    Push-Up: 9\n`;
  const context = createContext({ 'a.plim': long });
  context.sight.isTold = true;
  const listLines = () => provideCodeLenses(context, 'a.plim').map(({ range }) => range.start.line);
  expect(listLines()).toEqual([2, 3, 4]);
  context.sight.tell('a.plim', { first: 890, last: 910 });
  expect(listLines()).toEqual([907, 908]);
});

test('of two lenses over one line each has its own words', () => {
  const both = text.replace('5 @ 60 kg rpe 8', '5 @ 60 kg rpe 8, 5 @ 2x20 kg rpe 8');
  const titles = listShown(createContext({ 'a.plim': both })).map(({ command }) => command!.title);
  expect(titles.slice(2).map((title) => / from set (\d)/.exec(title)?.[1])).toEqual(['1', '2']);
});
