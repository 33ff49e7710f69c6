import { formatText } from '@plimsoll/language/formatting/format-text';
import { findLineSlip, LINE_SLIPS } from '@plimsoll/language/reading/line-slips/find-line-slip';
import { recogniseLine } from '@plimsoll/language/syntax/line-kind';
import type { LineContext } from '@plimsoll/language/vocabulary/keywords';
import { describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { stripSpans } from '../support/generators/strip-spans.ts';
import { listProblems } from '../support/print-problems.ts';
import { readText } from '../support/read-text.ts';
import { LINE_SLIP_ROWS } from './line-slip-rows.ts';

interface Row {
  readonly context: LineContext;
  readonly written: string;
  /** What is said, and each line that a fix writes. */
  readonly said: readonly string[];
}

const HEADERS: Readonly<Record<string, readonly string[]>> = {
  session: ['session 2026-11-17 Otti Plankermann', 'A circuit, 3 rounds', '  Push-up: 12'],
  plan: ['plan Kelp Ladder'],
  exercise: ['exercise Keel Wiggle'],
  place: ['place Kelp Cellar'],
  athlete: ['athlete Otti Plankermann'],
  unknown: [],
};

const ROWS: readonly Row[] = LINE_SLIP_ROWS.trim()
  .split(/\n(?=\S)/)
  .map((block) => {
    const [input, ...said] = block.split('\n');
    const [, context, written] = /^(\w+): (.*)$/.exec(input!)!;
    return { context: context as LineContext, written: written!, said: said.map((line) => line.trim()) };
  });

/** A header is a whole entry; any other line stands in an entry of its kind. */
function frame({ context, written }: Row, line = written): string[] {
  if (isHeader(context, written)) return [line, ...(context === 'session' ? ['  Push-up: 12'] : [])];
  // Two sets stand outside of the three rounds.
  const above = written.includes(': 2x') ? HEADERS[context]!.slice(0, 1) : HEADERS[context]!;
  return [...above, `  ${line}`];
}

function isHeader(context: LineContext, written: string): boolean {
  const line = recogniseLine(written, context);
  return line.kind === 'header' && line.word === context;
}

describe('what a coach is told of a line, and what each fix makes of it', () => {
  test.each(ROWS.map((row) => [`${row.context}: ${row.written}`, row] as const))('%s', (_name, row) => {
    const lines = frame(row);
    const [found, ...more] = listProblems(readText(...lines));
    const { message, code, fixes = [], span } = found!.problem;
    expect(more).toEqual([]);
    expect(lines[span.line]!.slice(span.start, span.end)).toBe(row.written);
    const fixed = fixes.map(({ edits: [edit] }) => `→ ${edit!.newText.replace(/\n\s*/, ' ⏎ ')}`);
    expect([`${message} [${code}]`, ...fixed]).toEqual(row.said);
  });

  test.each(
    ROWS.filter(({ said }) => said[0]!.endsWith('[spelling-of-word]')).map(
      (row) => [row.written, row] as const,
    ),
  )('%s is read as the line that its fix writes', (_written, row) => {
    const fixed = row.said[1]!.slice(2).split(' ⏎ ')[0]!;
    const read = (line: string): unknown =>
      readText(...frame(row, line)).entries.map(({ entry }) => stripSpans(entry));
    expect(read(row.written)).toEqual(read(fixed));
    // What the fix writes is no slip any more.
    expect(
      findLineSlip(frame(row, fixed).at(isHeader(row.context, row.written) ? 0 : -1)!, row.context, 0),
    ).toBeUndefined();
  });

  test('every slip of the tables has a row', () => {
    const unseen = LINE_SLIPS.filter(
      (slip) =>
        !ROWS.some(({ context, written }) => slip.within.includes(context) && slip.pattern.test(written)),
    );
    expect(unseen.map(({ pattern }) => pattern.source)).toEqual([]);
  });
});

describe('places stay those of the text as it is written', () => {
  test.each<[string, string[], string[]]>([
    [
      'names before and behind what was corrected',
      ['session 2026-11-24 Mara Zog @ Kelp Cellar'],
      ['Mara Zog', 'Kelp Cellar'],
    ],
    ['a name behind a colon too many', ['session 2026-11-24', '  A1: Back Squat: 5 @ 60 kg'], ['Back Squat']],
    ['a name behind a bullet', ['session 2026-11-24', '  - Back Squat: 5 @ 60 kg'], ['Back Squat']],
    [
      'a name between two things that were corrected',
      ['session 24 Nov 2026 Mara Zog @ Kelp Cellar'],
      ['Mara Zog', 'Kelp Cellar'],
    ],
    [
      'names between which a comma is meant',
      ['plan Kelp Ladder', '  for Mara Zog and Tibor Ull'],
      ['Mara Zog', 'Tibor Ull'],
    ],
  ])('%s', (_title, lines, names) => {
    const places = new Map<string, string>();
    collect(readText(...lines).entries[0]!.entry, lines, places);
    expect(Object.fromEntries(names.map((name) => [name, places.get(name)]))).toEqual(
      Object.fromEntries(names.map((name) => [name, name])),
    );
  });
});

/** Each name of an entry with the text at its place. */
function collect(value: unknown, lines: readonly string[], places: Map<string, string>): void {
  if (typeof value !== 'object' || value === null) return;
  if ('text' in value && 'span' in value) {
    const { line, start, end } = value.span as { line: number; start: number; end: number };
    places.set(value.text as string, lines[line]!.slice(start, end));
  }
  for (const child of Object.values(value)) collect(child, lines, places);
}

test.each(ROWS.map((row) => [row.written, row] as const))(
  '%s means the same once it is formatted',
  (_written, row) => {
    const text = frame(row).join('\n');
    const formatted = TextDocument.applyEdits(
      TextDocument.create('a.plim', 'plimsoll', 1, text),
      formatText(text),
    );
    const read = (of: string): unknown =>
      readText(...of.split('\n')).entries.map(({ entry }) => stripSpans(entry));
    expect(read(formatted)).toEqual(read(text));
  },
);

test('what is already as it should be is no slip', () => {
  for (const [context, line] of [
    ['session', 'done: 2 of 3 rounds'],
    ['session', 'Effort: 8'],
    ['session', 'session 2026-11-24 18:30, Kelp Ladder week 2 day 1'],
    ['session', 'time 2:20, 2:31, ?'],
    ['session', 'missed, ferry'],
    ['session', 'Session Finisher: 8 @ 20 kg'],
    ['session', 'Row: 5, 5 @ 60 kg, 5'],
    ['session', 'Row: 2x8 @ 20, 15'],
    ['session', 'Row: 2x3 @ 12,5 kg'],
    ['session', 'Row: 3x3 @ 7,5, 10 kg'],
    ['session', 'Row: 3x8 12/14/16'],
    ['session', 'Pain Free Row: 5'],
    ['session', 'Tempo Squat 3x5 @ 40 kg'],
    ['session', 'Drop Jump 3x5'],
    ['session', 'took 5 min rest'],
    ['session', 'session 2026-11-24 Mara Zog at Unit 7 - Annex'],
    ['session', 'lasted 1 h 3 sets cut'],
    ['session', 'sleep 7 h 2 wakes'],
    ['session', 'Rower: 500 m in 1:40, 400 m'],
    ['session', 'Push-up: 3, 30 s'],
    ['session', 'A giant set, 3 rounds'],
    ['session', 'A superset, 3 rounds'],
    ['session', 'warmup: 3 rounds'],
    ['session', 'pain 3 left knee'],
    ['session', 'Block Pull: 5 @ 60 kg'],
    ['session', 'Wushu Squat: 5'],
    ['session', 'Test Jump: 5'],
    ['session', 'session 2026-11-24 Mara Zog at Unit 7'],
    ['session', 'felt off since 2026-11-24'],
    ['plan', 'week 3 Row: 1 @ 90%'],
    ['plan', 'training max 140'],
    ['plan', 'days Mon, Thu'],
    ['plan', 'deload week 4, sets 60%, load 85%'],
    ['place', 'dumbbells 5 lb-50 lb by 5 lb pairs'],
    ['place', 'kettlebells 12,16,20 kg'],
    ['place', 'kettlebells 8, 12,16 kg'],
    ['place', 'plates 4x20, 2x15,2x10,4x5 kg'],
    ['exercise', 'bodyweight 1'],
    ['athlete', 'Sex: Female'],
    ['athlete', 'away 2026-12-19 to 2027-01-03, tour'],
  ] as const) {
    expect([line, findLineSlip(line, context, 0)?.meant]).toEqual([line, undefined]);
  }
});
