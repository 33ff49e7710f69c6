import { readdirSync, readFileSync } from 'node:fs';
import { CHECKS, type CheckCode, type CheckRule } from '@plimsoll/language/checks/catalogue';
import { expect, test } from 'vitest';
import { MESSAGE_ROWS } from '../reading/message-rows.ts';

/** Codes that rest on other entries or files, on the day, or on a definition: their rows stand in this folder. */
const ACROSS_FILES: readonly CheckCode[] = [
  'stray-line',
  'name-without-colon',
  'unknown-movement',
  'unknown-athlete',
  'unknown-place',
  'unknown-plan',
  'defined-twice',
  'which-athlete',
  'one-or-two',
  'session-order',
  'session-twice',
  'future-session',
  'while-away',
  'to-avoid',
  'no-load',
  'hold-in-reps',
  'distance-in-reps',
  'not-loadable',
  'lacks-equipment',
  'two-loads-one-bar',
  'load-jump',
  'top-of-range',
  'two-for-two',
  'week-jump',
  'plan-day',
  'plan-order',
  'plan-days',
  'plan-step',
  'plan-ceiling',
  'not-as-planned',
  'merge-conflict',
  'unknown-check',
  'caution-youth',
  'caution-pain',
  'caution-max-test',
  'caution-layoff',
];

/** Codes that one entry shows by itself. */
const ALONE: readonly CheckCode[] = [
  'syntax',
  'unknown-entry',
  'unknown-item',
  'outside-entry',
  'spelling-of-unit',
  'spelling-of-word',
  'decimal-comma',
  'missing-unit',
  'missing-load',
  'missing-sets',
  'missing-name',
  'missing-value',
  'set-without-load',
  'time-as-set',
  'reps-first',
  'plate-count',
  'sets-spelled-apart',
  'side-slip',
  'load-or-rating',
  'rating-list',
  'uneven-loads',
  'unclear-time',
  'odd-date',
  'impossible-date',
  'out-of-range',
  'implement-count',
  'for-plans',
  'name-rules',
  'repeated-property',
  'vocabulary',
  'tempo-form',
  'range-order',
  'round-count',
  'joins-rounds',
  'time-count',
  'cell-count',
  'done-mismatch',
];

const tables = readdirSync(import.meta.dirname)
  .filter((name) => name.startsWith('check-'))
  .map((name) => readFileSync(`${import.meta.dirname}/${name}`, 'utf8'))
  .join('\n');

test.each(ACROSS_FILES)('%s has a row that shows its message', (code) => {
  expect(tables).toContain(` [${code}]`);
});

test('every code is in one of the lists', () => {
  expect([...ACROSS_FILES, ...ALONE].sort()).toEqual(Object.keys(CHECKS).sort());
});

const ROWS = [...tables.split('\n'), ...MESSAGE_ROWS.split('\n')];

/** Rows of a code: a message, and behind it or below it each fix. */
function listRows(code: string): string[] {
  return ROWS.flatMap((row, index) => {
    if (!row.includes(` [${code}]`)) return [];
    const below = ROWS.slice(index + 1);
    const end = below.findIndex((next) => !/^ {6}→ /.test(next));
    return [row, ...below.slice(0, end)].join('\n');
  });
}

test.each(Object.entries<CheckRule>(CHECKS))(
  'what %s says is word for word what a row shows',
  (code, rule) => {
    expect(tables + MESSAGE_ROWS).toContain(`${rule.says.replaceAll("'", "\\'")} [${code}]`);
  },
);

test.each(Object.entries<CheckRule>(CHECKS))(
  '%s names a fix where a row shows one, and only there',
  (code, { fix }) => {
    expect(listRows(code).some((row) => /\] → |^ {6}→ /m.test(row))).toBe(fix !== undefined);
  },
);

test('whatever has a number has a source, and says what the number stands for', () => {
  for (const [code, { numbers, from = '', history = '', source }] of Object.entries<CheckRule>(CHECKS)) {
    const named = [...`${from} ${history}`.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
    expect([...new Set(named)].sort(), code).toEqual(Object.keys(numbers ?? {}).sort());
    if (from || history) expect(source, code).toEqual(expect.any(String));
  }
});

test('every code is in kebab-case, says why in one line, and a caution names its source', () => {
  for (const [code, rule] of Object.entries(CHECKS)) {
    expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(rule.why).toMatch(/^[A-Z].*[.?]$/);
    if (code.startsWith('caution-'))
      expect(rule, code).toMatchObject({ severity: 'info', source: expect.any(String) });
  }
});
