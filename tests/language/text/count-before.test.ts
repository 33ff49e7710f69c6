import { describe, expect, test } from 'vitest';
import { countBefore } from '../../../language/src/text/count-before.ts';

describe('how many items are before something', () => {
  test.each<[number[], number]>([
    [[], 0],
    [[5], 0],
    [[1], 1],
    [[1, 2, 5, 6], 2],
    [[1, 2, 3], 3],
    [[4, 5, 6, 7, 8], 0],
    [[1, 1, 3, 3, 4], 4],
  ])('of %j before 4: %i', (list, count) => {
    expect(countBefore(list, (item) => item < 4)).toBe(count);
  });
});
