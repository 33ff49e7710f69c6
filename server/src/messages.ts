/** The messages that server and editor exchange beyond the Language Server Protocol. It ships next to no code. */

import type { Position, Range } from 'vscode-languageserver';

/** Which shown number is to be explained; also the one argument of the command `plimsoll.explain` behind a lens. */
export interface ExplainParams {
  readonly uri: string;
  /** Where the lens stands; the explanation is shown at its start. */
  readonly range: Range;
  /** Tells the numbers at one place apart, as the server named them when it made the lens. */
  readonly id: string;
}

/** Whose week is to be told: that of the athlete at a place of a file. */
export interface AthleteWeekParams {
  readonly uri: string;
  readonly position: Position;
}

/** An athlete's week in a few words, as a status item shows it. */
export interface AthleteWeek {
  /** `Odalys · week 47 so far: 3 sessions, 18 220 kg`. */
  readonly text: string;
  /** How it stands to the weeks before; may be empty. */
  readonly detail: string;
}

/** Every custom request by its method, with what is sent and what comes back. */
export interface CustomRequests {
  /** Answers Markdown, or null when the text has changed so that the number is no longer there. */
  'plimsoll/explain': { params: ExplainParams; result: string | null };
  /** Answers null where no athlete is, and until all logs are read. */
  'plimsoll/athleteWeek': { params: AthleteWeekParams; result: AthleteWeek | null };
}

/**
 * Tells that the weeks of athletes may be others now: the logs are read, or another file than that in sight changed.
 * An editor that knows nothing of it may drop what begins with `$/`.
 */
export const WEEKS_CHANGED = '$/plimsoll/weeksChanged';
