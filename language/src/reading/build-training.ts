import type * as ast from '../syntax/generated/ast.ts';
import { applyDone, applyRest, applyTimes, buildBlockHeader } from './build-block.ts';
import { buildMovementLine } from './build-movement-line.ts';
import { buildPlanLine } from './build-plan-facts.ts';
import { buildSessionLine } from './build-session-facts.ts';
import { type EntryReading, spanOf, textOf, toNumber } from './line-reading.ts';
import { type Training, TrainingFold, type TrainingPiece } from './training-fold.ts';

/** Folds the lines of a session, a plan or an unknown entry, as the generated parser left them, into blocks. */
export function buildTraining(reading: EntryReading, lines: readonly ast.TrainingLine[]): Training {
  const fold = new TrainingFold(reading);
  for (const line of lines) if (line.$cstNode) fold.take(buildPiece(reading, line));
  return fold.finish();
}

function buildPiece(reading: EntryReading, line: ast.TrainingLine): TrainingPiece {
  const span = spanOf(line);
  switch (line.$type) {
    case 'NoteLine':
      return { kind: 'note', text: line.text.replace(/^>\s*/, ''), span };
    case 'StrayLine':
      return { kind: 'stray', text: line.text, span };
    case 'MovementLine':
      return { kind: 'movement', line: buildMovementLine(reading, line) };
    case 'BlockLine': {
      const block = buildBlockHeader(reading, line);
      return { kind: 'block', open: () => block };
    }
    case 'TimeLine':
      return { kind: 'record', span, apply: (block) => applyTimes(reading, block, line) };
    case 'DoneLine':
      return { kind: 'record', span, apply: (block) => applyDone(reading, block, line) };
    case 'RestLine':
      return { kind: 'record', span, apply: (block) => applyRest(reading, block, line) };
    case 'DayLine': {
      if (line.number === undefined)
        reading.expect('missing-value', span, 'Expected the number of the day, such as day 1');
      const number = line.number === undefined ? undefined : toNumber(line.number);
      const name = line.name?.$cstNode ? textOf(line.name) : undefined;
      if (name !== undefined && /^[.,]\d/.test(name))
        reading.report('out-of-range', span, `day ${line.number}${name}: only whole numbers count here`);
      return { kind: 'day', ...(number !== undefined && { number }), ...(name && { name }), span };
    }
    default:
      return {
        kind: 'property',
        apply: (session, plan) => {
          if (!buildSessionLine(reading, session, line)) buildPlanLine(reading, plan, line);
        },
      };
  }
}
