import type { CstNode } from 'langium';
import { type CheckCode, findCheck } from '../checks/catalogue.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import { shorten } from '../text/shorten.ts';
import type { MassUnit } from '../units/mass.ts';
import { describeLimit, LIMITS, type LimitName } from '../vocabulary/limits.ts';

/** What the builders of one entry share: the unit of its file, and a place for what they find wrong. */
export class EntryReading {
  readonly problems: Problem[] = [];
  readonly fileUnit: MassUnit | undefined;
  /** Lines with a syntax error. */
  readonly broken: ReadonlySet<number>;
  /** Lines of which a syntax error was told: one a line is enough, for the next is mostly its echo. */
  private told: Set<number> | undefined;
  /** Lines of which it was told that they are a slip of the hand, with whether they were read as what is meant. */
  private settled: Map<number, boolean> | undefined;
  /** By line. */
  private mended: Map<number, Span> | undefined;

  constructor(fileUnit: MassUnit | undefined, broken: ReadonlySet<number>) {
    this.fileUnit = fileUnit;
    this.broken = broken;
  }

  report(code: CheckCode, span: Span, message: string, fixes: readonly Fix[] = []): void {
    if (this.settled?.has(span.line) && this.isSettled(code, span.line)) return;
    if (this.mended && this.isMended(span)) return;
    if (code === 'syntax') {
      this.told ??= new Set();
      if (this.told.has(span.line)) return;
      this.told.add(span.line);
    }
    const { severity } = findCheck(code);
    // A fix would be written into a line that does not stand there.
    const mayFix = fixes.length > 0 && !this.settled?.has(span.line);
    this.problems.push({ code, severity, message, span, ...(mayFix && { fixes }) });
  }

  /**
   * Says that a line was told of. Whatever else is found there waits until it is corrected; of a line that was read as
   * it is meant, only how things are spelt does.
   */
  settle(line: number, isMeant: boolean): void {
    this.settled ??= new Map();
    this.settled.set(line, isMeant);
  }

  private isSettled(code: CheckCode, line: number): boolean {
    return !this.settled!.get(line) || findCheck(code).severity === 'info';
  }

  /** Reports a slip of which it is known what is meant: all else that is found in its place is its echo. */
  mend(code: CheckCode, span: Span, message: string, fixes: readonly Fix[]): void {
    this.told ??= new Set();
    if (this.told.has(span.line) || this.settled?.get(span.line) === false) return;
    this.told.add(span.line);
    this.mended ??= new Map();
    this.mended.set(span.line, span);
    const echo = this.problems.findIndex((problem) => this.isMended(problem.span));
    if (echo >= 0) this.problems.splice(echo, 1);
    this.problems.push({ code, severity: findCheck(code).severity, message, span, fixes });
  }

  private isMended({ line, start, end }: Span): boolean {
    const slip = this.mended?.get(line);
    return slip !== undefined && start < slip.end && slip.start < end;
  }

  /** Reports that something is missing, unless the line broke off: then the syntax message has said so. */
  expect(code: CheckCode, span: Span, message: string, fixes: readonly Fix[] = []): undefined {
    if (!this.broken.has(span.line)) this.report(code, span, message, fixes);
  }

  /**
   * Whether a line whose word may stand once counts: the last does, and is reported. A line that broke off never
   * replaces what another one says.
   */
  once(before: unknown, span: Span, word: string): boolean {
    if (before === undefined) return true;
    if (this.broken.has(span.line)) return false;
    this.report('repeated-property', span, `${word} stands here twice: the last one counts`);
    return true;
  }

  /** Whether a number is within its limit; one that is not is reported and must not be used. */
  accept(name: LimitName, value: number, span: Span, text: string): boolean {
    const { low, high } = LIMITS[name];
    if (value >= low && value <= high) return true;
    this.report('out-of-range', span, `${shorten(text)} is out of range: ${describeLimit(name)}`);
    return false;
  }

  acceptWhole(name: LimitName, value: number, span: Span, text: string): boolean {
    if (!this.accept(name, value, span, text)) return false;
    if (Number.isInteger(value)) return true;
    this.report('out-of-range', span, `${shorten(text)}: only whole numbers count here`);
    return false;
  }

  /** A rating or a range of ratings; RPE goes in half points. */
  acceptRating(
    scale: 'rpe' | 'rir' | 'hr' | 'v',
    low: number,
    high: number | undefined,
    span: Span,
    text: string,
  ): boolean {
    for (const value of high === undefined ? [low] : [low, high]) {
      if (!this.accept(scale, value, span, text)) return false;
      if (scale !== 'rpe' || Number.isInteger(value * 2)) continue;
      const half = Math.round(value * 2) / 2;
      const fixes = high === undefined ? [replaceBy(span, `rpe ${half}`)] : [];
      this.report('out-of-range', span, `${text}: RPE goes in half points such as 7.5`, fixes);
      return false;
    }
    return this.acceptOrder(low, high, span, 'the lower to the higher number');
  }

  /** Whether a range does not run downwards; one that does not is reported and must not be used. */
  acceptOrder(low: number, high: number | undefined, span: Span, direction: string): boolean {
    if (high === undefined || low <= high) return true;
    this.report('range-order', span, `A range goes from ${direction}`);
    return false;
  }
}

/** What the property lines of an entry say, beside what every entry has. */
export type Facts<T> = Omit<
  T,
  'kind' | 'lineCount' | 'header' | 'notes' | 'strays' | 'problems' | 'ignores' | 'name'
>;

/**
 * A node as the parser may leave it: behind a place that it could not read anything is missing, whatever the types of
 * the tree say.
 */
export type Holed<T> = T extends unknown
  ? {
      readonly [K in keyof T]: K extends `$${string}`
        ? T[K]
        : T[K] extends readonly unknown[]
          ? T[K]
          : T[K] | undefined;
    }
  : never;

/** The node, if it was read from text. */
export function present<T extends { readonly $cstNode?: CstNode }>(node: T | undefined): T | undefined {
  return node?.$cstNode ? node : undefined;
}

/** Where a node stands. A node never leaves its line. */
export function spanOf(node: { readonly $cstNode?: CstNode } | CstNode): Span {
  const cst = '$cstNode' in node ? node.$cstNode! : (node as CstNode);
  const { start, end } = cst.range;
  return { line: start.line, start: start.character, end: end.character };
}

/** From the beginning of one place to the end of another on the same line. */
export function spanBetween(from: Span, to: Span): Span {
  return { line: from.line, start: from.start, end: to.end };
}

export function textOf(node: { readonly $cstNode?: CstNode }): string {
  return node.$cstNode?.text ?? '';
}

/** A fix that replaces one place. */
export function replaceBy(span: Span, newText: string, title = `Write ${newText.trim()}`): Fix {
  return { title, edits: [{ span, newText }] };
}

/** A fix that adds text behind a place. */
export function addAfter(span: Span, newText: string, title = `Add ${newText.trim()}`): Fix {
  return { title, edits: [{ span: { line: span.line, start: span.end, end: span.end }, newText }] };
}

/** The number as written; a decimal comma is read as a point. */
export function toNumber(text: string): number {
  return Number(text.replace(',', '.'));
}

/** Calls `visit` with each leaf of a tree of text, without the costs of a stream. */
export function visitLeaves(node: CstNode | undefined, visit: (leaf: CstNode) => void): void {
  if (!node) return;
  if ('content' in node) for (const child of node.content as CstNode[]) visitLeaves(child, visit);
  else visit(node);
}
