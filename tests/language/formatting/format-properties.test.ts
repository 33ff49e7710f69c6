import { findBrokenLines, formatLineAt, formatText } from '@plimsoll/language/formatting/format-text';
import { printEntry } from '@plimsoll/language/printing/print-entry';
import { splitLines } from '@plimsoll/language/text/lines';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { readFolder } from '../checks/workspace.ts';
import { applyFileEdits } from '../support/apply-file-edits.ts';
import { ENTRIES, entry } from '../support/generators/entries.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';
import { slip } from '../support/generators/slips.ts';
import { stripSpans } from '../support/generators/strip-spans.ts';
import { readWhole } from '../support/read-text.ts';
import { disturb } from './disturb.ts';

vi.setConfig({ testTimeout: PATIENCE });

const format = (text: string): string => applyFileEdits(text, formatText(text));

const formatKnown = (text: string): string => {
  const brokenLines = findBrokenLines(readWhole(text).model);
  return applyFileEdits(text, formatText(text, { brokenLines }));
};

const meaningOf = (text: string): unknown => {
  const { entries, units } = readWhole(text).model;
  return { units, entries: entries.map((placed) => stripSpans(placed.entry)) };
};

function expectHarmless(text: string): void {
  for (const run of [format, formatKnown]) {
    const once = run(text);
    expect(meaningOf(once), JSON.stringify(text)).toEqual(meaningOf(text));
    expect(run(once), JSON.stringify(text)).toBe(once);
  }
}

const file = fc
  .array(entry, { minLength: 1, maxLength: 3 })
  .map((entries) => entries.map(printEntry).join('\n'));

test('what was disturbed means the same after formatting, which changes nothing more the next time', () => {
  fc.assert(
    fc.property(file.chain(disturb), (text) => expectHarmless(text)),
    RUNS,
  );
});

describe('canonical text stays', () => {
  test.each(Object.entries(ENTRIES))('%s', (_kind, entries) => {
    fc.assert(
      fc.property(entries, (generated) => {
        const lines = printEntry(generated).split('\n');
        const formatted = format(`${lines.join('\n')}\n`).split('\n');
        expect(formatted.map((line) => line.trim())).toEqual([...lines.map((line) => line.trim()), '']);
      }),
      RUNS,
    );
  });
});

test('slips of the hand keep what they mean', () => {
  fc.assert(
    fc.property(slip.chain(disturb), (text) => expectHarmless(text)),
    { ...RUNS, numRuns: 4 * RUNS.numRuns },
  );
});

const SAMPLES = readFolder('samples').map(([, text]) => text.split('\n'));

const ODD = [
  ...[
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
    '\n',
    '\r\n',
    '\r',
  ],
  ...[
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
    'day 2',
    'A1 ',
  ],
  ...[
    '\t',
    '\u00a0',
    '\u200b',
    '\u202e',
    '\u0301',
    '\u2013',
    '\u00d7',
    '\ufeff',
    '\u0000',
    '\u2028',
    '\u017f',
    '\u212a',
  ],
  ...['🏋️', 'ß', 'İ', 'é', '深蹲', 'приседание', '\ud800', '\udc00'],
];

const edited = fc
  .tuple(
    fc.constantFrom(...SAMPLES),
    fc.nat(2000),
    fc.array(fc.tuple(fc.nat(600), fc.constantFrom(0, 0, 1, 2, 9), fc.constantFrom(...ODD)), {
      maxLength: 12,
    }),
  )
  .map(([lines, at, edits]) => {
    const from = at % lines.length;
    const text = lines.slice(from, from + 14).join('\n');
    return edits.reduce((written, [place, length, odd]) => {
      const cut = place % (written.length + 1);
      return written.slice(0, cut) + odd + written.slice(cut + length);
    }, text);
  });

test('a text that was edited at random keeps what it means', () => {
  fc.assert(
    fc.property(edited, (text) => expectHarmless(text)),
    { ...RUNS, numRuns: 3 * RUNS.numRuns },
  );
});

test('any text at all is formatted once and for all', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (text) => expectHarmless(text)),
    { ...RUNS, numRuns: 3 * RUNS.numRuns },
  );
});

test('a range of lines is formatted as in the whole text, and no other line', () => {
  fc.assert(
    fc.property(file.chain(disturb), fc.nat(20), fc.nat(20), (text, from, more) => {
      const whole = formatText(text);
      const edits = formatText(text, { range: { from, to: from + more } });
      for (const edit of edits) {
        expect(whole).toContainEqual(edit);
        expect(edit.range.start.line).toBeGreaterThanOrEqual(from);
        expect(edit.range.end.line).toBeLessThanOrEqual(from + more + 1);
      }
    }),
    RUNS,
  );
});

test('a line alone is formatted as in the whole text', () => {
  fc.assert(
    fc.property(fc.oneof(file.chain(disturb), edited), fc.nat(40), (text, at) => {
      const whole = formatText(text, { range: { from: at, to: at } });
      const withinLine = whole.filter(
        ({ range, newText }) => range.end.line === at && !/[\r\n]/.test(newText),
      );
      const isBlank = /^\s*$/.test(splitLines(text)[at]?.text ?? '');
      if (!isBlank) expect(formatLineAt(text, at), JSON.stringify(text)).toEqual(withinLine);
    }),
    { ...RUNS, numRuns: 3 * RUNS.numRuns },
  );
});

test('the samples and the library are canonical but for their comments', () => {
  for (const [path, text] of [...readFolder('language/library'), ...readFolder('samples')]) {
    const withoutComments = (written: string): string => written.replace(/ +#(?!\d).*$/gm, '');
    expect(withoutComments(format(text)), path).toBe(withoutComments(text));
  }
});
