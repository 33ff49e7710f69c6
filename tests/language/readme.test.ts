import { readFileSync } from 'node:fs';
import { CHECKS } from '@plimsoll/language/checks/catalogue';
import { checkFile } from '@plimsoll/language/checks/check-file';
import { readSeverities, SEVERITY_CHOICES } from '@plimsoll/language/checks/severities';
import { createPractice } from '@plimsoll/language/create-practice';
import { METHODS } from '@plimsoll/language/measures/methods';
import { ONE_REP_MAX_FORMULA_IDS } from '@plimsoll/language/measures/one-rep-max';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { Fix, Problem } from '@plimsoll/language/model/source';
import { describeLenses } from '@plimsoll/language/summaries/file-lenses';
import type { Lens } from '@plimsoll/language/summaries/lens';
import { printSum } from '@plimsoll/language/summaries/session-lens';
import { BLOCK_WORDS, HEADER_WORDS, PROPERTIES } from '@plimsoll/language/vocabulary/keywords';
import { describeLimit, LIMITS, type LimitName } from '@plimsoll/language/vocabulary/limits';
import { UNIT_WORDS } from '@plimsoll/language/vocabulary/unit-words';
import { describe, expect, test } from 'vitest';
import { applyEdits } from './support/print-problems.ts';

/**
 * The users' reference is held to the language: its samples are read, its tables of sets, slips, sums and lenses are
 * computed anew, and every word and limit must stand in it. A table is told by its first heading.
 */
const README = readFileSync(new URL('../../language/README.md', import.meta.url), 'utf8');
const BLOCKS = listBlocks(README);
const TABLES = listTables(README);
const TODAY = '2026-03-12';

/** The sample of the first screen, whose names the other examples use. */
const SAMPLE = BLOCKS.find(({ info }) => info === 'plimsoll file')!;
const FRAMES: Readonly<Record<string, string>> = {
  file: '',
  session: 'session 2026-03-11 Petronella Gingham',
  sets: 'session 2026-03-11 Petronella Gingham',
  plan: 'plan Example of the Reference',
};

const practice = createPractice();
const works = new SessionWorks(practice);

/** Samples that define names for the others: that of the first screen, and those without a session. */
const DEFINITIONS = BLOCKS.filter(
  (block) => block.info === 'plimsoll file' && (block === SAMPLE || !/^session/m.test(block.text)),
);

/** Reads a text beside the samples that define names, and forgets it again. */
function read<T>(text: string, use: (uri: string) => T): T {
  for (const block of DEFINITIONS)
    practice.setFile(`sample-${block.line}.plim`, text === block.text ? '' : block.text);
  practice.setFile('example.plim', text);
  try {
    return use('example.plim');
  } finally {
    practice.removeFile('example.plim');
  }
}

const frame = (kind: string, text: string): string => [FRAMES[kind], text].filter(Boolean).join('\n');

interface Placed {
  readonly entryLine: number;
  readonly problem: Problem;
}

const findProblems = (uri: string): readonly Placed[] => checkFile(practice, uri, { today: TODAY });

/** Errors and warnings as `code: message`. */
function listComplaints(text: string): string[] {
  return read(text, (uri) =>
    findProblems(uri)
      .filter(({ problem }) => problem.severity === 'error' || problem.severity === 'warning')
      .map(
        ({ entryLine, problem }) => `${entryLine + problem.span.line}: ${problem.code}: ${problem.message}`,
      ),
  );
}

const listCodes = (text: string): string[] =>
  read(text, (uri) => findProblems(uri).map(({ problem }) => problem.code));

const findTables = (...heads: readonly string[]): Table[] =>
  TABLES.filter(({ head }) => heads.every((heading, index) => head[index] === heading));

/** Rows of all tables with these first headings. */
const findRows = (...heads: readonly string[]): (readonly string[])[] =>
  findTables(...heads).flatMap(({ rows }) => rows);

/** A movement's or a session's line by itself, or an entry's header. */
const frameLine = (line: string): string =>
  /^(?:units|exercise|place|athlete|plan|sess?ion)\b/.test(line) ? line : frame('session', line);

describe('samples', () => {
  const right = BLOCKS.filter(({ info }) => /^plimsoll (?:file|session|sets|plan)$/.test(info));
  const wrong = BLOCKS.filter(({ info }) => info.startsWith('plimsoll wrong'));

  test('are all of a known kind', () => {
    const marked = BLOCKS.filter(({ info }) => info.startsWith('plimsoll'));
    expect(marked).toHaveLength(right.length + wrong.length);
    expect(new Set(right.map(({ info }) => info))).toEqual(new Set(['plimsoll file', 'plimsoll session']));
    expect(wrong.length).toBeGreaterThan(1);
  });

  test.each(right)('line $line is read without complaint', ({ info, text }) => {
    expect(listComplaints(frame(info.split(' ')[1]!, text))).toEqual([]);
  });

  test.each(wrong)('line $line is wrong, and the next sentence names the code', ({ info, text, next }) => {
    const codes = listCodes(frame(info.split(' ')[2] ?? 'sets', text));
    expect(codes.length).toBeGreaterThan(0);
    const named = readCode(next).filter((code) => code in CHECKS);
    expect(named).not.toEqual([]);
    expect(codes).toEqual(expect.arrayContaining(named));
  });

  test.each(BLOCKS.filter(({ info }) => info === 'lenses'))('lenses in line $line', ({ text, line }) => {
    const sample = BLOCKS.filter((block) => block.line < line && block.info.startsWith('plimsoll')).at(-1)!;
    expect(readLenses(frame(sample.info.split(' ')[1]!, sample.text))).toEqual(text.split('\n'));
  });
});

