import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { recogniseLine } from '../../language/src/syntax/line-kind.ts';
import type { LineContext } from '../../language/src/vocabulary/keywords.ts';

interface Snippet {
  readonly prefix: string;
  readonly description: string;
  readonly body: readonly string[];
  readonly isFileTemplate?: boolean;
}

const path = new URL('../../extension/snippets/plimsoll.json', import.meta.url);
const snippets = Object.entries<Snippet>(JSON.parse(readFileSync(path, 'utf8')));

/** The text that stands when every placeholder is left as offered. */
function expand(body: readonly string[]): string {
  const text = body.join('\n').replaceAll('$CURRENT_YEAR-$CURRENT_MONTH-$CURRENT_DATE', '2026-03-02');
  const offered = new Map<string, string>();
  const filled = text.replace(/\$\{(\d+)(?::([^}]*)|\|([^,|]+)[^}]*)\}/g, (_, number, value, choice) => {
    offered.set(number, value ?? choice);
    return value ?? choice;
  });
  return filled.replace(/\$(\d+)/g, (_, number) => offered.get(number) ?? '');
}

/** Lines that the language does not know, given that the text may stand inside a session. */
function findStrayLines(text: string): string[] {
  let context: LineContext = 'session';
  return text.split('\n').filter((line) => {
    const recognised = recogniseLine(line, context);
    if (recognised.kind === 'header') context = recognised.word;
    return recognised.kind === 'stray' || recognised.kind === 'title';
  });
}

describe.each(snippets)('%s', (_name, snippet) => {
  test('has a prefix and a description', () => {
    expect(snippet.prefix).toMatch(/^[a-z ]+$/);
    expect(snippet.description).toMatch(/^[A-Z]/);
  });

  test('expands without a left-over', () => {
    expect(expand(snippet.body)).not.toMatch(/[${}]/);
  });

  test('holds no line that the language does not know', () => {
    expect(findStrayLines(expand(snippet.body))).toEqual([]);
  });
});

test('the first minute of the README holds no such line either', () => {
  const readme = readFileSync(new URL('../../extension/README.md', import.meta.url), 'utf8');
  const log = /```\n([^`]*)```/.exec(readme)![1]!;
  expect(findStrayLines(log.replace(/^ {3}/gm, '').trimEnd())).toEqual([]);
});

test('an empty file is offered one template', () => {
  expect(snippets.filter(([, { isFileTemplate }]) => isFileTemplate).map(([name]) => name)).toEqual([
    'First day',
  ]);
});

test('prefixes are told apart', () => {
  expect(new Set(snippets.map(([, { prefix }]) => prefix)).size).toBe(snippets.length);
});
