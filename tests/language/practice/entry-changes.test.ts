import { createPractice } from '@plimsoll/language/create-practice';
import { compareEntries } from '@plimsoll/language/practice/entry-changes';
import { expect, test } from 'vitest';

const A = 'session 2026-03-01\n';
const B = 'session 2026-03-02\n';
const C = 'session 2026-03-03\n';

/** What an edit from one text to another does to the entries, each by its date and line. */
function compare(before: string, after: string) {
  const practice = createPractice();
  practice.setFile('a.plim', before);
  const earlier = practice.file('a.plim')!.model.entries;
  practice.setFile('a.plim', after);
  const name = ({ entry, line }: (typeof earlier)[number]): string =>
    `${entry.kind === 'session' ? entry.date?.text : entry.kind} in ${line}`;
  const { removed, added, moved } = compareEntries(earlier, practice.file('a.plim')!.model.entries);
  return {
    removed: removed.map(name),
    added: added.map(name),
    moved: moved.map((each) => `${name(each)} from ${each.lineBefore}`),
  };
}

test.each([
  ['nothing', A + B, A + B, { removed: [], added: [], moved: [] }],
  [
    'a line typed in the middle',
    A + B + C,
    `${A}${B}  effort 7\n${C}`,
    {
      removed: ['2026-03-02 in 1'],
      added: ['2026-03-02 in 1'],
      moved: ['2026-03-03 in 3 from 2'],
    },
  ],
  [
    'two that change places',
    A + B + C,
    B + A + C,
    { removed: [], added: [], moved: ['2026-03-02 in 0 from 1', '2026-03-01 in 1 from 0'] },
  ],
  [
    'the same text written twice, once taken out',
    A + A + C,
    A + C,
    {
      removed: ['2026-03-01 in 0'],
      added: [],
      moved: ['2026-03-01 in 0 from 1', '2026-03-03 in 1 from 2'],
    },
  ],
])('%s', (_name, before, after, expected) => {
  expect(compare(before, after)).toEqual(expected);
});
