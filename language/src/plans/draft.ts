import type { SetGroup } from '../model/quantity.ts';

/** Sets as they will be written, and why they are not what the plan says, one sentence each. */
export interface Draft {
  readonly groups: readonly SetGroup[];
  readonly reasons: readonly string[];
}
