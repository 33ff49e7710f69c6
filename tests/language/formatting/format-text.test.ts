import { findBrokenLines, formatLineAt, formatText } from '@plimsoll/language/formatting/format-text';
import { describe, expect, test } from 'vitest';
import { applyFileEdits } from '../support/apply-file-edits.ts';
import { readWhole } from '../support/read-text.ts';

const format = (text: string): string => applyFileEdits(text, formatText(text));

const trimMargin = (text: string): string =>
  text.replace(/^\n/, '').replace(/^ {6}/gm, '').replace(/ +$/, '');

function expectFormatted(before: string, after: string): void {
  expect(format(trimMargin(before))).toBe(trimMargin(after));
}

describe('indentation', () => {
  test('of a session typed without any', () => {
    expectFormatted(
      `
      session 2026-11-17 Nell Fenwick
      Dip: 5
      > went well
      effort 7
      A straight
      > the block
      Row: 5
      > the row
      time 1:00
      lasted 50 min
      > the day
      B circuit
      nothing known
      Dip: 5
      A1 Row: 8
      A2 Dip: 8
      `,
      `
      session 2026-11-17 Nell Fenwick
        Dip: 5
        > went well
        effort 7
        A straight
          > the block
          Row: 5
          > the row
          time 1:00
        lasted 50 min
        > the day
        B circuit
          nothing known
          Dip: 5
        A1 Row: 8
        A2 Dip: 8
      `,
    );
  });

  test('of a plan', () => {
    expectFormatted(
      `
      plan Slow Tide
      weeks 6
      > all of it
      day 1 Squat
      > this day
      Dip: 5
      A straight
      Back Squat: 5 @ 70%
      > slowly
      day 2
      A straight
      Row: 5
      `,
      `
      plan Slow Tide
        weeks 6
        > all of it
        day 1 Squat
          > this day
          Dip: 5
          A straight
            Back Squat: 5 @ 70%
            > slowly
        day 2
          A straight
            Row: 5
      `,
    );
  });

  test('of definitions and of lines before any entry', () => {
    expectFormatted(
      `
      Dip: 5
      exercise Marsh Pull
            pattern hinge
      \t> noted
      place Marsh Hall
      has mat
      `,
      `
        Dip: 5

      exercise Marsh Pull
        pattern hinge
        > noted

      place Marsh Hall
        has mat
      `,
    );
  });

  test('a word that would be a header at the margin stays off it', () => {
    expectFormatted(
      `
      session 2026-11-17
            session 2026-11-18
       plan Winter
      `,
      `
      session 2026-11-17
        session 2026-11-18
        plan Winter
      `,
    );
  });
});

describe('comments', () => {
  test('stand like the line that they are about', () => {
    expectFormatted(
      `
      # the file

      # Nell's
      session 2026-11-17
      # first
      A straight
      # the row
      Row: 5
            # and that was all
      # the next one
      session 2026-11-18
      `,
      `
      # the file

      # Nell's
      session 2026-11-17
        # first
        A straight
          # the row
          Row: 5
          # and that was all

      # the next one
      session 2026-11-18
      `,
    );
  });

  test('are not aligned', () => {
    expect(format('session 2026-11-17\n  Dip: 5         # one\n  Back Squat: 5 @ 60 kg # two\n')).toBe(
      'session 2026-11-17\n  Dip: 5  # one\n  Back Squat: 5 @ 60 kg  # two\n',
    );
  });
});

describe('blank lines and line ends', () => {
  test.each([
    ['none is put into an empty text', '', ''],
    ['blank text goes', ' \n\n\t\n', ''],
    ['a last line end is added', 'units kg', 'units kg\n'],
    ['those at the beginning and the end go', '\n \nunits kg\n\n \n', 'units kg\n'],
    ['one in a row stays', 'units kg\n\n  \n\n> a\n\n> b\n', 'units kg\n\n  > a\n\n  > b\n'],
    ['one stands before an entry', 'units kg\nplan A\n\n\nplan B\n', 'units kg\n\nplan A\n\nplan B\n'],
    ['CRLF stays', 'units kg\r\nplan  A\r\n\r\n\r\nplan B', 'units kg\r\n\r\nplan A\r\n\r\nplan B\r\n'],
    ['a lone CR stays', 'units kg\rplan A', 'units kg\r\rplan A\r'],
    ['a byte-order mark stays', '\ufeffUNITS kg\n', '\ufeffunits kg\n'],
  ])('%s', (_name, before, after) => expect(format(before)).toBe(after));
});

describe('what is touched', () => {
  test('is no more than what differs', () => {
    expect(formatText('session 2026-11-17\n  Dip: 5,6, 7\n')).toEqual([
      { range: { start: { line: 1, character: 9 }, end: { line: 1, character: 9 } }, newText: ' ' },
    ]);
  });

  test('is the range asked for', () => {
    const text = 'plan A\nDip:1\nDip:2\nDip:3\nplan B';
    expect(applyFileEdits(text, formatText(text, { range: { from: 1, to: 2 } }))).toBe(
      'plan A\n  Dip: 1\n  Dip: 2\nDip:3\nplan B',
    );
    expect(applyFileEdits(text, formatText(text, { range: { from: 3, to: 4 } }))).toBe(
      'plan A\nDip:1\nDip:2\n  Dip: 3\n\nplan B\n',
    );
  });

  test('is one line while typing, and no line end', () => {
    const text = 'session 2026-11-17\nB circuit\nDip:5,5\nRow:5';
    expect(applyFileEdits(text, formatLineAt(text, 2))).toBe(
      'session 2026-11-17\nB circuit\n    Dip: 5, 5\nRow:5',
    );
    expect(formatLineAt(text, 9)).toEqual([]);
  });

  test('is only the indentation of a line that could not be wholly read', () => {
    const text = 'session 2026-11-17\nDip:5  5,6\nRow:5\n';
    const brokenLines = findBrokenLines(readWhole(text).model);
    expect([...brokenLines]).toEqual([1]);
    expect(applyFileEdits(text, formatText(text, { brokenLines }))).toBe(
      'session 2026-11-17\n  Dip:5  5,6\n  Row: 5\n',
    );
  });
});
