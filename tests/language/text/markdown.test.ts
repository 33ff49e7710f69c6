import { escapeMarkdown } from '@plimsoll/language/text/markdown';
import { expect, test } from 'vitest';

test.each([
  ['*slow* and `low`', '\\*slow\\* and \\`low\\`'],
  ['[here](x) <b>', '\\[here\\](x) \\<b\\>'],
  ['- a dash', '\\- a dash'],
  ['---', '\\---'],
  ['===', '\\==='],
  ['1. first', '1\\. first'],
  ['see https://lamp.example/x', 'see https\\://lamp.example/x'],
  ['www.lamp.example', 'www\\.lamp.example'],
  ['otti@lamp.example', 'otti\\@lamp.example'],
  ['3x5 @ 80 kg, rest 1:30', '3x5 @ 80 kg, rest 1:30'],
  ['two\nlines', 'two lines'],
])('marks nothing up: %s', (text, escaped) => {
  expect(escapeMarkdown(text)).toBe(escaped);
});
