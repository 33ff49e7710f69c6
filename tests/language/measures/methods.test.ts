import { expect, test } from 'vitest';
import { findMethod, METHODS, type MethodId } from '../../../language/src/measures/methods.ts';
import { ONE_REP_MAX_FORMULA_IDS } from '../../../language/src/measures/one-rep-max.ts';

const ids = Object.keys(METHODS) as MethodId[];

test.each(ids)('%s has a title, a formula and a source', (id) => {
  const method = findMethod(id);
  expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  expect(method.title).toMatch(/^[A-Z0-9]/);
  expect(method.formula).not.toBe('');
  expect(method.source).not.toBe('');
});

test('no two methods share a title', () => {
  const titles = ids.map((id) => findMethod(id).title);
  expect(new Set(titles).size).toBe(ids.length);
});

test.each([...ONE_REP_MAX_FORMULA_IDS])('%s is described', (id) => {
  expect(findMethod(id).title).toContain('Estimated 1RM (');
});

test('the load ratio never goes without its caution', () => {
  const { note } = findMethod('acute-chronic');
  expect(note).toContain('no injury predictor');
  expect(note).toContain('Impellizzeri');
});

test('the two NSCA tables that disagree at 12 reps are named', () => {
  expect(findMethod('nsca-chart').title).toContain('NSCA Training Load Chart');
  expect(findMethod('nsca-chart').note).toMatch(/70 %.*67 %.*from memory/);
});

test('customs of the trade say so', () => {
  for (const id of ['time-under-tension', 'intensity-zones', 'adherence', 'work-rest'] as const) {
    expect(findMethod(id).source).toBe('common practice');
  }
});
