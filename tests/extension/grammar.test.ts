import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { recogniseLine } from '../../language/src/syntax/line-kind.ts';
import { scanLine } from '../../language/src/syntax/line-scanner.ts';
import type { LineContext } from '../../language/src/vocabulary/keywords.ts';
import { tokeniseLines } from './tokenise-lines.ts';

const sample = readFileSync(new URL('grammar-sample.plim', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n');
const coloured = await tokeniseLines(sample);

test('colours the sample as recorded', async () => {
  const record = sample.map((line, index) => {
    const tokens = coloured[index]!.filter(({ start, end }) => line.slice(start, end).trim());
    const rows = tokens.map(
      ({ start, end, scope }) => `    ${line.slice(start, end).trim()} → ${scope || '(plain)'}`,
    );
    return [`» ${line}`, ...rows].join('\n');
  });
  await expect(`${record.join('\n')}\n`).toMatchFileSnapshot('grammar-sample.scopes.txt');
});

test('uses scopes that every theme knows', () => {
  const roots =
    /^(comment\.line|constant\.(language|numeric)|entity\.name\.(function|label|section|type)|invalid\.unimplemented|keyword\.(control|operator|other)|punctuation\.(definition|section|separator)|storage\.(modifier|type)|string\.unquoted|support\.constant)(\.|$)/;
  const scopes = new Set(coloured.flat().map(({ scope }) => scope));
  expect([...scopes].filter((scope) => scope && !roots.test(scope))).toEqual([]);
});

/** The grammar colours before and without the server, so it must cut lines as the language does. */
describe('cuts lines where the language does', () => {
  const scopeOfKind: Readonly<Record<string, RegExp>> = {
    COMMENT: /^comment\.line|^punctuation\.definition\.comment/,
    DATE: /^constant\.numeric\.date/,
    LABEL: /^entity\.name\.label\.superset/,
    LETTER: /^entity\.name\.label\.block/,
    NAME: /^entity\.name|^support\.constant/,
    NOTE: /^string\.unquoted\.note|^punctuation\.definition\.string/,
    NUMBER: /^constant\.numeric$/,
    TEMPO: /^constant\.numeric\.tempo/,
    TEXT: /^string\.unquoted\.text/,
    TIME: /^constant\.numeric\.duration/,
    TIMES: /^keyword\.operator\.times/,
  };
  let context: LineContext = 'unknown';
  const rows = sample.map((line, index) => {
    const kind = recogniseLine(line, context);
    if (kind.kind === 'header') context = kind.word;
    if (kind.kind === 'title') context = 'unknown';
    return [line, scanLine(line, context).tokens, coloured[index]!] as const;
  });

  test.each(rows.filter(([line]) => line.trim()))('%s', (line, scanned, tokens) => {
    const scopesWithin = (start: number, end: number) => {
      const within = tokens.filter((token) => token.start < end && token.end > start);
      return within.filter((token) => line.slice(token.start, token.end).trim()).map(({ scope }) => scope);
    };
    for (const { kind, start, end } of scanned) {
      const expected = scopeOfKind[kind];
      if (expected) {
        for (const scope of scopesWithin(start, end)) {
          expect(`${line.slice(start, end)} ${scope}`).toMatch(
            new RegExp(expected.source.replaceAll('^', ' ')),
          );
        }
      }
    }
  });
});
