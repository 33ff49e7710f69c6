import { expect, test } from 'vitest';
import { printSets } from '../../../language/src/plans/print-projected.ts';
import { printBlockHeader } from '../../../language/src/printing/print-block.ts';
import { ATHLETE, PERSON, PLACE, project } from './project-text.ts';

/** The block's header and its lines, week by week. */
function weekly(
  header: string,
  lines: readonly string[],
  properties: readonly string[] = ['weeks 5'],
): string[] {
  const { days } = project(
    [
      PLACE + PERSON,
      'plan Copper Autumn',
      `  for ${ATHLETE}`,
      '  starts 2026-11-02',
      ...properties.map((property) => `  ${property}`),
      '  day 1',
      `    ${header}`,
      ...lines.map((line) => `      ${line}`),
    ].join('\n'),
  );
  return days.map(({ blocks }) =>
    [printBlockHeader(blocks[0]!.block), ...blocks[0]!.lines.map(printSets)].join(' | '),
  );
}

test.each<[string, string, string[], string[], string[]]>([
  [
    'a round more each week, up to the bound',
    'B circuit, 3 rounds, +1 round each week to 5, rest 1:00',
    ['Push-up: 10', 'Plank: 30 s'],
    ['weeks 5'],
    [
      'B circuit, 3 rounds, rest 1:00 | 10 | 30 s',
      'B circuit, 4 rounds, rest 1:00 | 10 | 30 s',
      ...Array.from({ length: 3 }, () => 'B circuit, 5 rounds, rest 1:00 | 10 | 30 s'),
    ],
  ],
  [
    'a deload takes its share of them and no step',
    // 3, 4, half of 4, 5.
    'B circuit, 3 rounds, +1 round each week',
    ['Push-up: 10'],
    ['weeks 4', 'deload week 3, sets 50%'],
    [
      'B circuit, 3 rounds | 10',
      'B circuit, 4 rounds | 10',
      'B circuit, 2 rounds | 10',
      'B circuit, 5 rounds | 10',
    ],
  ],
  [
    'where each round is written, the last stands for those to come; a week of its own stays',
    'B circuit, 2 rounds, +1 round each week',
    ['Push-up: 12, 10', 'week 3 Push-up: 12, 11, 10, 9'],
    ['weeks 3'],
    [
      'B circuit, 2 rounds | 12, 10',
      'B circuit, 3 rounds | 12, 10, 10',
      'B circuit, 4 rounds | 12, 11, 10, 9',
    ],
  ],
  [
    'with passes the last round’s',
    'B circuit, 2 rounds x 2 passes, +1 round each week',
    ['Push-up: 12, 11, 10, 9', 'Dip: 6, 5'],
    ['weeks 2'],
    [
      'B circuit, 2 rounds x 2 passes | 12, 11, 10, 9 | 6, 5',
      'B circuit, 3 rounds x 2 passes | 12, 11, 10, 9, 10, 9 | 6, 5, 5',
    ],
  ],
  [
    'fewer, never below one',
    'B circuit, 3 rounds, -1 round each week',
    ['Push-up: 12, 11, 10'],
    ['weeks 4'],
    [
      'B circuit, 3 rounds | 12, 11, 10',
      'B circuit, 2 rounds | 12, 11',
      'B circuit, 1 round | 12',
      'B circuit, 1 round | 12',
    ],
  ],
  [
    'steps of each round go on in the new one',
    'B superset, 2 rounds, +1 round each week',
    ['Push-up: 10, +1 rep each round'],
    ['weeks 2'],
    ['B superset, 2 rounds | 10, 11', 'B superset, 3 rounds | 10, 11, 12'],
  ],
  [
    'a window has an interval more',
    'C every 1:30 for 6:00, +1 round each week',
    ['Push-up: 8'],
    ['weeks 2'],
    ['C every 1:30 for 6:00 | 8', 'C every 1:30 for 7:30 | 8'],
  ],
  [
    'intervals by distance too',
    'C intervals 3 x 400 m, +1 round each week',
    ['Run: 400 m'],
    ['weeks 2'],
    ['C intervals 3 x 400 m | 400 m', 'C intervals 4 x 400 m | 400 m'],
  ],
])('%s', (_name, header, lines, properties, expected) => {
  expect(weekly(header, lines, properties)).toEqual(expected);
});

test('never more than a block may have', () => {
  expect(weekly('B circuit, 3 rounds, +500 rounds each week', ['Push-up: 10'], ['weeks 2'])[1]).toBe(
    'B circuit, 200 rounds | 10',
  );
});

test('a rest goes to a time, however it is written', () => {
  const rests = (step: string): string[] =>
    weekly(
      'B circuit, 3 rounds, rest 2:00',
      ['Push-up: 10', step],
      ['weeks 6', 'deload week 3, sets 67%'],
    ).map((text) => /rest (\S+)/.exec(text)![1]!);
  // 120, 105, no step, 90, 75, the bound.
  const expected = ['2:00', '1:45', '1:45', '1:30', '1:15', '1:15'];
  for (const step of ['-15 s', '-0:15', '-0.25 min'])
    for (const bound of ['1:15', '75 s', '75', '1.25 min']) {
      if (step === '-0.25 min' && bound === '75') continue;
      expect([step, bound, ...rests(`rest ${step} each week to ${bound}`)]).toEqual([
        step,
        bound,
        ...expected,
      ]);
    }
});

test('and stands in the header as well', () => {
  expect(
    weekly('B circuit, 3 rounds, rest 2:00, rest -30 s each week to 1:15', ['Push-up: 10'], ['weeks 3']),
  ).toEqual([
    'B circuit, 3 rounds, rest 2:00 | 10',
    'B circuit, 3 rounds, rest 1:30 | 10',
    'B circuit, 3 rounds, rest 1:15 | 10',
  ]);
});
