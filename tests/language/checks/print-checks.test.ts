import { readFileSync } from 'node:fs';
import { CHECKS, type CheckCode, findCheck } from '@plimsoll/language/checks/catalogue';
import { groupChecks, printChecks } from '@plimsoll/language/checks/print-checks';
import { expect, test } from 'vitest';

const page = printChecks();

test('language/checks.md is what the table of checks gives (npm run generate)', () => {
  expect(readFileSync(new URL('../../../language/checks.md', import.meta.url), 'utf8')).toBe(page);
});

test('every check stands under one heading, in the order of the table', () => {
  expect(groupChecks().flatMap(({ codes }) => codes)).toEqual(Object.keys(CHECKS));
  expect(groupChecks().every(({ codes }) => codes.length > 0)).toBe(true);
});

test.each(Object.keys(CHECKS) as CheckCode[])('%s has its severity, message and reason', (code) => {
  const { severity, says, fix, why, source } = findCheck(code);
  const plain = page.replace(/\\([^\w\s])/g, '$1');
  const section = plain.split('### ').find((text) => text.startsWith(`\`${code}\`\n`))!;
  expect(section).toContain(`- Severity: ${severity}\n`);
  expect(section).toContain(`- Says, for example: ${says}\n`);
  expect(section).toContain(`- Why: ${why}\n`);
  expect(section.includes(`- A fix: ${fix}\n`)).toBe(fix !== undefined);
  expect(section.includes(`- Source: ${source}\n`)).toBe(source !== undefined);
});

test('thresholds and what must be recorded first stand there with their numbers', () => {
  expect(page).toContain(
    '- From: more than 15 % over the heaviest load for as many reps or more in 90 days\n- After: 5 sessions of the movement\n',
  );
  expect(page).toContain(
    '- From: volume more than 30 % over the mean of the last 4 trained weeks, in the last 28 days\n- After: 4 trained weeks among the 12 weeks before, wholly recorded\n',
  );
  expect(page).not.toMatch(/[{}]|undefined/);
});
