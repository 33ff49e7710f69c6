import { toDayNumber } from '@plimsoll/language/calendar/iso-date';
import { computeBodyMassSeries } from '@plimsoll/language/measures/series';
import type { SessionEntry } from '@plimsoll/language/model/entry';
import type { SessionRecord } from '@plimsoll/language/practice/athlete';
import type { Located } from '@plimsoll/language/practice/locate';
import { unitFor } from '@plimsoll/language/summaries/session-lens';
import { describeSeries } from '@plimsoll/language/summaries/sparkline';
import { foldName } from '@plimsoll/language/text/names';
import { type FeatureContext, toLensOptions } from '../context.ts';

interface Fact {
  readonly title: string;
  readonly unit: string;
  readonly read: (entry: SessionEntry, index: number) => number | undefined;
}

/** What sessions write of themselves, by the word that writes it. */
const FACTS: Readonly<Record<string, Fact>> = {
  effort: { title: 'Effort', unit: 'of 10', read: ({ efforts }, index) => readValue(efforts, index) },
  lasted: {
    title: 'Time',
    unit: 'min',
    read: ({ lasted }, index) => {
      const seconds = readValue(lasted, index);
      return seconds === undefined ? undefined : seconds / 60;
    },
  },
  sleep: { title: 'Sleep', unit: 'h', read: ({ sleep }) => sleep?.hours },
  readiness: { title: 'Readiness', unit: 'of 5', read: ({ readiness }) => readiness?.score },
};

/** `Effort: ▁▄█ 6, 7, 8 of 10 (5 Oct to 12 Nov)`: what the last sessions wrote, up to this one; of body mass the weigh-ins. */
export function describeFactSeries(
  context: FeatureContext,
  uri: string,
  located: Located,
): string | undefined {
  if (located.kind !== 'word' || !context.workspace.complete) return undefined;
  const { practice, works, today } = context;
  const { entry } = located.placed;
  const [record] = practice.recordsOf(uri, located.placed);
  const athlete = entry.kind === 'athlete' && entry.name ? foldName(entry.name.text) : record?.athlete;
  if (athlete === undefined) return undefined;
  if (located.word.endsWith(' bodyweight') && entry.kind !== 'exercise') {
    const series = computeBodyMassSeries(works, athlete, record?.day ?? toDayNumber(today));
    const text = describeSeries(series, unitFor(works, athlete, toLensOptions(context)), today);
    return text && `Body mass: ${text}`;
  }
  const fact = FACTS[located.word];
  if (!fact || !record) return undefined;
  const points = listPoints(practice.sessionsOf(athlete), record, fact);
  const text = describeSeries({ points, unit: fact.unit }, 'kg', today);
  return text && `${fact.title}: ${text}`;
}

function listPoints(records: readonly SessionRecord[], until: SessionRecord, { read }: Fact) {
  return records
    .filter(({ day }) => day <= until.day)
    .flatMap(({ entry, index, day }) => {
      const value = read(entry, index);
      return value === undefined ? [] : { day, value, bound: 'exact' as const };
    });
}

/** One value is for all. */
function readValue(
  fact: { readonly values: readonly (number | undefined)[] } | undefined,
  index: number,
): number | undefined {
  return fact && (fact.values.length === 1 ? fact.values[0] : fact.values[index]);
}
