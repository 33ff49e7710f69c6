/** The messages that server and editor exchange beyond the Language Server Protocol. Types only: it ships no code. */

import type { Range } from 'vscode-languageserver';

/** Which shown number is to be explained; also the one argument of the command `plimsoll.explain` behind a lens. */
export interface ExplainParams {
  readonly uri: string;
  /** Where the lens stands; the explanation is shown at its start. */
  readonly range: Range;
  /** Tells the numbers at one place apart, as the server named them when it made the lens. */
  readonly id: string;
}

/** Every custom request by its method, with what is sent and what comes back. */
export interface CustomRequests {
  /** Answers Markdown, or null when the text has changed so that the number is no longer there. */
  'plimsoll/explain': { params: ExplainParams; result: string | null };
}