function readLenses(text: string): string[] {
  return read(text, (uri) =>
    describeLenses(works, uri, LENS_OPTIONS).map(({ kind, text }) => `${kind.padEnd(7)}  ${text}`),
  );
}

const LENS_OPTIONS = { today: TODAY, formula: 'epley', unit: 'kg', complete: true } as const;

describe('tables', () => {
  test.each(findRows('Write').map(([line]) => readCode(line!)[0]!))('%s', (line) => {
    expect(listComplaints(frameLine(line))).toEqual([]);
  });

  test.each(findRows('Write in a plan').map(([line]) => readCode(line!)[0]!))('%s', (line) => {
    expect(listComplaints(frame('plan', line))).toEqual([]);
  });

  test.each(findRows('Option').map(([option]) => readCode(option!)[0]!))('the option %s', (option) => {
    expect(listComplaints(frame('session', `A circuit, ${option}\nPush-up: 8`))).toEqual([]);
  });

  test.each(
    findRows('Line in a block').map(([line, of]) => [readCode(line!)[0]!, readCode(of!)[0]!] as const),
  )('%s in %s', (line, kind) => {
    expect(listComplaints(frame('session', `A ${kind}\nRower: 10 cal\nBurpee: 6\n${line}`))).toEqual([]);
  });

  test.each(
    [...HEADER_WORDS].flatMap((word) =>
      findRows(`In ${word}`)
        .flatMap((row) => readCode(row.join(' ')))
        .filter((line) => Object.hasOwn(PROPERTIES[word], line.split(/[\s,]/)[0]!))
        .map((line) => [word, line] as const),
    ),
  )('in %s: %s', (word, line) => {
    const header =
      { session: 'session 2026-03-11 Petronella Gingham' }[word as string] ?? `${word} Example Name`;
    expect(listComplaints(`${header}\n${line}`)).toEqual([]);
  });

  test.each(findRows('You type').map((row) => [readCode(row[0]!)[0]!, row[1]!, row[2]!] as const))(
    'the slip %s',
    (line, meant, codes) => {
      const text = frameLine(line);
      const [code] = readCode(codes);
      expect(listCodes(text)).toContain(code);
      expect(readCode(meant).filter((fixed) => !listFixed(text, code!).includes(fixed))).toEqual([]);
    },
  );

  test.each(
    findRows('Line', 'Sets', 'Adds').map((row) => [readCode(row[0]!)[0]!, row[1]!, row[2]!] as const),
  )('the sum of %s', (line, sets, adds) => {
    const total = read(frameLine(line), (uri) => {
      const placed = practice.file(uri)!.model.entries[0]!;
      return works.of(practice.recordsOf(uri, placed)[0]!).total;
    });
    expect(String(total.sets)).toBe(sets);
    expect(printSum(total, 'kg') ?? 'nothing').toBe(adds);
  });

  test.each(findRows('Line', 'The lens says').map((row) => [readCode(row[0]!)[0]!, row[1]!] as const))(
    'the lens of %s',
    (line, lens) => {
      const said = read(frameLine(line), (uri) => describeLenses(works, uri, LENS_OPTIONS));
      const lines = said.filter(({ kind }: Lens) => kind === 'line').map(({ text }) => text);
      expect(lines.join(' / ') || 'nothing').toBe(readCode(lens)[0] ?? lens);
    },
  );
});

/** The line as each fix for that code leaves it. */
function listFixed(text: string, code: string): string[] {
  const lines = text.split('\n');
  const apply = (entryLine: number, { edits }: Fix): string => applyEdits(lines, entryLine, edits).join(' ');
  return read(text, (uri) =>
    findProblems(uri)
      .filter(({ problem }) => problem.code === code)
      .flatMap(({ entryLine, problem }) => (problem.fixes ?? []).map((fix) => apply(entryLine, fix))),
  );
}

