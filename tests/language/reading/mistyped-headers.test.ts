import { formatText } from '@plimsoll/language/formatting/format-text';
import { describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { applyEdits, listProblems } from '../support/print-problems.ts';
import { readText } from '../support/read-text.ts';

const ABOVE = ['session 2026-11-22 Tibor Ull', '  Back Squat: 5 @ 60 kg'];
const BELOW = ['  Push-up: 12'];
const MEANT = 'session 2026-11-24 Mara Zog';

/** What is told of a line between two sessions' lines, with each line that a fix writes, space and all. */
function tell(line: string, below = BELOW): string[] {
  const lines = [...ABOVE, line, ...below];
  return listProblems(readText(...lines)).flatMap(({ entryLine, problem }) => [
    problem.message,
    ...(problem.fixes ?? []).map(({ edits: [edit] }) => {
      const text = lines[entryLine + edit!.span.line]!;
      return text.slice(0, edit!.span.start) + edit!.newText + text.slice(edit!.span.end);
    }),
  ]);
}

describe('a header that is none is told where it stands, and its fix begins a session', () => {
  test.each([
    [' session 2026-11-24 Mara Zog'],
    ['\tsession 2026-11-24 Mara Zog'],
    ['  sesion 2026-11-24 Mara Zog'],
    ['- session 2026-11-24 Mara Zog'],
    ['* session 2026-11-24 Mara Zog'],
    ['1. session 2026-11-24 Mara Zog'],
    ['**session 2026-11-24 Mara Zog**'],
    ['session2026-11-24 Mara Zog'],
    ['session-2026-11-24 Mara Zog'],
    ['training 2026-11-24 Mara Zog'],
    ['session Mara Zog 2026-11-24'],
    ['session for Mara Zog, 2026-11-24'],
    ['2026-11-24 Mara Zog'],
    ['2026/11/24 Mara Zog'],
    ['24.11.2026 Mara Zog'],
    ['24.11.26 Mara Zog'],
    ['11/24/2026 Mara Zog'],
    ['24 Nov 2026 Mara Zog'],
    ['Tuesday, Nov 24, 2026 Mara Zog'],
  ])('%j', (line) => {
    const because =
      'no session begins here, so the lines below count to the entry above until it is corrected';
    expect(tell(line)).toEqual([`Write ${MEANT}: ${because}`, MEANT]);
    expect(readText(...ABOVE, MEANT, ...BELOW).entries.length).toBe(2);
  });

  test('a date with two meanings has a fix for each', () => {
    expect(tell('5.11.2026 Mara Zog').slice(1)).toEqual([
      'session 2026-11-05 Mara Zog',
      'session 2026-05-11 Mara Zog',
    ]);
    expect(tell('5.5.2026 Mara Zog').slice(1)).toEqual(['session 2026-05-05 Mara Zog']);
  });

  test('what stands behind the line stays: a comment, a time, a place and a plan', () => {
    expect(tell(' session 2026-11-24 Mara Zog # late')[1]).toBe('session 2026-11-24 Mara Zog # late');
    const tail = '18:30 Mara Zog at Kelp Cellar, Kelp Ladder week 2 day 1';
    expect(tell(`* 2026-11-24 ${tail}`)[1]).toBe(`session 2026-11-24 ${tail}`);
  });

  test('formatting leaves its words alone', () => {
    const text = [...ABOVE, '* session 2026-11-24 Mara Zog', ...BELOW, ''].join('\n');
    expect(
      TextDocument.applyEdits(TextDocument.create('a.plim', 'plimsoll', 1, text), formatText(text)),
    ).toContain(' * session 2026-11-24 Mara Zog\n');
  });

  test.each([
    ['2026-11-24 legs felt heavy'],
    ['session notes were lost'],
    ['2026-13-45 Mara Zog'],
    ['  Back Squat 2026-11-24'],
    ['  workout went on until 2026-11-24'],
  ])('%j is no header', (line) => {
    expect(tell(line).join(' ')).not.toContain('no session begins here');
  });
});

describe('a heading of another notation', () => {
  test.each([
    ['## session 2026-11-24 Mara Zog'],
    ['# Session: 2026-11-24 Mara Zog'],
    ['##session 24.11.2026 Mara Zog'],
  ])('%s', (line) => {
    const because = 'this is a comment, so the lines below count to the entry above until it is corrected';
    expect(tell(line)).toEqual([`Write ${MEANT}: ${because}`, MEANT]);
  });

  test.each<[string, string, string[]]>([
    ['commented out with the lines below it', '# session 2026-11-24 Mara Zog', ['#  Push-up: 12']],
    ['at the end', '## session 2026-11-24 Mara Zog', []],
    ['before the next session', '# session 2026-11-24 Mara Zog', ['', 'session 2026-11-25', '  Push-up: 5']],
    ['about a session', '# session 2026-11-20 was better', BELOW],
    ['about no date', '# session two', BELOW],
  ])('none %s', (_title, line, below) => {
    expect(tell(line, below)).toEqual([]);
  });
});

test('edits of a fix leave the lines around it alone', () => {
  const lines = [...ABOVE, '  - session 2026-11-24 Mara Zog', ...BELOW];
  const [{ entryLine, problem }] = listProblems(readText(...lines)) as [ReturnType<typeof listProblems>[0]];
  expect(applyEdits(lines, entryLine, problem.fixes![0]!.edits)).toEqual([MEANT]);
});
