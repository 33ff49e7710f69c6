import type { SessionRecord } from '@plimsoll/language/practice/athlete';
import type { Located } from '@plimsoll/language/practice/locate';
import type { Practice } from '@plimsoll/language/practice/practice';
import { foldName } from '@plimsoll/language/text/names';

export interface WhoTrains {
  /** Folded name; empty where nobody is named. */
  readonly athlete: string;
  /** The athlete's part of this session; absent in a plan. */
  readonly record?: SessionRecord;
  readonly place?: string;
}

/** Whose the line under a cursor is, and where it is done: in a group by the cell, in a plan its first athlete. */
export function findWhoTrains(
  practice: Practice,
  uri: string,
  { placed, line, cell }: Located,
): WhoTrains | undefined {
  const { entry } = placed;
  const place = entry.kind === 'session' || entry.kind === 'plan' ? entry.place?.text : undefined;
  if (entry.kind === 'plan') {
    const [first] = entry.athletes;
    return first && { athlete: foldName(first.text), ...(place && { place }) };
  }
  const records = practice.recordsOf(uri, placed);
  const isSplit = line !== undefined && line.cells.length > 1;
  const record = records[isSplit ? (cell ?? 0) : 0];
  return record && { athlete: record.athlete, record, ...(place && { place }) };
}
