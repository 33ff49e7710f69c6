import { placeLines } from '@plimsoll/language/formatting/place-lines';
import { expect, test } from 'vitest';

const depths = (...lines: string[]): string =>
  placeLines(lines)
    .map(({ depth }) => depth)
    .join('');

test.each([
  [
    'a session',
    ['session 2026-11-17', 'Dip: 5', 'A circuit', 'Dip: 5', 'rest 0:20', 'effort 7', 'Dip: 5'],
    '0112212',
  ],
  [
    'labels of another letter leave a block',
    ['session', 'A superset', 'A1 Dip: 5', 'B1 Row: 5', 'Dip: 5'],
    '01211',
  ],
  ['labels of no lettered block stay in it', ['session', 'superset', 'A1 Dip: 5', 'B1 Row: 5'], '0122'],
  [
    'a plan',
    ['plan A', 'weeks 6', 'A straight', 'Dip: 5', 'day 1', 'Dip: 5', 'A straight', 'Dip: 5', 'weeks 6'],
    '011212231',
  ],
  ['notes', ['session', '> a', 'A straight', '> b', 'Dip: 5', '> c', 'effort 7', '> d'], '01122211'],
  ['a rest without a block', ['session', 'rest 0:20', '> a', 'Dip: 5'], '0111'],
  ['an unknown entry', ['sesion 2026-11-17', 'day 1', 'A straight', 'Dip: 5'], '0123'],
])('%s', (_name, lines, expected) => expect(depths(...lines)).toBe(expected));
