import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import {
  checkFile,
  checkFileAlone,
  type FileProblem,
  prepareCheck,
} from '@plimsoll/language/checks/check-file';
import { applySeverities, type Severities } from '@plimsoll/language/checks/severities';
import type { SessionWorks } from '@plimsoll/language/measures/session-work';

export type { FileProblem } from '@plimsoll/language/checks/check-file';

export interface ProblemOptions {
  readonly today: IsoDate;
  readonly complete: boolean;
  /** The usual ones where nothing is said. */
  readonly severities?: Severities;
}

/**
 * What is wrong in a file, in order of place, with the severities that were chosen. Until all files are read
 * (`complete`) it is only what the file shows by itself: before, nearly every name is unknown.
 */
export function listProblems(
  works: SessionWorks,
  uri: string,
  { today, complete, severities = {} }: ProblemOptions,
): readonly FileProblem[] {
  const found = complete
    ? checkFile(works.practice, uri, { today, works })
    : checkFileAlone(works.practice, uri);
  return applySeverities(found, severities);
}

/** Step by step what {@link listProblems} then has little left to do of, for whoever has other things to do meanwhile. */
export function prepareProblems(
  works: SessionWorks,
  uri: string,
  { today, complete }: Pick<ProblemOptions, 'today' | 'complete'>,
): Iterable<unknown> {
  return complete ? prepareCheck(works.practice, uri, { today, works }) : [];
}
