import fc, { type Arbitrary } from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { printEntry } from '../../../../language/src/printing/print-entry.ts';
import { writePractice } from '../../../bench/generate-practice.ts';
import { ENTRIES } from '../../support/generators/entries.ts';
import { PATIENCE, RUNS } from '../../support/generators/runs.ts';
import { slip } from '../../support/generators/slips.ts';
import { SAMPLES } from '../../support/samples.ts';
import { type Comparison, compareReaders, startComparison } from './compare-readers.ts';
import { damage } from './damage.ts';
import { HEADERS, IRREGULAR_SESSIONS, REGULAR_LINES } from './regular-lines.ts';

vi.setConfig({ testTimeout: PATIENCE });

const LOGS = SAMPLES.filter(({ text }) => /^session/m.test(text));
const PRACTICE = [...writePractice(60_000).values()];
const changeLast = (text: string, change: (line: string) => string): string => {
  const lines = text.split('\n');
  return lines.with(-1, change(lines.at(-1)!)).join('\n');
};
const SAMPLE_LINES = [...LOGS.map(({ text }) => text), ...PRACTICE]
  .flatMap((text) => text.split('\n'))
  .filter((line) => /^\s+\S/.test(line))
  .map((line) => line.trim());

/** Says of both readers whether they agree, with the text where they do not. */
function expectSame({ differences: [first] }: Comparison): void {
  if (first) expect(first.fast, first.text).toStrictEqual(first.parsed);
  expect(first).toBeUndefined();
}

function compareAll(texts: readonly string[]): Comparison {
  const comparison = startComparison();
  for (const text of texts) compareReaders(text, comparison);
  expectSame(comparison);
  return comparison;
}

describe('the fast reader gives what the generated parser gives, or nothing', () => {
  test('for the samples, nearly all of which it reads by itself', () => {
    const { fast, sessions } = compareAll(LOGS.map(({ text }) => text));
    expect(sessions).toBeGreaterThan(50);
    expect(fast / sessions).toBeGreaterThan(0.95);
  });

  test('for a generated practice', () => {
    const { fast, sessions } = compareAll(PRACTICE);
    expect(fast / sessions).toBeGreaterThan(0.99);
  });

  test.each(REGULAR_LINES)('for the regular line %s', (line) => {
    const { fast } = compareAll([`units kg\nsession 2026-11-17 Ivo\n  ${line}\n`]);
    expect(fast).toBe(1);
  });

  test.each(HEADERS)('for the regular header %s', (header) => {
    expect(compareAll([`${header}\n  effort 7`]).fast).toBe(1);
  });

  test.each(IRREGULAR_SESSIONS)('or nothing, for %j', (text) => {
    expect(compareAll([text])).toMatchObject({ sessions: 1, fast: 0 });
  });

  const header = fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...HEADERS) },
    fc.tuple(fc.constantFrom(...HEADERS), damage).map(([line, change]) => change(line)),
  );
  const line = fc.oneof(
    { weight: 2, arbitrary: fc.constantFrom(...REGULAR_LINES) },
    fc.constantFrom(...SAMPLE_LINES),
  );
  const damaged = fc.tuple(line, damage).map(([text, change]) => change(text));
  const indent = fc.constantFrom('  ', '  ', '    ', '\t', '');
  const units = fc.constantFrom(
    '',
    'units kg\n',
    '# A log\n\nunits lb\n\n# Since autumn\n',
    'units kg # here\n',
  );
  const mutated = fc
    .tuple(units, header, fc.array(line, { maxLength: 2 }), damaged, fc.array(line, { maxLength: 1 }), indent)
    .map(([units, header, before, damaged, after, indent]) =>
      [units + header, ...[...before, damaged, ...after].map((text) => indent + text)].join('\n'),
    );
  const printed = ENTRIES.session.map(printEntry);
  const edited = fc.tuple(printed, fc.nat(40), damage).map(([text, at, change]) => {
    const lines = text.split('\n');
    return lines.with(at % lines.length, change(lines[at % lines.length]!)).join('\n');
  });

  const alone = fc
    .tuple(units, fc.constantFrom(...HEADERS), printed, fc.nat(40))
    .map(([units, header, text, at]) => {
      const [, ...lines] = text.split('\n');
      return `${units + header}\n${lines.length > 0 ? lines[at % lines.length] : ''}`;
    });

  test.each<[string, Arbitrary<string>, number]>([
    ['regular lines with damages', mutated, 30],
    ['what the model can express', printed, 1],
    ['a line of that alone', alone, 5],
    ['that line with damages', fc.tuple(alone, damage).map(([text, change]) => changeLast(text, change)), 5],
    ['a whole session with damages', edited, 1],
    ['slips', slip, 5],
  ])('for %s', (name, input, times) => {
    const comparison = startComparison();
    let inputs = 0;
    fc.assert(
      fc.property(input, (text) => {
        inputs++;
        comparison.differences.length = 0;
        compareReaders(text, comparison);
        expectSame(comparison);
      }),
      { ...RUNS, numRuns: RUNS.numRuns * times },
    );
    if (process.env.PLIMSOLL_RUNS)
      console.log(`${name}: ${inputs} inputs, ${comparison.sessions} sessions, ${comparison.fast} fast`);
  });
});
