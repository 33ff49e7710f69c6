import { toDayNumber } from '@plimsoll/language/calendar/iso-date';
import { identifyBlock } from '@plimsoll/language/measures/same-block';
import {
  computeBodyMassSeries,
  computeVolumeSeries,
  listDensitySeries,
  listMaxSeries,
  type TimeSeries,
} from '@plimsoll/language/measures/series';
import type { Block } from '@plimsoll/language/model/entry';
import { unitFor } from '@plimsoll/language/summaries/session-lens';
import { describeSeries } from '@plimsoll/language/summaries/sparkline';
import { type FeatureContext, toLensOptions } from '../context.ts';
import type { WhoTrains } from './who-trains.ts';

/** `Estimated max: ▁▄█ 96, 98.5, 102 kg (5 Oct to 12 Nov)`, of the movement without settings, up to the session. */
export function describeMaxSeries(
  context: FeatureContext,
  movementKey: string,
  who: WhoTrains,
): string | undefined {
  if (!context.workspace.complete) return undefined;
  const until = who.record?.day ?? toDayNumber(context.today);
  const series = listMaxSeries(context.works, who.athlete, until, context.settings.formula);
  const found = series.find(({ key }) => key === movementKey);
  return found && write(context, who.athlete, 'Estimated max', found);
}

/** The volume of the last weeks that are over, and the last weigh-ins. */
export function describeAthleteSeries(context: FeatureContext, athlete: string): string[] {
  const { works, today, workspace } = context;
  if (!workspace.complete) return [];
  const day = toDayNumber(today);
  const found = [
    write(context, athlete, 'Volume a week', computeVolumeSeries(works, athlete, day)),
    write(context, athlete, 'Body mass', computeBodyMassSeries(works, athlete, day)),
  ];
  return found.filter((text) => text !== undefined);
}

/** The densities of the same block, up to its session. */
export function describeDensitySeries(
  context: FeatureContext,
  block: Block,
  { athlete, record }: WhoTrains,
): string | undefined {
  const { works, practice, workspace } = context;
  if (!workspace.complete || !record || block.implicit) return undefined;
  const { key } = identifyBlock(practice, block);
  const series = listDensitySeries(works, athlete, record.day).filter((one) =>
    one.key.startsWith(`${key} | `),
  );
  const found = series.findLast(({ points }) => points.at(-1)?.day === record.day) ?? series.at(-1);
  return found && write(context, athlete, 'Density', found);
}

function write(
  context: FeatureContext,
  athlete: string,
  title: string,
  series: TimeSeries,
): string | undefined {
  const unit = unitFor(context.works, athlete, toLensOptions(context));
  const text = describeSeries(series, unit, context.today);
  return text && `${title}: ${text}`;
}
