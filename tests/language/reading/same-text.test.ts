import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { listProblems } from '../support/print-problems.ts';
import { readText, readWhole } from '../support/read-text.ts';

const SAMPLE = readFileSync(new URL('../../../samples/first-day.plim', import.meta.url), 'utf8');
const MORE = [
  'athlete Zephrine Mizzenholt',
  '  born 1991',
  '  units lb',
  '  avoid vertical push until 2026-12-15, left shoulder',
  'plan Wicker Base',
  '  for Zephrine Mizzenholt',
  '  day 1 Squat',
  '    Goblet Squat: 3x5 @ 70% | 4x4 @ 75%',
  'exercise Goblet Squat',
  '  pattern squat',
  '  cue In this order: elbows, knees',
].join('\n');
const TEXT = `${SAMPLE}\n${MORE}\n`;

/** A lone CR before an empty line would be the first half of a CRLF. */
const joinMixed = (lines: readonly string[]): string =>
  lines
    .map((line, index) => line + (lines[index + 1] === '' ? '\n' : ['\n', '\r\n', '\r'][index % 3]!))
    .join('');

const strip = (model: unknown): unknown =>
  JSON.parse(
    JSON.stringify(model, (key, value) => (['start', 'end', 'header'].includes(key) ? undefined : value)),
  );

