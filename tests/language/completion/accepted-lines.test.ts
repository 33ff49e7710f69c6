import { complete } from '@plimsoll/language/completion/complete';
import type { CompletionItem } from '@plimsoll/language/completion/item';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { openPractice, readFolder, TODAY, toUri } from '../checks/workspace.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';
import { listProblems } from '../support/print-problems.ts';
import { readWhole } from '../support/read-text.ts';
import { acceptInto } from './accept.ts';

vi.setConfig({ testTimeout: PATIENCE });

const SAMPLES = readFolder('samples');
const practice = openPractice(Object.fromEntries(SAMPLES));
const works = new SessionWorks(practice);

/** Of a long list the first items, and some of the others. */
const MOST_ITEMS = 12;
/** Words that must go on go on so often at most. */
const MOST_STEPS = 4;

/** What a line must not have because of an item: all errors, and what the language did not understand. */
const NOT_UNDERSTOOD = new Set([
  'stray-line',
  'unknown-item',
  'unknown-entry',
  'vocabulary',
  'name-without-colon',
]);

interface Typed {
  readonly uri: string;
  readonly lines: readonly string[];
  readonly line: number;
  readonly column: number;
}

test('accepting anything anywhere in the samples gives a line that is understood', () => {
  const failures = fc.sample(anyPlace(), RUNS).flatMap(listFailures);
  expect([...new Set(failures)]).toEqual([]);
});

/** `Back Squat: 5<|>  →  Back Squat: 5 @: missing-load`, of every item that is offered there. */
function listFailures(typed: Typed): string[] {
  const before = new Set(listCodes(typed.lines, typed.line));
  const written = practice.file(typed.uri)!.lines.join('\n');
  practice.setFile(typed.uri, typed.lines.join('\n'));
  const failures = pick(ask(typed)).flatMap((item) => {
    const { lines, isOpen } = acceptAll(typed, item);
    const codes = listCodes(lines, typed.line).filter(
      (code) => !before.has(code) && !(isOpen && code.startsWith('missing-')),
    );
    const text = typed.lines[typed.line]!;
    const marked = `${text.slice(0, typed.column)}<|>${text.slice(typed.column)}`;
    return codes.length > 0 ? [`${marked}  →  ${lines[typed.line]}: ${codes.join(', ')}`] : [];
  });
  practice.setFile(typed.uri, written);
  return failures;
}

/** A place of a sample, in the line as it is or as it was while it was written. */
function anyPlace(): fc.Arbitrary<Typed> {
  return fc
    .tuple(fc.constantFrom(...SAMPLES), fc.nat(), fc.nat(), fc.boolean())
    .map(([[path, text], first, second, isCut]) => {
      const lines = text.split('\n');
      const line = first % lines.length;
      const column = second % (lines[line]!.length + 1);
      if (isCut) lines[line] = lines[line]!.slice(0, column);
      return { uri: toUri(path), lines, line, column };
    });
}

function ask({ uri, line, column }: Typed): readonly CompletionItem[] {
  return complete(works, uri, line, column, { today: TODAY });
}

function pick(items: readonly CompletionItem[]): CompletionItem[] {
  const step = Math.max(1, Math.floor(items.length / MOST_ITEMS));
  return items.filter((_item, index) => index < MOST_ITEMS || index % step === 0).slice(0, 2 * MOST_ITEMS);
}

/** Accepts an item, and of what must follow it the first one, until the line stands. */
function acceptAll(
  typed: Typed,
  item: CompletionItem,
  steps = MOST_STEPS,
): { lines: readonly string[]; isOpen: boolean } {
  if (steps === 0) throw new Error(`No end: ${typed.lines[typed.line]}`);
  const old = typed.lines[typed.line]!;
  const text = acceptInto(old, item);
  const lines = typed.lines.with(typed.line, text);
  if (!item.continues) return { lines, isOpen: false };
  const next = { ...typed, lines, column: text.length - (old.length - item.replace.end) };
  practice.setFile(typed.uri, lines.join('\n'));
  const [first] = ask(next);
  return first ? acceptAll(next, first, steps - 1) : { lines, isOpen: true };
}

/** Codes of the problems on one line of a file, which is read for itself with the lines that its meaning hangs on. */
function listCodes(lines: readonly string[], line: number): string[] {
  const header = lines.findLastIndex((text, at) => at <= line && /^[a-z]/.test(text));
  const from = Math.max(0, header);
  const until = lines.findIndex((text, at) => at > line && /^[a-z]/.test(text));
  const entry = lines.slice(from, until < 0 ? lines.length : until);
  return listProblems(readWhole(entry.join('\n')).model)
    .filter(({ entryLine, problem }) => {
      const extra = entry[line - from]!.split('\n').length - 1;
      const at = entryLine + problem.span.line;
      return at >= line - from && at <= line - from + extra;
    })
    .filter(({ problem }) => problem.severity === 'error' || NOT_UNDERSTOOD.has(problem.code))
    .map(({ problem }) => problem.code);
}
