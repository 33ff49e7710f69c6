import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import type { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { Span } from '@plimsoll/language/model/source';
import type { Practice } from '@plimsoll/language/practice/practice';
import type { LensOptions } from '@plimsoll/language/summaries/lens';
import type { Range } from 'vscode-languageserver';
import type { CommittedTexts } from '../committed-texts.ts';
import type { Settings } from '../settings.ts';
import type { Sight } from '../sight.ts';
import type { Workspace } from '../workspace.ts';

/** All that a feature answers from. */
export interface FeatureContext {
  readonly practice: Practice;
  readonly works: SessionWorks;
  readonly workspace: Pick<Workspace, 'complete' | 'versionOf' | 'textOf' | 'toClientUri' | 'complaintAbout'>;
  /** How logs were last committed, where an editor tells it. */
  readonly committed?: Pick<CommittedTexts, 'find'>;
  readonly settings: Settings;
  /** Which lines the editor shows. */
  readonly sight: Sight;
  readonly today: IsoDate;
}

/** How summaries word and compare, from settings and day. */
export function toLensOptions({ settings, workspace, today }: FeatureContext): LensOptions {
  return { today, formula: settings.formula, unit: settings.unit, complete: workspace.complete };
}

/** A span of an entry that begins on that line of its file. */
export function toRange(entryLine: number, { line, start, end }: Span): Range {
  return {
    start: { line: entryLine + line, character: start },
    end: { line: entryLine + line, character: end },
  };
}

/** A stretch of one line, counted from the first of its file. */
export function toFileRange(line: number, { start, end }: Pick<Span, 'start' | 'end'>): Range {
  return { start: { line, character: start }, end: { line, character: end } };
}
