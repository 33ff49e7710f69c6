import { expect, test } from 'vitest';
import { countMuscleSets } from '../../../language/src/measures/fractional-sets.ts';

test('Pelland et al. 2024 (computed): triceps from 4 and 3 indirect sets at 1/2 and 3 direct ones', () => {
  const work = [
    { sets: 4, fraction: 0.5 },
    { sets: 3, fraction: 0.5 },
    { sets: 3, fraction: 1 },
  ];
  expect(countMuscleSets(work)).toEqual({ direct: 3, fractional: 6.5, total: 10 });
});

test('a movement that does not reach the muscle counts nothing', () => {
  expect(countMuscleSets([{ sets: 5, fraction: 0 }])).toEqual({ direct: 0, fractional: 0, total: 0 });
  expect(countMuscleSets([])).toEqual({ direct: 0, fractional: 0, total: 0 });
});

test('other fractions count as written', () => {
  expect(countMuscleSets([{ sets: 6, fraction: 1 / 3 }])).toEqual({ direct: 0, fractional: 2, total: 6 });
});
