import { sortSessions } from '@plimsoll/language/rewrites/sort-sessions';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { applyRewrite, openFiles, rewriteLog, sumSessions } from '../support/apply-rewrite.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';

vi.setConfig({ testTimeout: PATIENCE });

test('whole entries move with their comments, everything else stays', () => {
  const text = `<|># My log

units kg

# the later one
session 2026-11-18
  Dip: 5

  # about the row
  Row: 5 @ 40


place Marsh Hall

# the earlier one
# of two
session 2026-11-17 18:00
  Dip: 6
session 2026-11-17 7:30
  Dip: 7`;
  expect(applyRewrite(sortSessions, text)).toEqual({
    title: 'Sort the sessions of this file by date',
    kind: 'source.sortSessions',
    files: {
      'log.plim': `# My log

units kg

session 2026-11-17 7:30
  Dip: 7


place Marsh Hall

# the earlier one
# of two
session 2026-11-17 18:00
  Dip: 6
# the later one
session 2026-11-18
  Dip: 5

  # about the row
  Row: 5 @ 40`,
    },
  });
});

test('not offered where they are in order', () => {
  const text = '<|>session 2026-11-17\n  Dip: 5\n\nsession 2026-11-17\n  Row: 5\n\nsession 2026-11-18\n';
  expect(rewriteLog(sortSessions, text)).toBeUndefined();
});

const piece = fc.oneof(
  { weight: 5, arbitrary: fc.integer({ min: 10, max: 19 }).map((day) => `session 2026-11-${day}`) },
  fc.constantFrom(
    '',
    '',
    '# said',
    '  # aside',
    '  Dip: 5',
    '  Row: 5 @ 40 kg',
    'place Marsh Hall',
    'session',
    'session 31.12.2026',
  ),
);

test('no line is lost, no total changes, and dates are in order', () => {
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 25 }), (lines) => {
      const text = lines.join('\n');
      const after = rewriteLog(sortSessions, `<|>${text}`) ?? text;
      expect(after.split('\n').sort()).toEqual(text.split('\n').sort());
      const dates = openFiles({ 'log.plim': after })
        .file('log.plim')!
        .model.entries.flatMap(({ entry }) =>
          entry.kind === 'session' && entry.date?.date ? [entry.date.date] : [],
        );
      expect(dates).toEqual(dates.toSorted());
      expect(sumSessions({ 'log.plim': after })).toEqual(sumSessions({ 'log.plim': text }));
    }),
    { ...RUNS, numRuns: 3 * RUNS.numRuns },
  );
});
