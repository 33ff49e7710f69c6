import { describe, expect, test } from 'vitest';
import { isAlike } from '../../../language/src/model/alike.ts';

describe('whether two facts say the same', () => {
  test.each<[unknown, unknown, boolean]>([
    [1, 1, true],
    [1, 2, false],
    [1, '1', false],
    [undefined, undefined, true],
    [null, {}, false],
    [{ a: 1, b: [2, { c: 3 }] }, { a: 1, b: [2, { c: 3 }] }, true],
    [{ a: 1, b: [2, { c: 3 }] }, { a: 1, b: [2, { c: 4 }] }, false],
    [{ a: 1 }, { a: 1, b: undefined }, true],
    [{ a: 1, b: undefined }, { a: 1 }, true],
    [{ a: 1 }, { a: 1, b: 2 }, false],
    [{ a: 1, b: 2 }, { a: 1 }, false],
    [[1, 2], [1, 2, 3], false],
    [[1, 2, 3], [1, 2], false],
    [[], {}, false],
    [{}, [], false],
  ])('%j and %j: %s', (one, other, alike) => {
    expect(isAlike(one, other)).toBe(alike);
  });
});