describe('nothing is left out', () => {
  const code = new Set(readCode(README).flatMap((span) => span.split(/[\s,:]+/)));
  const inBlocks = new Set(BLOCKS.flatMap(({ text }) => text.split(/[\s,:]+/)));
  const words = [
    ...HEADER_WORDS,
    ...BLOCK_WORDS,
    ...Object.values(PROPERTIES).flatMap((properties) => Object.keys(properties)),
    ...[...UNIT_WORDS.values()].map(({ unit }) => unit),
  ];

  test.each([...new Set<string>(words)])('the word %s', (word) => {
    expect(code.has(word) || inBlocks.has(word)).toBe(true);
  });

  test.each(Object.entries(PROPERTIES).filter(([context]) => context !== 'unknown' && context !== 'units'))(
    'every property of %s',
    (context, properties) => {
      const shown = findRows(`In ${context}`, 'Means').map(([line]) => readCode(line!)[0]!.split(/[\s,]/)[0]);
      const own = Object.keys(properties).filter((word) => !['time', 'done', 'rest'].includes(word));
      expect(shown).toEqual(expect.arrayContaining(own));
    },
  );

  test('every limit', () => {
    const shown = findRows('Number', 'From, to').map(([, range]) => range);
    const limits = (Object.keys(LIMITS) as LimitName[]).map((name) => describeLimit(name));
    expect(shown.toSorted()).toEqual(limits.toSorted());
  });

  test('codes and severities of checks are those that there are', () => {
    const shown = findRows('To change how much a check matters').flatMap(([, write]) =>
      [...write!.matchAll(/"?([a-z]+-[a-z-]+)"?\s*[:=]\s*"?([a-z]+)|# ignore ([a-z-]+)/g)].map(
        ([, code, choice = 'off', ignored]) => [code ?? ignored!, choice] as const,
      ),
    );
    expect(shown).toHaveLength(5);
    for (const [code, choice] of shown)
      expect(readSeverities({ [code]: choice })).toEqual({
        severities: { [code]: choice },
        complaints: [],
      });
    for (const choice of SEVERITY_CHOICES) expect(README).toContain(`\`${choice}\``);
  });

  test('every link leads to a heading', () => {
    const slugs = [...README.matchAll(/^#+ (.*)$/gm)].map(([, heading]) =>
      heading!
        .toLowerCase()
        .replace(/[^\p{L}\d\s-]/gu, '')
        .replaceAll(' ', '-'),
    );
    const links = [...README.matchAll(/\]\(#([^)]*)\)/g)].map(([, link]) => link!);
    expect(links.length).toBeGreaterThan(10);
    expect(links.filter((link) => !slugs.includes(link))).toEqual([]);
  });

  test('the measures of views to come are those of the table of methods', () => {
    const shown = findRows('Measure', 'Formula').map((row) => row.join(' | '));
    const methods = Object.values(METHODS).map(({ title, formula, source, ...rest }) =>
      [title, formula, source, 'note' in rest ? rest.note : ''].join(' | '),
    );
    expect(shown.length).toBeGreaterThan(0);
    expect(methods).toEqual(expect.arrayContaining(shown));
  });

  test('every formula of an estimated max, with its source', () => {
    const shown = findRows('Formula', 'Of load and reps').map(([, formula]) => formula);
    expect(shown).toEqual(ONE_REP_MAX_FORMULA_IDS.map((id) => METHODS[id].formula));
    for (const id of ONE_REP_MAX_FORMULA_IDS) {
      expect(README).toContain(METHODS[id].source.replace(/ \(as quoted.*/, ''));
    }
  });
});

/** A fenced block of a Markdown text: what stands behind its fence, its lines, and the first text line after it. */
interface CodeBlock {
  readonly info: string;
  readonly text: string;
  readonly next: string;
  /** Of the fence, from 1. */
  readonly line: number;
}

/** A table, its cells as they are read: `\|` is a bar. */
interface Table {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

function listBlocks(markdown: string): CodeBlock[] {
  const lines = markdown.split('\n');
  const blocks: CodeBlock[] = [];
  for (let at = 0; at < lines.length; at++) {
    const info = /^```(.+)$/.exec(lines[at]!)?.[1];
    if (info === undefined) continue;
    const end = lines.indexOf('```', at + 1);
    const next = lines.slice(end + 1).find((line) => line.trim() !== '') ?? '';
    blocks.push({ info: info.trim(), text: lines.slice(at + 1, end).join('\n'), next, line: at + 1 });
    at = end;
  }
  return blocks;
}

function listTables(markdown: string): Table[] {
  const tables: { head: readonly string[]; rows: (readonly string[])[] }[] = [];
  let open = false;
  for (const line of markdown.split('\n')) {
    if (!line.startsWith('|')) {
      open = false;
      continue;
    }
    const cells = readCells(line);
    if (!open) tables.push({ head: cells, rows: [] });
    else if (!cells.every((cell) => /^:?-+:?$/.test(cell))) tables.at(-1)!.rows.push(cells);
    open = true;
  }
  return tables;
}

function readCells(line: string): string[] {
  const cells = line.split(/(?<!\\)\|/).slice(1, -1);
  return cells.map((cell) => cell.trim().replaceAll('\\|', '|'));
}

/** What stands between backticks on a line or in a cell; fences are no code of a line. */
function readCode(text: string): string[] {
  return [...text.matchAll(/(?<!`)`([^`\n]+)`(?!`)/g)].map(([, code]) => code!);
}