describe('the same file, written in another way, has the same model', () => {
  const lines = TEXT.split('\n');
  const model = readText(...lines);

  test('it has no problem, so that nothing is compared with nothing', () => {
    expect(listProblems(model)).toEqual([]);
    expect(model.entries).toHaveLength(5);
  });

  test.each([
    ['CRLF', lines.join('\r\n')],
    ['lone CR', lines.join('\r')],
    ['all three line ends', joinMixed(lines)],
    ['no final line end', TEXT.trimEnd()],
  ])('%s', (_, text) => {
    const read = readWhole(text).model;
    // Lines at the very end of a file belong to its last entry.
    const entries = read.entries.map(({ line, entry }, index) => ({
      line,
      entry: { ...entry, lineCount: model.entries[index]!.entry.lineCount },
    }));
    expect({ ...read, entries }).toEqual(model);
  });

  test('a byte-order mark moves the first line by one column', () => {
    const marked = readWhole(`\ufeff${MORE}`).model;
    expect(strip(marked)).toEqual(strip(readWhole(MORE).model));
    const [first] = marked.entries;
    expect(first!.entry).toMatchObject({ header: { start: 1 }, name: { span: { start: 9 } } });
  });

  test.each([
    [
      'tabs for indentation',
      (line: string) => line.replace(/^ +/, (indent) => '\t'.repeat(indent.length / 2)),
    ],
    ['tabs between words', (line: string) => line.replaceAll(' ', '\t')],
    ['no-break spaces between words', (line: string) => line.replaceAll(' ', '\u00a0')],
    ['no indentation', (line: string) => line.trimStart()],
    ['much indentation', (line: string) => line.replace(/^ +/, (indent) => indent.repeat(9))],
    ['spaces at the end of every line', (line: string) => `${line}  \t`],
  ])('%s', (_, change) => {
    // Free text keeps its own spaces, so that what stands in it is left as it is.
    const changed = lines.map((line) => (/^\s*(?:>|cue)|#/.test(line) ? line.trimStart() : change(line)));
    const plain = lines.map((line) => (/^\s*(?:>|cue)|#/.test(line) ? line.trimStart() : line));
    expect(foldSpaces(readText(...changed))).toEqual(foldSpaces(readText(...plain)));
  });

  const foldSpaces = (read: unknown): unknown =>
    JSON.parse(JSON.stringify(strip(read)).replaceAll(/\\t|\u00a0/g, ' '));

  test('another case for every word of the notation', () => {
    const shouted = readText(
      'SESSION 2026-11-17 Ivo',
      '  A CIRCUIT, 2 ROUNDS, REST 1:15',
      '  Row: 3X5 @ 20 KG RPE 8',
      '  EFFORT 7',
    );
    const said = readText(
      'session 2026-11-17 Ivo',
      '  A circuit, 2 rounds, rest 1:15',
      '  Row: 3x5 @ 20 kg rpe 8',
      '  effort 7',
    );
    expect(JSON.parse(JSON.stringify(shouted).toLowerCase())).toEqual(
      JSON.parse(JSON.stringify(said).toLowerCase()),
    );
    expect(shouted.entries[0]!.entry).toMatchObject({ blocks: [{ kind: 'circuit', rest: { low: 75 } }] });
  });

  test.each([
    ['a keyword with a colon', ['session: 2026-11-17 Ivo', '  effort: 7', '  A circuit: 2 rounds']],
    ['spaces around that colon', ['session  2026-11-17 Ivo', '  effort : 7', '  A circuit :2 rounds']],
  ])('%s', (_, written) => {
    const plain = readText('session 2026-11-17 Ivo', '  effort 7', '  A circuit, 2 rounds');
    expect(strip(readText(...written))).toEqual(strip(plain));
  });

  test.each([
    ['dashes and signs of print', 'Row: 3\u00d78\u201312 @ bw\u22125 kg, tempo 3\u20131\u2013X\u20130'],
    ['no spaces', 'Row:3x8-12@bw-5kg,tempo 3-1-X-0'],
    ['many spaces', 'Row :  3  x  8 - 12  @  bw  -  5  kg ,  tempo   3-1-X-0'],
  ])('%s', (_, line) => {
    const plain = readText('plan Base', 'Row: 3x8-12 @ bw-5 kg, tempo 3-1-X-0');
    const read = readText('plan Base', line);
    expect(listProblems(read)).toEqual([]);
    const facts = (model: unknown) => JSON.stringify(strip(model)).replace(/"loadText":"[^"]*",/, '');
    expect(facts(read)).toBe(facts(plain));
  });
});

describe('names in many scripts', () => {
  test.each([
    'Приседание со штангой',
    'スクワット（深）',
    '深蹲',
    'القرفصاء الخلفية',
    'כריעה קדמית',
    'स्क्वाट',
    'Žabí skok',
    'Zˇabí skok',
    'Ünterzug',
    'Squat d’Été',
    "Farmer's Carry",
    '90/90 Hip Lift',
    'T-Bar Row',
    'Squat (pause)',
    'Session Finisher',
    'Bodyweight Squat',
    'Time Trial',
    'Rest Pause Curl',
    'Every Day Stretch',
    'Circuit Row',
  ])('%s', (name) => {
    const model = readText(
      'session 2026-11-17 Ivo',
      `  ${name}: 8 @ 20 kg`,
      `exercise ${name}`,
      '  pattern squat',
    );
    expect(listProblems(model)).toEqual([]);
    const [session, exercise] = model.entries.map(({ entry }) => entry);
    expect(session).toMatchObject({ blocks: [{ lines: [{ name: { text: name } }] }] });
    expect(exercise).toMatchObject({ name: { text: name } });
  });

  test('combining characters are composed, and the place is that of the text', () => {
    const { entries } = readText('athlete Zoe\u0308 Brundt');
    expect(entries[0]!.entry).toMatchObject({
      name: { text: 'Zo\u00eb Brundt', span: { line: 0, start: 8, end: 19 } },
    });
  });
});

describe('files that say nothing', () => {
  test.each([
    ['an empty file', ''],
    ['blank lines', '\n  \n\t\n'],
    ['a byte-order mark', '\ufeff'],
    ['comments', '# A comment\n  # another\n'],
  ])('%s', (_, text) => {
    expect(readWhole(text).model).toEqual({ uri: 'memory:test.plim', entries: [] });
  });
});

describe('comments', () => {
  test.each([
    ['  Row: 5 @ 20 kg # heavy', '  Row: 5 @ 20 kg'],
    ['  Row: 5 @ 20 kg\t#heavy', '  Row: 5 @ 20 kg'],
    ['  effort 7  # of 10', '  effort 7'],
    ['  A circuit, 2 rounds # twice', '  A circuit, 2 rounds'],
    ['# Row: 5', ''],
  ])('%j says what %j says', (line, plain) => {
    const header = 'session 2026-11-17 Ivo at Hall #2';
    expect(readText(`${header} # a comment`, line).entries[0]!.entry).toEqual({
      ...readText(header, plain).entries[0]!.entry,
      header: { line: 0, start: 0, end: header.length + 12 },
    });
  });

  test('a digit behind # belongs to a name, and # is text in notes, setups, cues and cautions', () => {
    const model = readText(
      'place Hall #2',
      'exercise Row',
      '  setup Bench # 3, low',
      '  cue Elbows # in',
      '  caution Stop # at pain',
      '  > A note # is one',
    );
    expect(model.entries.map(({ entry }) => entry)).toMatchObject([
      { name: { text: 'Hall #2' } },
      {
        setups: [{ text: 'Bench # 3, low' }],
        cues: [{ text: 'Elbows # in' }],
        cautions: [{ text: 'Stop # at pain' }],
        notes: [{ text: 'A note # is one' }],
      },
    ]);
  });

  test('a comment can silence checks on its line', () => {
    const { entries } = readText('session 2026-11-17 Ivo', '  Row: 5 # ignore unknown-movement, no-load');
    expect(entries[0]!.entry.ignores).toEqual([{ line: 1, codes: ['unknown-movement', 'no-load'] }]);
  });
});
