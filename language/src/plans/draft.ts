import type { Block } from '../model/entry.ts';
import type { SetGroup } from '../model/quantity.ts';
import type { Movement } from '../practice/movement.ts';
import type { LineContext } from './line-context.ts';
import type { Performance } from './performance.ts';
import type { ProjectedLine } from './projected.ts';

/** Sets as they will be written, and why they are not what the plan says, one sentence each. */
export interface Draft {
  readonly groups: readonly SetGroup[];
  readonly reasons: readonly string[];
}

/** How a line goes on from what was done of it, the last time last; undefined where the rule is not for such a line. */
export type ProgressionRule = (
  context: LineContext,
  block: Block,
  planned: ProjectedLine,
  movement: Movement | undefined,
  performances: readonly Performance[],
) => Draft | undefined;
