import { createPractice } from '../../../language/src/create-practice.ts';
import type { Result } from '../../../language/src/measures/result.ts';
import { type SessionWork, SessionWorks } from '../../../language/src/measures/session-work.ts';
import { printNumber } from '../../../language/src/units/number.ts';

/** The one athlete of these tests; sessions may leave the name out. */
export const NAME = 'Ptolemy Grubb';

export interface ReadWorks {
  readonly works: SessionWorks;
  /** In order of date. */
  readonly sessions: readonly SessionWork[];
}

/** Reads definitions and a log, each as one file, into the sums of the athlete's sessions. */
export function readWorks(definitions: string, log: string): ReadWorks {
  const practice = createPractice();
  practice.setFile('definitions.plim', definitions);
  practice.setFile('log.plim', log);
  const works = new SessionWorks(practice);
  return { works, sessions: practice.sessionsOf(NAME).map((record) => works.of(record)) };
}

/** `at least 82.5 kg, remark`, to four decimals; `none, remark` without a value. */
export function printValue({ value, unit, bound, remark }: Result): string {
  const number = value === undefined ? 'none' : printNumber(value, 4);
  const lead = value !== undefined && bound === 'at least' ? 'at least ' : '';
  const tail = value === undefined || unit === '' ? '' : ` ${unit}`;
  return `${lead}${number}${tail}${remark ? `, ${remark}` : ''}`;
}

/** `Bar Press: why it was left out`. */
export function printOmitted({ omitted }: Pick<Result, 'omitted'>): string[] {
  return omitted.map(({ what, why }) => `${what}: ${why}`);
}
