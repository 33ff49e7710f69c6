/** The messages that server and editor exchange beyond the Language Server Protocol. It ships next to no code. */

import type { Position, WorkspaceEdit } from 'vscode-languageserver';

/**
 * Which lens: the number that stands for its file as long as the server runs, its line, its kind, and which of that kind
 * on the line. Short, for each keystroke sends hundreds of them.
 */
export type LensId = readonly [file: number, line: number, kind: string, nth: number];

/** Which lens's numbers are to be explained; also the one argument of the command `plimsoll.explain` behind a lens. */
export interface ExplainParams {
  readonly lens: LensId;
}

export interface Explanation {
  readonly uri: string;
  /** Where the lens stands; the explanation is shown at the line's start. */
  readonly line: number;
  /** Null when the text has changed so that the number is no longer there. */
  readonly markdown: string | null;
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

/** Whose next session is to be written: the athlete's by name, else that of the one at a place. */
export interface NextSessionParams {
  /** Of the log in sight, or of a folder. */
  readonly uri: string;
  readonly position?: Position;
  readonly athlete?: string;
}

export type NextSessionAnswer =
  | {
      readonly kind: 'written';
      readonly edit: WorkspaceEdit;
      /** Where the session begins once the edit is made. */
      readonly uri: string;
      readonly line: number;
    }
  | { readonly kind: 'choose'; readonly athletes: string[] }
  | { readonly kind: 'refused'; readonly why: string };

/** Why an editor has no committed text of a log: nobody trusted its folder, git is not there, and so on. */
export type NoCommittedText = 'restricted' | 'no git' | 'no repository' | 'not committed';

/** A log as it was last committed, or why that is not known. */
export type CommittedTextParams = { readonly uri: string } & (
  | { readonly text: string; readonly missing?: undefined }
  | { readonly missing: NoCommittedText; readonly text?: undefined }
);

/** Tells the server how an open log was last committed: once when it is opened, and again when that may have changed. */
export const COMMITTED_TEXT = 'plimsoll/committedText';

/** Which lines of a log an editor shows, both included, from 0. */
export interface InSightParams {
  readonly uri: string;
  readonly first: number;
  readonly last: number;
}

/** Tells the server what is in sight of an open log, whenever that changes. */
export const IN_SIGHT = 'plimsoll/inSight';

/** What the server is told of the editor when it starts, beside what the protocol says of it. */
export interface InitializationOptions {
  /** Whether it tells what is in sight. */
  readonly tellsSight?: boolean;
}

/** Every custom request by its method, with what is sent and what comes back. */
export interface CustomRequests {
  /** Answers null where the server knows no such file. */
  'plimsoll/explain': { params: ExplainParams; result: Explanation | null };
  /** Answers null only where something failed. */
  'plimsoll/nextSession': { params: NextSessionParams; result: NextSessionAnswer | null };
  /** Answers Markdown: what changed in a log since it was last committed, and what it costs, or why that is not known. */
  'plimsoll/revision': { params: { readonly uri: string }; result: string | null };
  /** Answers null where no athlete is, and until all logs are read. */
  'plimsoll/athleteWeek': { params: AthleteWeekParams; result: AthleteWeek | null };
}

/**
 * Tells that the weeks of athletes may be others now: the logs are read, or another file than that in sight changed.
 * An editor that knows nothing of it may drop what begins with `$/`.
 */
export const WEEKS_CHANGED = '$/plimsoll/weeksChanged';
