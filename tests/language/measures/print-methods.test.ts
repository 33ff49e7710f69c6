import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CONVENTIONS, findMethod, METHODS, type MethodId } from '../../../language/src/measures/methods.ts';
import { groupMethods, printMethods } from '../../../language/src/measures/print-methods.ts';

const page = printMethods();

test('language/measures.md is what the table of methods gives (npm run generate)', () => {
  expect(readFileSync(new URL('../../../language/measures.md', import.meta.url), 'utf8')).toBe(page);
});

test('every method stands under one heading, in the order of the table', () => {
  expect(groupMethods().flatMap(({ ids }) => ids)).toEqual(Object.keys(METHODS));
  expect(groupMethods().every(({ ids }) => ids.length > 0)).toBe(true);
});

test.each(Object.keys(METHODS) as MethodId[])('%s has its title, formula, source and note', (id) => {
  const { title, formula, source, note } = findMethod(id);
  const plain = page.replace(/\\([^\w\s])/g, '$1');
  const section = plain.split('### ').find((text) => text.startsWith(`${title}\n`))!;
  expect(section).toContain(`- Formula: ${formula}\n`);
  expect(section).toContain(`- Source: ${source}\n`);
  expect(section.includes('- Note: ')).toBe(note !== undefined);
  if (note) expect(section).toContain(`- Note: ${note}\n`);
});

test.each(CONVENTIONS)('$title stands behind them', ({ title, formula, source, note }) => {
  const plain = page.replace(/\\([^\w\s])/g, '$1');
  const section = plain
    .split('## What all of them rest on')[1]!
    .split('### ')
    .find((text) => text.startsWith(title))!;
  expect(section).toContain(`- Formula: ${formula}\n- Source: ${source}\n- Note: ${note}\n`);
});

test('signs of a formula mark nothing up', () => {
  expect(page).not.toMatch(/[^\\][*_<>|~]/);
});
