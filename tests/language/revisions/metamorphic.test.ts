import type { PlanEffect, Revision } from '@plimsoll/language/revisions/revision';
import { describe, expect, test } from 'vitest';
import { readFolder } from '../checks/workspace.ts';
import { printRevised, revise } from './revise.ts';

const samples = Object.fromEntries(readFolder('samples'));
const practice = Object.fromEntries(Object.entries(samples).filter(([path]) => path.startsWith('practice/')));
const plans = practice['practice/plans.plim']!;
const withPlans = (text: string) => ({ ...practice, 'practice/plans.plim': text });

/** Every third line of the plans that asks for sets. */
const asked = plans
  .split('\n')
  .flatMap((line, index) => (/^ {6}.*: /.test(line) && index % 3 === 0 ? [index] : []));

const withoutLine = (at: number): string =>
  plans
    .split('\n')
    .filter((_, index) => index !== at)
    .join('\n');

const effectsOf = ({ plans: revised }: Revision): PlanEffect[] => revised.flatMap(({ effects }) => effects);

test('a version against itself has no change', () => {
  expect(printRevised(samples, samples)).toEqual(['Nothing that counts has changed since HEAD.']);
});

test('everything is new against nothing, and gone the other way round', () => {
  const count = ({ plans: revised, sessions, definitions }: Revision, change: string): number =>
    [...revised, ...sessions, ...definitions].filter((each) => each.change === change).length;
  const [there, back] = [revise({}, samples), revise(samples, {})];
  const headers = Object.values(samples)
    .join('\n')
    .match(/^(?:units|exercise|place|athlete|plan|session) /gm)!;
  expect(count(there, 'added')).toBe(headers.length);
  expect(count(back, 'removed')).toBe(headers.length);
});

describe('a line that is taken out', () => {
  test('there are lines to take', () => expect(asked.length).toBeGreaterThan(4));

  test.each(asked.map((at) => [plans.split('\n')[at]!.trim(), at] as const))('%s', (line, at) => {
    const [there, back] = [
      revise(practice, withPlans(withoutLine(at))),
      revise(withPlans(withoutLine(at)), practice),
    ];
    const name = line.replace(/^week \d+ (?:test )?|^warmup /, '').split(':')[0]!;
    expect(
      there.plans.flatMap(({ lines }) => lines.map(({ kind, movement }) => `${kind} ${movement}`)),
    ).toEqual([`removed ${name}`]);
    expect(back.plans.flatMap(({ lines }) => lines.map(({ kind }) => kind))).toEqual(['added']);
    // What it costs one way it gives back the other way, in every sum.
    for (const [index, effect] of effectsOf(there).entries()) {
      const other = effectsOf(back)[index]!;
      for (const sum of ['sets', 'volume', 'time'] as const) {
        expect(Number.isFinite(effect[sum]?.value)).toBe(true);
        expect(effect[sum]!.value! + other[sum]!.value!).toBeCloseTo(0, 6);
      }
    }
  });
});

test('a movement that is renamed everywhere costs nothing', () => {
  const rename = (text: string): string => text.replaceAll('Harbour Wall Slide', 'Quay Slide');
  const renamed = Object.fromEntries(Object.entries(samples).map(([path, text]) => [path, rename(text)]));
  expect(printRevised(samples, renamed)).toEqual(['exercise Quay Slide, before Harbour Wall Slide']);
});
