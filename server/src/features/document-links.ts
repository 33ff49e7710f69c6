import { listPlanLinks } from '@plimsoll/language/practice/plan-links';
import type { DocumentLink } from 'vscode-languageserver';
import { type FeatureContext, toFileRange } from './context.ts';

/** From a session to the day of the plan that it followed; the fragment is the place, as editors read it. */
export function provideDocumentLinks({ practice, workspace }: FeatureContext, uri: string): DocumentLink[] {
  return listPlanLinks(practice, uri).map(({ from, uri: target, line, column, text }) => ({
    range: toFileRange(from.line, from),
    target: `${workspace.toClientUri(target)}#${line + 1},${column + 1}`,
    tooltip: text,
  }));
}
