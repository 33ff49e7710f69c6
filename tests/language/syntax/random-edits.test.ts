import { readFileSync } from 'node:fs';
import { recogniseLine } from '@plimsoll/language/syntax/line-kind';
import { LINE_WORDS } from '@plimsoll/language/vocabulary/keywords';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RUNS } from '../support/generators/runs.ts';
import { readText, readWhole } from '../support/read-text.ts';
import { describeRest } from './describe-rest.ts';

const SAMPLE = readFileSync(new URL('../../../samples/first-day.plim', import.meta.url), 'utf8').split('\n');
const MORE = [
  'place Herne Loft',
  '  bars 20 kg, 10 kg',
  '  dumbbells 4-32 by 2 kg',
  'plan Wicker Base',
  '  for Tansy Bollard',
  '  day 1 Squat',
  '    A straight, rest 3:00',
  '      Goblet Squat: 3x5 @ 70% | 4x4 @ 75%, +2.5 kg each week',
  '      week 5 test Goblet Squat: 1 @ 100%',
  'session 2026-11-24 07:10 Tansy Bollard at Herne Loft, Wicker Base week 2 day 1',
  '  warmup Goblet Squat: 5 @ 12, 5 @ 16 kg',
  '  A1 Split Squat: 8/side, 8 left 7 right @ 24&16 kg, tempo 3-1-X-0',
  '  A2 Pull-up: 6, 5, 4 of 5 @ bw+5 kg rpe 8 drop 3 @ bw',
  '  B for time, 3 rounds x 2 passes, cap 12:00',
  '  Rower: 500 m in 1:52 @ 2:05/500 m',
  '  done 2 of 3 rounds + 12 cal + 5',
  '  pain 2 right knee',
];
const LINES = [...SAMPLE, ...MORE];
/** Lines that open no entry: an edit of those is about the neighbours inside an entry. */
const INNER = LINES.flatMap((line, index) => (/^\s+\S/.test(line) ? [index] : []));

/** What fingers, phones, other programs and other languages put into a line. */
const odd = fc.oneof(
  fc.constantFrom(
    '@',
    ',',
    ':',
    '|',
    '/',
    '+',
    '-',
    '(',
    ')',
    '?',
    '%',
    '&',
    '#',
    '>',
    'x',
    ' ',
    '.',
    "'",
    '"',
  ),
  fc.constantFrom(
    'rpe',
    'drop',
    'kg',
    'rest',
    'rounds',
    'session',
    '2026-11-17',
    '3x5',
    '1:00',
    'at',
    'of',
    'week 5',
  ),
  fc.constantFrom(
    '\t',
    '\u00a0',
    '\u200b',
    '\u202e',
    '\u2066',
    '\u0301',
    '\u2013',
    '\u00d7',
    '\ufeff',
    '\u0000',
    '\u2028',
  ),
  fc.constantFrom('🏋️', '👩‍🏫', 'ß', 'İ', 'é', '深蹲', 'قرفصاء', 'приседание', '\ud800', '\udc00', '\ud83c'),
  fc.string({ unit: 'binary', maxLength: 4 }).map((text) => text.replace(/[\r\n]/g, '')),
);

interface Edit {
  readonly from: number;
  readonly length: number;
  readonly text: string;
}

const edit: fc.Arbitrary<Edit> = fc.record({
  from: fc.nat(90),
  length: fc.constantFrom(0, 0, 1, 1, 2, 5, 40),
  text: fc.oneof(
    fc.constant(''),
    odd,
    fc.tuple(odd, odd).map((both) => both.join('')),
  ),
});

const applyEdit = (line: string, { from, length, text }: Edit): string => {
  const at = 1 + (from % line.length);
  return line.slice(0, at) + text + line.slice(at + length);
};

/** Each word that may open a line, before anything. */
const opened = fc
  .tuple(
    fc.constantFrom(...LINE_WORDS, 'warm-up', 'A1', 'A circuit', 'Goblet Squat:'),
    fc.array(odd, { maxLength: 5 }),
  )
  .map(
    ([word, tail]) =>
      () =>
        `  ${word}${tail.join(' ')}`,
  );

const damage: fc.Arbitrary<(line: string) => string> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .array(edit, { minLength: 1, maxLength: 3 })
      .map((edits) => (line: string) => edits.reduce(applyEdit, line)),
  },
  { weight: 3, arbitrary: opened },
  fc.constant((line: string) => line + line.trimStart()),
  fc.nat(90).map((at) => (line: string) => line.slice(0, 1 + (at % line.length))),
  fc.nat(90).map((at) => (line: string) => ` ${line.slice(at % line.length)}`),
);

test('a damaged line harms no other', { timeout: 60_000 }, () => {
  const whole = new Map<number, unknown>();
  fc.assert(
    fc.property(fc.constantFrom(...INNER), damage, (at, change) => {
      const damaged = change(LINES[at]!);
      fc.pre(!/[\r\n]/.test(damaged));
      const kind = recogniseLine(damaged, 'session').kind;
      fc.pre(kind !== 'header' && kind !== 'title');
      const before = whole.get(at) ?? describeRest(LINES, at, 'placed');
      whole.set(at, before);
      const text = LINES.with(at, damaged);
      const problems = readText(...text).entries.flatMap(({ line, entry }) =>
        entry.problems.map(({ code, span }) => ({ code, line: line + span.line })),
      );
      // A line that is well-formed and says something a second time counts in place of the first.
      fc.pre(!problems.some(({ code, line }) => code === 'repeated-property' && line === at));
      expect(describeRest(text, at, 'placed'), JSON.stringify(damaged)).toEqual(before);
      const syntax = problems.filter(({ code }) => code === 'syntax').map(({ line }) => line);
      expect(syntax.length === 0 ? [at] : syntax, JSON.stringify(damaged)).toEqual([at]);
    }),
    { ...RUNS, numRuns: RUNS.numRuns * 2 },
  );
});

test('any text at all is read, and every place that is named lies in it', { timeout: 60_000 }, () => {
  const pieces = fc.oneof(
    odd,
    fc.constantFrom('\n', '\r', '\r\n', '  '),
    fc.constantFrom(...LINES.map((line) => `${line}\n`)),
  );
  const anything = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc.uint8Array({ maxLength: 400 }).map((bytes) => new TextDecoder().decode(bytes)),
    fc.array(pieces, { maxLength: 60 }).map((parts) => parts.join('')),
  );
  fc.assert(
    fc.property(anything, (text) => {
      const { model, lines } = readWhole(text);
      for (const { line, entry } of model.entries) {
        for (const { span } of entry.problems) {
          const length = lines[line + span.line]!.length;
          expect(
            span.start >= 0 && span.start <= length && span.end >= span.start && span.end <= length + 1,
          ).toBe(true);
        }
      }
      expect(JSON.stringify(model)).not.toMatch(/:(?:NaN|Infinity|-Infinity)/);
      expect(hasOddNumber(model)).toBe(false);
    }),
    { ...RUNS, numRuns: RUNS.numRuns * 2 },
  );
});

/** JSON writes NaN as null: look for it in the model itself. */
function hasOddNumber(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  return typeof value === 'object' && value !== null && Object.values(value).some(hasOddNumber);
}
