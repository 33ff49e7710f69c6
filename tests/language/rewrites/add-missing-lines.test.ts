import { addEffort, addTimes } from '@plimsoll/language/rewrites/add-missing-lines';
import { describe, expect, test } from 'vitest';
import { applyRewrite, listErrors, rewriteLog } from '../support/apply-rewrite.ts';

const HEAD = 'session 2026-11-17\n';

describe('time', () => {
  test.each([
    [
      '  B cir<|>cuit, 3 rounds\n    Dip: 5\n    > slow\n  effort 7\n',
      '  B circuit, 3 rounds\n    Dip: 5\n    > slow\n    time ?, ?, ?\n  effort 7\n',
    ],
    [
      '  superset, 2 rounds\n    Dip: 5\n    Ro<|>w: 5',
      '  superset, 2 rounds\n    Dip: 5\n    Row: 5\n    time ?, ?',
    ],
    ['  cir<|>cuit, 2 rounds\n    Dip: 5\n    time 1:00, ?\n', undefined],
    ['  cir<|>cuit\n    Dip: 5\n', undefined],
    ['  stra<|>ight\n    Dip: 5\n', undefined],
  ])('%j', (before, after) =>
    expect(rewriteLog(addTimes, HEAD + before)).toBe(after === undefined ? undefined : HEAD + after),
  );
});

describe('effort and lasted', () => {
  test('stand at the end of the session, before the comments of the next', () => {
    const text = `ses<|>sion 2026-11-17\n  Dip: 5\n  > well\n\n# next\nsession 2026-11-18\n`;
    const after = applyRewrite(addEffort, text)!;
    expect(after.title).toBe('Add effort and lasted');
    expect(after.files['log.plim']).toBe(
      'session 2026-11-17\n  Dip: 5\n  > well\n  effort ?\n  lasted ?\n\n# next\nsession 2026-11-18\n',
    );
    expect(listErrors(after.files['log.plim']!)).toEqual([]);
  });

  test('only what is missing', () => {
    expect(rewriteLog(addEffort, `<|>${HEAD}  effort 7`)).toBe(`${HEAD}  effort 7\n  lasted ?`);
    expect(rewriteLog(addEffort, `<|>${HEAD}  effort 7\n  lasted 50 min\n`)).toBeUndefined();
    expect(rewriteLog(addEffort, `<|>${HEAD}  missed, ill\n`)).toBeUndefined();
    expect(rewriteLog(addEffort, `${HEAD}  Dip: <|>5\n`)).toBeUndefined();
  });
});
