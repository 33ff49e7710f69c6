import { findEntry } from '../practice/mentions.ts';
import { findLineSlip } from '../reading/line-slips/find-line-slip.ts';
import { addEffort, addTimes } from './add-missing-lines.ts';
import { addPlannedRound, addRoundWithRep, addSameRound } from './add-round.ts';
import { addWarmup } from './add-warmup.ts';
import { convertEntry, convertFile, convertLine } from './convert-units.ts';
import { countSets } from './count-sets.ts';
import { defineMovement } from './define-movement.ts';
import { makeCircuit, makeStraight } from './make-circuit.ts';
import { moveDefinition } from './move-definition.ts';
import type { Rewrite, RewriteRequest, Rewriter } from './rewrite.ts';
import { roundLoads } from './round-loads.ts';
import { turnRowsIntoKilograms, turnRowsIntoPounds, turnRowsIntoSets } from './sets-from-column.ts';
import { sortSessions } from './sort-sessions.ts';
import { spellOutSets } from './spell-out-sets.ts';

/** In the order in which they are offered. */
const REWRITERS: readonly Rewriter[] = [
  turnRowsIntoSets,
  turnRowsIntoKilograms,
  turnRowsIntoPounds,
  addWarmup,
  roundLoads,
  spellOutSets,
  countSets,
  addSameRound,
  addRoundWithRep,
  addPlannedRound,
  addTimes,
  addEffort,
  makeCircuit,
  makeStraight,
  convertLine,
  convertEntry,
  convertFile,
  sortSessions,
];

/** Those that rest on every file of the workspace. */
const WHOLE_WORKSPACE: readonly Rewriter[] = [defineMovement, moveDefinition];

/** What can be made of a selection. `complete` says whether every file has been read. */
export function listRewrites(
  request: RewriteRequest,
  { complete }: { readonly complete: boolean },
): readonly Rewrite[] {
  const rewriters = complete ? [...WHOLE_WORKSPACE, ...REWRITERS] : REWRITERS;
  return rewriters
    .flatMap((rewriter) => rewriter(request) ?? [])
    .filter(({ edits }) => !edits.some((edit) => changesSlip(request, edit)));
}

/** A line that is read as it is meant is corrected first: the places in it are not those of the facts. */
function changesSlip(
  { practice, uri }: RewriteRequest,
  { uri: other = uri, range }: Rewrite['edits'][number],
): boolean {
  const { start, end } = range;
  if (start.line !== end.line || start.character === end.character) return false;
  const file = practice.file(other);
  const placed = file && findEntry(file.model, start.line);
  return placed !== undefined && findLineSlip(file!.lines[start.line]!, placed.entry.kind, 0) !== undefined;
}
