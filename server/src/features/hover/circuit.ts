import { toDayNumber } from '@plimsoll/language/calendar/iso-date';
import { CIRCUIT_KINDS, readCircuit } from '@plimsoll/language/circuits/circuit';
import { describeCircuit } from '@plimsoll/language/circuits/describe-circuit';
import { printCircuitFacts, printComplement } from '@plimsoll/language/circuits/print-circuit';
import { suggestComplements } from '@plimsoll/language/circuits/suggest-complements';
import { escapeMarkdown, joinLines, joinParagraphs } from '../../markdown.ts';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';

const COMPLEMENTS_SHOWN = 3;

/** On the header of a circuit: what it needs, repeats and balances, and what would go well with it. */
export function describeCircuitHelp(
  { practice, today }: FeatureContext,
  { word, block, placed: { entry } }: LocatedAs<'word'>,
): string | undefined {
  if (!block || block.kind !== word || !CIRCUIT_KINDS.has(block.kind)) return undefined;
  if (entry.kind !== 'session' && entry.kind !== 'plan') return undefined;
  const circuit = readCircuit(practice, entry, block);
  if (circuit.lines.length === 0) return undefined;
  const facts = printCircuitFacts(describeCircuit(practice, circuit, toDayNumber(today)));
  // One that was done wants no more movements.
  const isDone = block.times.length > 0 || block.done !== undefined;
  const complements = (isDone ? [] : suggestComplements(practice, entry, block, COMPLEMENTS_SHOWN)).map(
    (each) => `- **${escapeMarkdown(each.movement.name)}**: ${escapeMarkdown(printComplement(each))}`,
  );
  return joinParagraphs([
    joinLines(facts.map(escapeMarkdown)),
    complements.length > 0 ? `Would go well with it:\n\n${complements.join('\n')}` : undefined,
  ]);
}
