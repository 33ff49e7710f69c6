import { expect, test } from 'vitest';
import { check, lines } from './workspace.ts';

const joins = (place: string, advice: string, fixed: string) =>
  `log.plim:${place} Plank counts in each of the 3 rounds above: write a line such as ${advice} [joins-rounds] → ${fixed}`;

// A movement that looks as if its rounds were over.
test.each([
  [
    'farther left than the others',
    lines('session 2026-11-17', '  B circuit, 3 rounds', '    Push-up: 10', '  Plank: 45 s'),
    [
      joins(
        '4:3',
        'C straight before it, or indent it like the others',
        'Begin C straight here: C straight ⏎   Plank: 45 s',
      ),
    ],
  ],
  [
    'behind the times',
    lines(
      'session 2026-11-17',
      '  circuit, 3 rounds',
      '    Push-up: 10',
      '    time 2:00, 2:05, 2:10',
      '    Plank: 45 s',
    ),
    [
      joins(
        '5:5',
        'straight before it, or put it above the times',
        'Begin straight here: straight ⏎     Plank: 45 s',
      ),
    ],
  ],
  [
    'before a block that has the next letter',
    lines('session 2026-11-17', '  B circuit, 3 rounds', '    Push-up: 10', '  Plank: 45 s', '  C straight'),
    [
      joins(
        '4:3',
        'straight before it, or indent it like the others',
        'Begin straight here: straight ⏎   Plank: 45 s',
      ),
    ],
  ],
  [
    'everything at the margin, as typed on a phone',
    lines('session 2026-11-17', 'B circuit, 3 rounds', 'Push-up: 10', 'Plank: 45 s', 'time 2:00, ?, ?'),
    [],
  ],
  [
    'the times first',
    lines(
      'session 2026-11-17',
      '  circuit, 3 rounds',
      '    time 2:00, ?, ?',
      '    Push-up: 10',
      '    Plank: 45 s',
    ),
    [],
  ],
  [
    'straight work, whose lines stand by themselves',
    lines('session 2026-11-17', '  A straight', '    Push-up: 10', '  Plank: 45 s'),
    [],
  ],
  [
    'behind lettered lines without a header, where it stands by itself',
    lines('session 2026-11-17', '  A1 Push-up: 10, 10', '  A2 Plank: 30 s, 30 s', '  Plank: 45 s'),
    [],
  ],
])('%s', (_title, text, problems) => {
  expect(check(text)).toEqual(problems);
});
