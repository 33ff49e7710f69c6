import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import { checkFile, checkFileAlone, type FileProblem } from '@plimsoll/language/checks/check-file';
import type { SessionWorks } from '@plimsoll/language/measures/session-work';

export type { FileProblem } from '@plimsoll/language/checks/check-file';

/**
 * What is wrong in a file, in order of place. Until all files are read (`complete`) it is only what the file shows by
 * itself: before, nearly every name is unknown.
 */
export function listProblems(
  works: SessionWorks,
  uri: string,
  { today, complete }: { readonly today: IsoDate; readonly complete: boolean },
): readonly FileProblem[] {
  return complete ? checkFile(works.practice, uri, { today, works }) : checkFileAlone(works.practice, uri);
}
