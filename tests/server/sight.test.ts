import { Sight } from '@plimsoll/server/sight';
import { describe, expect, test } from 'vitest';

const URI = 'file:///log.plim';

describe('of an editor that tells what it shows', () => {
  const create = () => {
    const sight = new Sight();
    sight.isTold = true;
    return sight;
  };

  test('the top is in sight until it does', () => {
    const sight = create();
    expect(sight.of(URI)).toEqual({ first: 0, last: 120 });
    sight.tell(URI, { first: 900, last: 940 });
    expect(sight.of(URI)).toEqual({ first: 900, last: 940 });
    sight.forget(URI);
    expect(sight.of(URI)).toEqual({ first: 0, last: 120 });
  });

  test('lenses are given far about that, and anew before their end comes in sight', () => {
    const sight = create();
    sight.tell(URI, { first: 900, last: 940 });
    expect(sight.give(URI)).toEqual({ first: 700, last: 1140 });
    expect(sight.tell(URI, { first: 780, last: 820 })).toBe(false);
    expect(sight.tell(URI, { first: 1020, last: 1060 })).toBe(false);
    expect(sight.tell(URI, { first: 779, last: 819 })).toBe(true);
    // The editor was asked to look afresh, and has not done so yet.
    expect(sight.tell(URI, { first: 500, last: 540 })).toBe(false);
    expect(sight.give(URI)).toEqual({ first: 300, last: 740 });
    expect(sight.tell(URI, { first: 621, last: 661 })).toBe(true);
  });

  test('above the first line there is nothing to come', () => {
    const sight = create();
    sight.give(URI);
    expect(sight.tell(URI, { first: 0, last: 40 })).toBe(false);
  });

  test('what it asks about tells nothing more', () => {
    const sight = create();
    sight.note(URI, 500);
    expect(sight.of(URI)).toEqual({ first: 0, last: 120 });
  });

  test('lenses that nobody asked for need not be given anew', () => {
    expect(create().tell(URI, { first: 5000, last: 5040 })).toBe(false);
  });
});

test('an editor that does not is given all, and shows what it asks about', () => {
  const sight = new Sight();
  expect(sight.of(URI)).toBeUndefined();
  expect(sight.give(URI)).toEqual({ first: 0, last: Number.POSITIVE_INFINITY });
  for (const line of [40, 60, 30]) sight.note(URI, line);
  expect(sight.of(URI)).toEqual({ first: 30, last: 60 });
  sight.note(URI, 5000);
  expect(sight.of(URI)).toEqual({ first: 5000, last: 5000 });
});
