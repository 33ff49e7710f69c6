import type { IToken } from 'chevrotain';
import type { CstNode, LangiumCoreServices } from 'langium';
import { findCheck } from '../checks/catalogue.ts';
import type { Entry } from '../model/entry.ts';
import type { Problem, Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { recogniseLine } from '../syntax/line-kind.ts';
import { findComment, skipSpace } from '../syntax/scanned-token.ts';
import type { MassUnit } from '../units/mass.ts';
import type { LineContext } from '../vocabulary/keywords.ts';
import { placeAsWritten } from './as-meant.ts';
import { buildEntry, type EntryFrame } from './build-entry.ts';
import { LineMemo } from './fast/line-memo.ts';
import { readRegularSession } from './fast/read-session.ts';
import { readRegularUnits } from './fast/read-units.ts';
import { findItemSlip } from './item-slips.ts';
import { EntryReading, replaceBy, spanOf, visitLeaves } from './line-reading.ts';
import { type FoundLineSlip, findHeadingComment, findLineSlip } from './line-slips/find-line-slip.ts';

/** What one entry's text is read with. */
export interface EntryReader {
  /** Reads the lines of one entry, its header first. Never fails. */
  read(lines: readonly string[], opens: boolean, fileUnit: MassUnit | undefined): Entry;
  /** Lets go of what only makes reading faster. */
  forget?(): void;
}

/** Reads entries: a regular session straight from its text, all else by the generated parser. */
export function createEntryReader(createServices: () => LangiumCoreServices): EntryReader {
  let parser: EntryReader | undefined;
  let memo = new LineMemo();
  return {
    read(lines, opens, fileUnit) {
      const fast = readFast(lines, opens, fileUnit, memo);
      if (fast) return fast;
      // It takes a tenth of a second to make, which the first lenses of a regular log need not wait for.
      parser ??= createParsingReader(createServices());
      return parser.read(lines, opens, fileUnit);
    },
    forget() {
      memo = new LineMemo();
    },
  };
}

/** Reads an entry without the generated parser, where that is sure to give the same; else undefined. */
export function readFast(
  lines: readonly string[],
  opens: boolean,
  fileUnit: MassUnit | undefined,
  memo?: LineMemo,
): Entry | undefined {
  if (!opens) return undefined;
  const first = lines[0]!;
  if (first.startsWith('session ')) return readRegularSession(lines, frameOf(lines, opens), fileUnit, memo);
  return first.startsWith('units ') ? readRegularUnits(lines, frameOf(lines, opens)) : undefined;
}

/** Reads entries by the generated parser alone: the definition of the language. */
export function createParsingReader(services: LangiumCoreServices): EntryReader {
  const read = (
    lines: readonly string[],
    frame: EntryFrame,
    unit: MassUnit | undefined,
    as: Meaning,
  ): Entry => parseEntry(services, lines, frame, unit, as);
  return {
    read(lines, opens, fileUnit) {
      const frame = frameOf(lines, opens);
      const context = opens ? contextOfHeader(lines[0]!) : 'unknown';
      const entry = read(lines, frame, fileUnit, { context, slips: [] });
      const troubled = new Set([...entry.problems, ...entry.strays].map(({ span }) => span.line));
      const slips = lines.flatMap((text, line) => {
        const slip = findLineSlip(text, context, line, troubled.has(line)) ?? findHeadingComment(lines, line);
        return slip ? [slip] : [];
      });
      if (slips.length === 0) return entry;
      const meant = lines.map((text, line) => slips.find(({ span }) => span.line === line)?.meant ?? text);
      const again = read(meant, frame, fileUnit, { context, slips });
      const placed = { ...placeAsWritten(again, lines, meant), ...frame };
      return { ...placed, problems: [...placed.problems, ...slips.map(toProblem)] };
    },
  };
}

interface Meaning {
  readonly context: LineContext;
  /** What the hand slipped in, and was corrected in the lines. */
  readonly slips: readonly FoundLineSlip[];
}

function parseEntry(
  services: LangiumCoreServices,
  lines: readonly string[],
  frame: EntryFrame,
  fileUnit: MassUnit | undefined,
  { context, slips }: Meaning,
): Entry {
  const { value, parserErrors } = services.parser.LangiumParser.parse<ast.Practice>(lines.join('\n'), {
    rule: 'Practice',
  });
  const errors = parserErrors.map((error) => ({ message: error.message, span: findSpan(error.token) }));
  const reading = new EntryReading(fileUnit, new Set(errors.map(({ span }) => span.line)));
  for (const { span, meant } of slips) reading.settle(span.line, meant !== undefined);
  for (const { message, span } of errors) {
    const slip = findItemSlip(lines[span.line]!, context, span);
    if (slip) reading.mend(slip.code, slip.span, slip.message, slip.fixes);
    else reading.report('syntax', span, message);
  }
  const node = value.entries[0] ?? value.loose;
  if (node?.$cstNode && lines.some((line) => /\d,\d/.test(line))) reportDecimalCommas(reading, node.$cstNode);
  return buildEntry(reading, frame, node ?? ({ $type: 'Loose', lines: [] } as unknown as ast.Loose));
}

/** The kind of entry that a header opens; a mistyped one opens an unknown one. */
function contextOfHeader(header: string): LineContext {
  const line = recogniseLine(header, 'unknown');
  return line.kind === 'header' ? line.word : 'unknown';
}

function toProblem({ code, message, span, fixes }: FoundLineSlip): Problem {
  return { code, severity: findCheck(code).severity, message, span, ...(fixes.length > 0 && { fixes }) };
}

const headerSpans: Span[] = [];
const LONG_HEADER = 200;

/** One and the same object for all headers of a length, for there is one in each of a practice's sessions. */
function spanTo(end: number): Span {
  headerSpans[end] ??= { line: 0, start: 0, end };
  return headerSpans[end];
}

/** What the text alone says of an entry. */
function frameOf(lines: readonly string[], opens: boolean): EntryFrame {
  const first = lines[0] ?? '';
  const start = opens ? skipSpace(first, 0) : 0;
  const end = opens ? first.trimEnd().length : 0;
  return {
    lineCount: lines.length,
    header: start === 0 && end < LONG_HEADER ? spanTo(end) : { line: 0, start, end },
    ignores: readIgnores(lines),
  };
}

/** Where an error stands: its token, or the end of the line that broke off (a mark that takes no room). */
function findSpan(token: IToken): Span {
  const start = Math.max(0, (token.startColumn || 1) - 1);
  const end = Math.max(token.endColumn ?? start, start);
  if (end > start) return { line: (token.startLine || 1) - 1, start, end };
  // Nothing to underline behind the end: the token before is where something is missing.
  const before = token.payload as IToken | undefined;
  return before ? findSpan(before) : { line: (token.startLine || 1) - 1, start, end: start + 1 };
}

/** A comma in a number is understood, and the fix writes a point. */
function reportDecimalCommas(reading: EntryReading, node: CstNode): void {
  visitLeaves(node, (leaf) => {
    if (
      !('tokenType' in leaf) ||
      (leaf.tokenType as { name: string }).name !== 'NUMBER' ||
      !leaf.text.includes(',')
    )
      return;
    const point = leaf.text.replace(',', '.');
    const span = spanOf(leaf);
    const message = `Write ${point} with a point: a comma begins something new`;
    reading.report('decimal-comma', span, message, [replaceBy(span, point)]);
  });
}

/** `# ignore unknown-movement, missing-load` on a line silences those checks there. */
function readIgnores(lines: readonly string[]): Entry['ignores'] {
  if (!lines.some((text) => text.includes('ignore'))) return NO_IGNORES;
  return lines.flatMap((text, line) => {
    const match = /^#\s*ignore\s+([\w-]+(?:\s*,\s*[\w-]+)*)/i.exec(text.slice(findComment(text)));
    return match ? [{ line, codes: match[1]!.split(/\s*,\s*/) }] : [];
  });
}

const NO_IGNORES: Entry['ignores'] = [];
