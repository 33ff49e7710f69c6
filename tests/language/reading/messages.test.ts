import { readdirSync, readFileSync } from 'node:fs';
import { CHECKS } from '@plimsoll/language/checks/catalogue';
import { describe, expect, test } from 'vitest';
import { MESSAGE_ROWS } from './message-rows.ts';
import { printRow } from './print-row.ts';

const BLOCKS = MESSAGE_ROWS.trim()
  .split(/\n(?=\S)/)
  .filter((block) => !block.startsWith('#'));

describe('what a coach is told', () => {
  test.each(
    BLOCKS.map((block) => block.trimEnd().split('\n')).map(([input, ...said]) => [input!, said] as const),
  )('%s', (input, said) => {
    expect(printRow(input)).toEqual(said);
  });
});

const SOURCES = new URL('../../../language/src/', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, SOURCES), 'utf8');
/** Reading, and the checks that need one entry alone. */
const FILES = [
  ...readdirSync(new URL('reading/', SOURCES), { recursive: true, encoding: 'utf8' })
    // Tables of their own, with table tests of their own.
    .filter((name) => name.endsWith('.ts') && !/^(?:(?:item|time|word)-slips\.ts|line-slips\/)/.test(name))
    .map((name) => `reading/${name}`),
  ...['for-plans', 'joins-rounds', 'name-rules', 'rounds', 'uneven-loads', 'vocabulary'].map(
    (name) => `checks/check-${name}.ts`,
  ),
];

/** Stands for what a template puts in. */
const HOLE = '\u0000';

/** Sentences in a source: texts of three words and more. What is put in later may be anything. */
function listSentences(source: string): string[] {
  const code = source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '')
    .replace(/^import[\s\S]*?;$/gm, '');
  const flat = code.replace(/\$\{(?:[^{}`]|\{[^{}]*\}|`[^`]*`)*\}/g, HOLE);
  return [...flat.matchAll(/`([^`]*)`|"([^"\n]*)"|'((?:[^'\\\n]|\\.)*)'/g)]
    .map(([, template, double, single]) => template ?? double ?? single!)
    .filter((text) => text.split(' ').length > 2);
}

const toPattern = (sentence: string): RegExp =>
  new RegExp(
    sentence
      .split(HOLE)
      .map((part) => part.replace(/[.*+?^$()[\]{}|\\/]/g, '\\$&'))
      .join('.*'),
  );

test.each([...FILES, 'syntax/syntax-messages.ts'])('every sentence of %s stands in the table', (file) => {
  const unsaid = listSentences(read(file)).filter((sentence) => !toPattern(sentence).test(MESSAGE_ROWS));
  expect(unsaid).toEqual([]);
});

test('every code that reading or the check of an entry may give stands in the table', () => {
  const source = FILES.map(read).join('\n');
  const given = Object.keys(CHECKS).filter((code) => source.includes(`'${code}'`));
  expect(given.length).toBeGreaterThan(25);
  expect(given.filter((code) => !MESSAGE_ROWS.includes(`[${code}]`))).toEqual([]);
});
