import { expect, test } from 'vitest';
import { printAgain } from './print-again.ts';

test.each([
  ['bars 20, 10 kg', 'bars 20 kg, 10 kg'],
  ['plates 2 x 20, 4x10, 2x1.25 kg', 'plates 2x20, 4x10, 2x1.25 kg'],
  ['plates 45 lb, 2x10 kg', 'plates 1x45 lb, 2x10 kg'],
  ['collars 2.5kg', 'collars 2.5 kg'],
  ['dumbbells 4-32 by 2 kg pairs', 'dumbbells 4-32 by 2 kg pairs'],
  ['dumbbells 4-20 by 2 kg, 22.5-30 by 1.25 kg', 'dumbbells 4-20 by 2 kg, 22.5-30 by 1.25 kg'],
  ['dumbbells 5 lb-50 lb by 2 kg', 'dumbbells 5 lb-50 lb by 2 kg'],
  ['kettlebells 16, 24 kg', 'kettlebells 16 kg, 24 kg'],
  ['stacks Low Cable 5-100 by 2.5 kg', 'stacks Low Cable 5-100 by 2.5 kg'],
  ['has bench , mat', 'has bench, mat'],
])('%s prints as %s', (line, printed) => {
  expect(printAgain('place Marsh Hall #2', line)).toBe(printed);
});
