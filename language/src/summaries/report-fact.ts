import { findMethod } from '../measures/methods.ts';
import type { Result } from '../measures/result.ts';

/** A number with everything that explains it. */
export interface ReportNumber extends Result {
  /** Which of several it is: a muscle, a pattern, a movement, two sides. */
  readonly of?: string;
  readonly title: string;
  readonly formula: string;
  readonly source: string;
}

/** What a lens or a line of the report says, and the numbers in it. */
export interface ReportFact {
  readonly of: string;
  readonly text: string;
  readonly numbers: readonly ReportNumber[];
}

export function explainAll(results: readonly Result[]): ReportNumber[] {
  return results.map((result) => explainNumber(result));
}

export function explainNumber(result: Result, of?: string): ReportNumber {
  const { title, formula, source } = findMethod(result.method);
  return { ...(of !== undefined && { of }), ...result, title, formula, source };
}
