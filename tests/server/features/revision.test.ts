import { CommittedTexts } from '@plimsoll/server/committed-texts';
import { provideCodeLenses } from '@plimsoll/server/features/code-lens';
import type { FeatureContext } from '@plimsoll/server/features/context';
import { provideHover } from '@plimsoll/server/features/hover';
import { provideRevision } from '@plimsoll/server/features/revision';
import type { NoCommittedText } from '@plimsoll/server/messages';
import { describe, expect, test } from 'vitest';
import { type ContextOptions, createContext } from '../support/feature-context.ts';

const people = 'athlete Quill Harrow\n  max Back Squat: 100 kg on 2026-01-01\n';
const plan = `plan Ebb
  for Quill Harrow
  starts 2026-12-07
  weeks 2
  days Mon
  day 1 Squat
    Back Squat: 3x5 @ 70%
`;
const heavier = plan.replace('3x5', '4x5');
const neap = 'plan Neap\n  weeks 1\n  day 1\n    Dip: 3x8\n';

/** Plans as they are in the editor, and as they were committed or why that is not known. */
function open(
  text: string,
  committed: { readonly text: string } | { readonly missing: NoCommittedText } | undefined,
  options: ContextOptions = {},
): FeatureContext {
  const texts = new CommittedTexts();
  if (committed) texts.set('a.plim', { uri: 'a.plim', ...committed });
  return { ...createContext({ 'a.plim': text, 'people.plim': people }, options), committed: texts };
}

const lensesOf = (context: FeatureContext): string[] =>
  provideCodeLenses(context, 'a.plim')
    .filter(({ command }) => command?.command === 'plimsoll.showRevision')
    .map(
      ({ range, command }) => `${range.start.line} ${command!.title} ${JSON.stringify(command!.arguments)}`,
    );

const hoverAt = (context: FeatureContext, line: number, character: number): string =>
  (provideHover(context, 'a.plim', { line, character })!.contents as { value: string }).value;

describe('the lens', () => {
  test('stands over the plan that changed, in whichever line it now is', () => {
    expect(lensesOf(open(`${neap}${heavier}`, { text: plan + neap }))).toEqual([
      '4 since HEAD: +1 set, +350 kg a week, +2 min a day ["a.plim"]',
    ]);
  });

  test.each<[title: string, context: FeatureContext]>([
    ['without a change', open(plan, { text: plan })],
    ['where only the layout is another', open(plan.replaceAll('  ', '\t'), { text: plan })],
    ['where git is not known', open(heavier, { missing: 'restricted' })],
    ['in an editor that tells nothing of git', open(heavier, undefined)],
    ['until all logs are read', open(heavier, { text: plan }, { complete: false })],
    ['where no lenses are wanted', open(heavier, { text: plan }, { settings: { lenses: 'none' } })],
    ['over a plan in a conflict', open(`${heavier}<<<<<<< HEAD\n`, { text: plan })],
  ])('is absent %s', (_title, context) => {
    expect(lensesOf(context)).toEqual([]);
  });

  test.each<[title: string, text: string, expected: string]>([
    ['a new plan', plan + neap, '7 since HEAD: new ["a.plim"]'],
    ['another name alone', plan.replace('Ebb', 'Flood'), '0 since HEAD: renamed from Ebb ["a.plim"]'],
    [
      'a change that costs nothing',
      plan.replace('day 1 Squat', 'day 1 Legs'),
      '0 since HEAD: 1 change, the sums of each week are the same ["a.plim"]',
    ],
  ])('tells %s', (_title, text, expected) => {
    expect(lensesOf(open(text, { text: plan }))).toEqual([expected]);
  });

  test('follows what is typed, and what other files say', () => {
    const context = open(heavier, { text: plan });
    lensesOf(context);
    context.practice.setFile('a.plim', plan.replace('3x5', '5x5'));
    expect(lensesOf(context)[0]).toContain('+2 sets, +700 kg a week');
    context.practice.setFile('people.plim', people.replace('100 kg', '200 kg'));
    expect(lensesOf(context)[0]).toContain('+2 sets, +1 400 kg a week');
    // A tested max since then: 70 % of 50 kg is 35 kg.
    context.practice.setFile('b.plim', 'session 2026-11-20 Quill Harrow\n  test Back Squat: 1 @ 50 kg\n');
    expect(lensesOf(context)[0]).toContain('+2 sets, +350 kg a week');
  });
});

