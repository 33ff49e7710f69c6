import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { describeRevision } from '@plimsoll/language/revisions/describe-revision';
import { printRevision } from '@plimsoll/language/revisions/print-revision';
import type { Revision } from '@plimsoll/language/revisions/revision';
import { readFiles } from '../support/marked-practice.ts';

/** Files by path; one text alone is `a.plim`. */
export type Files = string | Readonly<Record<string, string>>;

/** What changed from some files to others, on 2026-11-24. */
export function revise(before: Files, after: Files): Revision {
  const [was, is] = [before, after].map((files) => {
    const named = typeof files === 'string' ? { 'a.plim': files } : files;
    return { practice: readFiles(named), paths: Object.keys(named) };
  });
  const works = new SessionWorks(is!.practice);
  return describeRevision(was!, is!, works, {
    today: '2026-11-24',
    formula: 'epley',
    unit: 'kg',
    complete: true,
  });
}

/** The same as it is printed, line by line, since `HEAD`. */
export function printRevised(before: Files, after: Files): string[] {
  return printRevision(revise(before, after), 'HEAD')
    .split('\n')
    .filter((line) => line !== '');
}
