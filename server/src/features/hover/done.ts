import type { PlacedEntry } from '@plimsoll/language/model/entry';
import { compareDone } from '@plimsoll/language/plans/done-work';
import { tabulateDone } from '@plimsoll/language/summaries/done-lines';
import { unitFor } from '@plimsoll/language/summaries/session-lens';
import { escapeMarkdown, joinParagraphs } from '../../markdown.ts';
import { type FeatureContext, toLensOptions } from '../context.ts';
import { toTable } from './plan-weeks.ts';

/** On the plan that a session names: what was done of each line of its day. */
export function describeDoneTable(
  context: FeatureContext,
  uri: string,
  placed: PlacedEntry,
): string | undefined {
  const { practice, works, workspace } = context;
  if (placed.entry.kind !== 'session' || placed.entry.missed || !workspace.complete) return undefined;
  const options = toLensOptions(context);
  // Of a session that has just its header nothing was left out yet.
  const records = practice.recordsOf(uri, placed).filter((record) => works.of(record).total.sets > 0);
  return joinParagraphs(
    records.flatMap((record) => {
      const unit = unitFor(works, record.athlete, options);
      const rows = tabulateDone(compareDone(works, record, options.formula) ?? [], unit);
      if (rows.length === 0) return [];
      const name = records.length > 1 ? ` of ${escapeMarkdown(practice.athleteName(record.athlete))}` : '';
      return [
        `Done of what was planned${name}:`,
        toTable(['', 'Sets', 'Reps', unit, `Heaviest, ${unit}`], rows),
      ];
    }),
  );
}