describe('the hover on a plan', () => {
  test.each<[NoCommittedText, RegExp]>([
    ['restricted', /not known in Restricted Mode: git is asked in trusted folders only\.$/],
    ['no git', /not known: git, or the Git extension of the editor, is missing or turned off\.$/],
    ['no repository', /not known: the file is in no git repository that the editor has opened\.$/],
    ['not committed', /This file is not committed yet, so there is nothing to compare the plan with\.$/],
  ])('says why nothing is known: %s', (missing, expected) => {
    const context = open(heavier, { missing });
    expect(hoverAt(context, 0, 6)).toMatch(expected);
    expect(provideRevision(context, 'a.plim')).toMatch(new RegExp(`${expected.source.slice(0, -1)}\n$`));
  });

  test('says what the lens says, on its header alone', () => {
    const context = open(heavier, { text: plan });
    expect(hoverAt(context, 0, 6)).toMatch(/\n\nSince HEAD: \+1 set, \+350 kg a week, \+2 min a day$/);
    expect(hoverAt(context, 0, 1)).toMatch(/\n\nSince HEAD: \+1 set/);
    expect(hoverAt(context, 6, 6)).not.toContain('HEAD');
  });
});

describe('the document', () => {
  test('tells all that changed in the file', () => {
    const text = `${heavier}session 2026-11-20 Quill Harrow\n  Back Squat: 5 @ 60 kg\n`;
    expect(provideRevision(open(text, { text: plan }), 'a.plim')).toBe(`## plan Ebb

- day 1 Squat
  - Back Squat: 3x5 → 4x5 @ 70%
- since HEAD: +1 set, +350 kg a week, +2 min a day
- hard sets a week: glutes +1, quadriceps +1, adductors +0.5, lower back +0.5, hamstrings +0.3

| week | sets | kg | min a day |
| --- | --- | --- | --- |
| 1 | 3 → 4 | 1 050 → 1 400 | 5 → 7 |
| 2 | 3 → 4 | 1 050 → 1 400 | 5 → 7 |

## session 2026-11-20 Quill Harrow, new
`);
  });

  test.each<[title: string, context: FeatureContext, expected: string]>([
    ['nothing changed', open(plan, { text: plan }), 'Nothing that counts has changed since HEAD.\n'],
    [
      'the logs are not read yet',
      open(heavier, { text: plan }, { complete: false }),
      'What changed is not known yet: the logs are being read.\n',
    ],
  ])('%s', (_title, context, expected) => {
    expect(provideRevision(context, 'a.plim')).toBe(expected);
  });

  test('marks nothing up with a coach’s words', () => {
    const markdown = provideRevision(open(`${plan}  > *slow* <b>\n`, { text: plan }), 'a.plim');
    expect(markdown).toContain('\\*slow\\* \\<b\\>');
  });
});

test('a text that was told before is no news', () => {
  const texts = new CommittedTexts();
  const told = [
    texts.set('a', { uri: 'a', text: plan }),
    texts.set('a', { uri: 'a', text: plan }),
    texts.set('a', { uri: 'a', missing: 'no git' }),
    texts.set('a', { uri: 'a', missing: 'no git' }),
    texts.set('a', { uri: 'a', text: plan }),
  ];
  expect(told).toEqual([true, false, true, false, true]);
  texts.forget('a');
  expect(texts.find('a')).toBeUndefined();
});
