import type { AstNode, CstNode } from 'langium';
import { type CheckCode, findCheck } from '../checks/catalogue.ts';
import type { Fix, Problem, Span } from '../model/source.ts';
import type { MassUnit } from '../units/mass.ts';
import { describeLimit, LIMITS, type LimitName } from '../vocabulary/limits.ts';

/** What the builders of one entry share: the unit of its file, and a place for what they find wrong. */
export class EntryReading {
  readonly problems: Problem[] = [];
  readonly fileUnit: MassUnit | undefined;
  /** Lines with a syntax error. */
  readonly broken: ReadonlySet<number>;

  constructor(fileUnit: MassUnit | undefined, broken: ReadonlySet<number>) {
    this.fileUnit = fileUnit;
    this.broken = broken;
  }

  report(code: CheckCode, span: Span, message: string, fixes: readonly Fix[] = []): void {
    const { severity } = findCheck(code);
    this.problems.push({ code, severity, message, span, ...(fixes.length > 0 && { fixes }) });
  }

  /** Whether a number is within its limit; one that is not is reported and must not be used. */
  accept(name: LimitName, value: number, span: Span, text: string): boolean {
    const { low, high } = LIMITS[name];
    if (value >= low && value <= high) return true;
    this.report('out-of-range', span, `${text} is out of range: ${describeLimit(name)}`);
    return false;
  }
}

/** Where a node stands. A node never leaves its line. */
export function spanOf(node: AstNode | CstNode): Span {
  const cst = '$type' in node ? node.$cstNode! : (node as CstNode);
  const { start, end } = cst.range;
  return { line: start.line, start: start.character, end: end.character };
}

/** From the beginning of one place to the end of another on the same line. */
export function spanBetween(from: Span, to: Span): Span {
  return { line: from.line, start: from.start, end: to.end };
}

export function textOf(node: AstNode): string {
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
