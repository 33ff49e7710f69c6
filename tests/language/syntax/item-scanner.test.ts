import { scanItems } from '@plimsoll/language/syntax/item-scanner';
import { describe, expect, test } from 'vitest';
import { printTokens } from './print-tokens.ts';

const scan = (text: string, context = {}): string =>
  printTokens(text, scanItems(text, 0, text.length, context));

test.each([
  ['3x5', 'NUMBER(3) TIMES(x) NUMBER(5)'],
  ['3 X 5', 'NUMBER(3) TIMES(X) NUMBER(5)'],
  ['3\u00d75', 'NUMBER(3) TIMES(\u00d7) NUMBER(5)'],
  ['3xamrap', 'NUMBER(3) TIMES(x) WORD(amrap)'],
  ['3x(2+2)', 'NUMBER(3) TIMES(x) ( NUMBER(2) + NUMBER(2) )'],
  ['3x?', 'NUMBER(3) TIMES(x) ?'],
  ['x5', 'WORD(x) NUMBER(5)'],
  ['3 rounds x 2 passes', 'NUMBER(3) WORD(rounds) TIMES(x) NUMBER(2) WORD(passes)'],
  ['100 kg x 5', 'NUMBER(100) WORD(kg) TIMES(x) NUMBER(5)'],
  ['85kg', 'NUMBER(85) WORD(kg)'],
  ['22.5', 'NUMBER(22.5)'],
  ['5,5,4', 'NUMBER(5) , NUMBER(5) , NUMBER(4)'],
  ['4:05', 'TIME(4:05)'],
  ['1:02:03', 'TIME(1:02:03)'],
  ['2026-11-17', 'DATE(2026-11-17)'],
  ['17.11.2026', 'ODD_DATE(17.11.2026)'],
  ['11/17/26', 'ODD_DATE(11/17/26)'],
  ['10/10', 'NUMBER(10) / NUMBER(10)'],
  ['21-15-9', 'LADDER(21-15-9)'],
  ['8-12', 'NUMBER(8) - NUMBER(12)'],
  ['8\u201312', 'NUMBER(8) \u2013=- NUMBER(12)'],
  ['40 m/side', 'NUMBER(40) WORD(m) / WORD(side)'],
  ['RPE 8', 'WORD(RPE=rpe) NUMBER(8)'],
  ['20 \u00b0', 'NUMBER(20) WORD(\u00b0)'],
  ['athlete\u2019s', 'WORD(athlete\u2019s)'],
  ['$ \ud83c\udfcb \ud800', 'ODD($) ODD(\ud83c\udfcb) ODD(\ud800)'],
  ['', ''],
])('%j', (text, expected) => {
  expect(scan(text)).toBe(expected);
});

describe('a comma in a number', () => {
  test.each([
    ['@ 22,5 kg', '@ NUMBER(22,5) WORD(kg)'],
    ['@ 22,5', '@ NUMBER(22,5)'],
    ['@ 22,5, 5', '@ NUMBER(22,5) , NUMBER(5)'],
    ['@ 2x22,5 kg', '@ NUMBER(2) TIMES(x) NUMBER(22,5) WORD(kg)'],
    ['@ 22,5 rpe 8', '@ NUMBER(22,5) WORD(rpe) NUMBER(8)'],
    ['@ 60,5 @ 80', '@ NUMBER(60) , NUMBER(5) @ NUMBER(80)'],
    ['@ 60,2x5', '@ NUMBER(60) , NUMBER(2) TIMES(x) NUMBER(5)'],
    ['@ 60, 5', '@ NUMBER(60) , NUMBER(5)'],
    ['bw+2,5 kg', 'WORD(bw) + NUMBER(2,5) WORD(kg)'],
    ['8-12,10', 'NUMBER(8) - NUMBER(12) , NUMBER(10)'],
    ['rpe 7,5', 'WORD(rpe) NUMBER(7,5)'],
    ['rpe 7,8', 'WORD(rpe) NUMBER(7) , NUMBER(8)'],
  ])('%j', (text, expected) => {
    expect(scan(text)).toBe(expected);
  });

  test('stands for a point where no comma separates', () => {
    expect(scan('68,2 kg', { decimalCommas: true })).toBe('NUMBER(68,2) WORD(kg)');
    expect(scan('68,205 kg', { decimalCommas: true })).toBe('NUMBER(68) , NUMBER(205) WORD(kg)');
  });
});

describe('dates stand behind some words', () => {
  test.each([
    ['on 9/28', 'WORD(on) ODD_DATE(9/28)'],
    ['by 28.9.2026', 'WORD(by) ODD_DATE(28.9.2026)'],
    ['until 2026-9-28', 'WORD(until) DATE(2026-9-28)'],
    ['by 1.25 kg', 'WORD(by) NUMBER(1.25) WORD(kg)'],
    ['to 16', 'WORD(to) NUMBER(16)'],
  ])('%j', (text, expected) => {
    expect(scan(text)).toBe(expected);
  });

  test('or behind the word before the first item', () => {
    const before = { kind: 'WORD', start: 0, end: 0, keyword: 'starts' } as const;
    expect(scan('9/28', { before })).toBe('ODD_DATE(9/28)');
  });
});

describe('names and texts behind the words that announce them', () => {
  test.each([
    ['instead of T-Bar Row, rest 1:00', 'WORD(instead) WORD(of) NAME(T-Bar Row) , WORD(rest) TIME(1:00)'],
    ['75% of Back Squat rpe 8', 'NUMBER(75) % WORD(of) NAME(Back Squat) WORD(rpe) NUMBER(8)'],
    ['75% of Back Squat drop 5', 'NUMBER(75) % WORD(of) NAME(Back Squat) WORD(drop) NUMBER(5)'],
    ['50% of bw', 'NUMBER(50) % WORD(of) WORD(bw)'],
    ['4 of 5', 'NUMBER(4) WORD(of) NUMBER(5)'],
    ['setting box 40 cm | 5', 'WORD(setting) TEXT(box 40 cm) | NUMBER(5)'],
    ['pain 3 left knee, 5', 'WORD(pain) NUMBER(3) TEXT(left knee) , NUMBER(5)'],
    ['pain 3', 'WORD(pain) NUMBER(3)'],
    ['tempo 3-1-X-0', 'WORD(tempo) TEMPO(3-1-X-0)'],
    ['tempo 31x0, 5', 'WORD(tempo) TEMPO(31x0) , NUMBER(5)'],
    ['setting', 'WORD(setting)'],
  ])('%j', (text, expected) => {
    expect(scan(text)).toBe(expected);
  });
});

test('nothing behind the end is seen', () => {
  expect(printTokens('5 @ 22,5 # kg', scanItems('5 @ 22,5 # kg', 0, 8))).toBe('NUMBER(5) @ NUMBER(22,5)');
  expect(printTokens('123456', scanItems('123456', 1, 3))).toBe('NUMBER(23)');
});
