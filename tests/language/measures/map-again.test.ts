import { mapAgain } from '@plimsoll/language/measures/map-again';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const few = fc.array(fc.nat(3), { maxLength: 6 });

test('gives what a fresh look gives', () => {
  fc.assert(
    fc.property(few, few, (first, second) => {
      const double = (item: number): number => 2 * item;
      const { values } = mapAgain(second, double, mapAgain(first, double));
      expect(values).toEqual(second.map(double));
    }),
  );
});

test('looks at what is new alone', () => {
  const seen: string[] = [];
  const look = (item: string): string => {
    seen.push(item);
    return item.toUpperCase();
  };
  const before = mapAgain(['a', 'b', 'c', 'd'], look);
  seen.length = 0;
  expect(mapAgain(['a', 'b', 'x', 'd'], look, before).values).toEqual(['A', 'B', 'X', 'D']);
  expect(seen).toEqual(['x']);
});
