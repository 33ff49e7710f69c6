import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const read = (path: string) =>
  JSON.parse(readFileSync(new URL(`../../extension/${path}`, import.meta.url), 'utf8'));
const configuration = read('language-configuration.json');
const separators: string =
  read('package.json').contributes.configurationDefaults['[plimsoll]']['editor.wordSeparators'];

/** What is completed, highlighted and renamed as one word. */
describe('the word pattern takes as one thing', () => {
  const pattern = new RegExp(configuration.wordPattern.pattern, `g${configuration.wordPattern.flags}`);

  test.each([
    ['One-Arm Row: 10/side @ 22.5 kg', 'One-Arm Row 10 side 22.5 kg'],
    ['session 2026-11-17 07:10 Zo Ō’Hara-Bélý', 'session 2026-11-17 07:10 Zo Ō’Hara-Bélý'],
    ["Farmer's Walk:3x40 m", "Farmer's Walk 3x40 m"],
    ['Присед: 3×5 @ 85kg', 'Присед 3×5 85kg'],
    ['8-12 @ 70–75% | 5+ @ bw-10 kg', '8-12 70–75 5 bw 10 kg'],
    ['(2+2+2 rest 20 s), tempo 3-1-X-0', '2 2 2 rest 20 s tempo 3-1-X-0'],
    ['time 2:55, 3:02, ?', 'time 2:55 3:02'],
    ['> Slow row. Then rest.', 'Slow row Then rest'],
    ['# 2:05/500 m', '2:05 500 m'],
  ])('%s', (line, words) => {
    expect(line.match(pattern)?.join(' ')).toBe(words);
  });

  test('never matches nothing, on which the editor would hang', () => {
    expect(new RegExp(`^(?:${configuration.wordPattern.pattern})$`, 'u').test('')).toBe(false);
  });
});

/** What a double click selects: the editor goes by separators there, not by the word pattern. */
describe('a double click selects', () => {
  const selectAt = (marked: string) => {
    const at = marked.indexOf('‸');
    const line = marked.replace('‸', '');
    const isSeparator = (char: string | undefined) => !char || /\s/.test(char) || separators.includes(char);
    let [start, end] = [at, at];
    while (!isSeparator(line[start - 1])) start--;
    while (!isSeparator(line[end])) end++;
    return line.slice(start, end);
  };

  test.each([
    ['One-A‸rm Row: 10', 'One-Arm'],
    ['Back Sq‸uat: 5', 'Squat'],
    ['5 @ 22‸.5 kg', '22.5'],
    ['5 @ 85‸kg', '85kg'],
    ['session 2026-‸11-17', '2026-11-17'],
    ['10/si‸de', 'side'],
    ["Farm‸er's Walk", "Farmer's"],
    ['13, 1‸1, 11', '11'],
    ['7‸0% | 75%', '70'],
  ])('%s → %s', (line, selection) => {
    expect(selectAt(line)).toBe(selection);
  });
});

describe('Enter indents', () => {
  const rules: { beforeText: { pattern: string; flags?: string }; action: { indent: string } }[] =
    configuration.onEnterRules;
  const indents = (line: string) =>
    rules.some(({ beforeText }) => new RegExp(beforeText.pattern, beforeText.flags).test(line));

  test.each([
    'session 2026-03-02 Wilhelmina Oddsocket',
    'exercise Teapot Squat',
    'Place Thimble Street Cellar',
    '  A circuit, 4 rounds, rest 1:15',
    '  every 1:00 for 10:00',
    'B for time, cap 12:00',
    '  warm-up',
    '  day 1 Squat',
  ])('after %s', (line) => {
    expect(indents(line)).toBe(true);
  });

  test.each([
    'units kg',
    '    Back Squat: 3x5 @ 80 kg',
    '  warmup Back Squat: 5 @ 40 kg',
    '  Session Finisher: 10',
    '  effort 7',
    '  days Mon, Thu',
    '  Intervals Row: 5:00',
    '  > straight after work',
    '',
  ])('not after %s', (line) => {
    expect(indents(line)).toBe(false);
  });

  test('and does nothing else: no text appears that was not typed', () => {
    expect(rules.map(({ action }) => action)).toEqual(rules.map(() => ({ indent: 'indent' })));
  });
});
