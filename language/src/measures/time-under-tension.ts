import { isWorking } from './block-work.ts';
import { findCell } from './expand-sets.ts';
import { type Input, type Result, toResult } from './result.ts';
import { nameMovement } from './series-sets.ts';
import type { SessionWork } from './session-work.ts';
import { measureAmount } from './set-work.ts';
import { computeSecondsPerRep, SECONDS_OF_X, type TempoPhase } from './tempo.ts';

/**
 * Seconds under tension of the working sets whose line writes a tempo, each side's reps counted; undefined where no
 * line does. Sets in reps without one are counted as left out.
 */
export function computeTensionTime(sessions: readonly SessionWork[]): Result | undefined {
  const reps = new Map<string, { label: string; reps: number; seconds: number }>();
  let [without, unknown, fast] = [0, 0, false];
  for (const { blocks, context, record } of sessions) {
    for (const { block, sets } of blocks) {
      for (const { set } of sets) {
        if (!isWorking(set, block) || set.amount?.kind === 'skipped') continue;
        const phases = findTempo(set.line, record.index);
        const amounts = [set.amount, ...set.group.drops.map(({ amount }) => amount)];
        const done = amounts.map((amount) => amount && measureAmount(amount));
        if (!phases) {
          if (done.some((part) => part?.quantity.measure === 'reps')) without++;
          continue;
        }
        if (done.some((part) => part === undefined)) unknown++;
        const { name } = nameMovement(context.findMovement(set.line.name.text), set.line.name.text);
        const label = `${name}, tempo ${phases.join('-')}`;
        const sum = reps.get(label) ?? { label, reps: 0, seconds: computeSecondsPerRep(phases) };
        for (const part of done) if (part?.quantity.measure === 'reps') sum.reps += part.total;
        reps.set(label, sum);
        fast ||= phases.includes('X');
      }
    }
  }
  if (reps.size === 0) return undefined;
  const parts = [...reps.values()];
  return toResult({
    value: parts.reduce((sum, part) => sum + part.reps * part.seconds, 0),
    unit: 's',
    method: 'time-under-tension',
    bound: unknown > 0 ? 'at least' : 'exact',
    inputs: parts.map((part): Input => ({ label: part.label, value: part.reps, unit: 'reps' })),
    omitted: [
      ...(without > 0 ? [{ what: countSets(without), why: 'no tempo written' }] : []),
      ...(unknown > 0 ? [{ what: countSets(unknown), why: 'not recorded' }] : []),
    ],
    ...(fast && { remark: `X counted as ${SECONDS_OF_X} s` }),
  });
}

const countSets = (sets: number): string => `${sets} set${sets === 1 ? '' : 's'}`;

type Line = SessionWork['blocks'][number]['block']['lines'][number];

/** A cell's own tempo goes before its line's. */
function findTempo(line: Line, athleteIndex: number): readonly TempoPhase[] | undefined {
  const modifiers = [...(findCell(line, athleteIndex)?.modifiers ?? []), ...line.modifiers];
  const tempo = modifiers.find((modifier) => modifier.kind === 'tempo');
  return tempo?.kind === 'tempo' && tempo.phases.length > 0 ? tempo.phases : undefined;
}
