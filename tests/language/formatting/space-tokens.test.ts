import { spaceBefore } from '@plimsoll/language/formatting/space-tokens';
import { scanLine } from '@plimsoll/language/syntax/line-scanner';
import { expect, test } from 'vitest';

/** A line's tokens as written, with the space that they get. */
function space(text: string): string {
  const { line, tokens } = scanLine(text, 'plan');
  return tokens
    .map((token, at) => spaceBefore(tokens, at, line) + text.slice(token.start, token.end))
    .join('');
}

test.each([
  ['Dip: 5 +', 'Dip: 5+'],
  ['Dip: 5 @ 80+5 kg chain', 'Dip: 5 @ 80 + 5 kg chain'],
  ['Dip: 5 @ bw + 5 kg', 'Dip: 5 @ bw+5 kg'],
  ['Dip: ( 2 + 2 )', 'Dip: (2+2)'],
  ['Dip: 5,+ 1 rep', 'Dip: 5, +1 rep'],
  ['done 4 rounds+5', 'done 4 rounds + 5'],
  ['Dip: 8 - 12', 'Dip: 8-12'],
  ['Dip: 5 @- 10 %', 'Dip: 5 @ -10%'],
  ['rest   - 10s', 'rest -10 s'],
  ['intervals 6x500m', 'intervals 6 x 500 m'],
  ['Dip: 100kg x5', 'Dip: 100 kg x 5'],
])('%s', (before, after) => expect(space(before)).toBe(after));
