import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { classifyTokens, TOKEN_MODIFIERS, TOKEN_TYPES } from '../../language/src/practice/classify-tokens.ts';
import { readFiles } from '../language/support/marked-practice.ts';
import { tokeniseLines } from './tokenise-lines.ts';

const read = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');
const [contributed] = JSON.parse(read('../../extension/package.json')).contributes.semanticTokenScopes;
const scopes: Readonly<Record<string, readonly string[]>> = contributed.scopes;

const sample = read('grammar-sample.plim').trimEnd();
const lines = sample.split('\n');
const coloured = await tokeniseLines(lines);

test('every type has a scope, and nothing else has', () => {
  expect(contributed.language).toBe('plimsoll');
  expect([...new Set(Object.keys(scopes).map((selector) => selector.split('.')[0]!))].sort()).toEqual(
    [...TOKEN_TYPES].sort(),
  );
  const modifiers = Object.keys(scopes).flatMap((selector) => selector.split('.').slice(1));
  expect([...TOKEN_MODIFIERS]).toEqual(expect.arrayContaining(modifiers));
});

/** The scope that a theme colours a token by: that of all its modifiers, else of its type alone. */
function scopeOf(type: string, modifiers: readonly string[]): string {
  const [scope] = scopes[[type, ...modifiers].join('.')] ?? scopes[type]!;
  return scope!.replace(/\.plimsoll$/, '');
}

/** Two scopes of one look: that of `keyword.other.unit` is another than that of `keyword.other`. */
function looksAlike(a: string, b: string): boolean {
  const begin = (scope: string) =>
    scope.split('.').slice(0, /^(?:keyword\.other|entity\.name)/.test(scope) ? 3 : 2);
  const [short, long] = [begin(a), begin(b)].sort((x, y) => x.length - y.length) as [string[], string[]];
  return short.every((part, index) => part === long[index]) && !(long[2] === 'unit' && short[2] !== 'unit');
}

/** The colours of the grammar come first and those of the server later: a line must not change its look then. */
describe('the colours of the server are those of the grammar', () => {
  const practice = readFiles({ 'a.plim': sample });
  const tokens = [...classifyTokens(practice, practice.file('a.plim')!)];

  /** What a theme may show as another is what the grammar cannot know: a movement that nothing defines. */
  test('over all lines of the sample, but for unknown movements', () => {
    const differing = tokens.flatMap(({ line, start, end, type, modifiers }) => {
      const text = lines[line]!.slice(start, end);
      const from = coloured[line]!.filter(
        (token) =>
          token.start < end &&
          token.end > start &&
          lines[line]!.slice(token.start, token.end).trim() !== '' &&
          !token.scope.startsWith('punctuation'),
      );
      const scope = scopeOf(type, modifiers);
      const other = type !== 'variable' && from.find((token) => !looksAlike(token.scope, scope));
      return other ? [`${line + 1} ${text}: ${other.scope || '(plain)'} → ${scope}`] : [];
    });
    expect(tokens.length).toBeGreaterThan(300);
    expect(differing).toEqual([]);
  });
});
