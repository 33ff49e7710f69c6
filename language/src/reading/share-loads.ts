import type { SetGroup } from '../model/quantity.ts';
import { printAmount } from '../printing/print-quantity.ts';
import { addAfter, type EntryReading, replaceBy, spanBetween } from './line-reading.ts';

/** Sets before the first load of a cell share it; a later one without a load is reported, and keeps its reps. */
export function shareLoads(reading: EntryReading, sets: readonly SetGroup[]): SetGroup[] {
  const first = sets.findIndex((set) => set.ownLoad && set.load);
  const listed = reportRatingLists(reading, sets);
  if (sets.length > 1) reportLoneTime(reading, sets);
  if (first < 0) return [...sets];
  const before = sets.map((set) => set.loadText);
  for (let index = 1; index < before.length; index++) before[index] ??= before[index - 1];
  const after = sets.map((set) => set.loadText);
  for (let index = after.length - 2; index >= 0; index--) after[index] ??= after[index + 1];
  return sets.map((set, index) => {
    if (set.ownLoad || set.loadSpan) return set;
    if (index < first) return { ...set, load: sets[first]!.load! };
    if (set.amount && set.amount.kind !== 'skipped' && !listed.has(set)) {
      reportMissingLoad(reading, set, before[index], after[index]);
    }
    return set;
  });
}

/** `500 m, 2:05`: one distance, and one time by the clock behind it, are mostly one set. */
function reportLoneTime(reading: EntryReading, sets: readonly SetGroup[]): void {
  const at = sets.findIndex(isDistance);
  const [distance, time] = [sets[at], sets[at + 1]];
  if (!distance || !time || !isClock(time) || !isAlone(distance) || !isAlone(time)) return;
  if (sets.some((set) => set !== distance && set !== time && (isDistance(set) || isClock(set)))) return;
  const between = { ...distance.span, start: distance.span.end, end: time.span.start };
  const [first, second] = [printAmount(distance.amount!), printAmount(time.amount!)];
  const message = `Did ${first} take ${second}? Then write ${first} in ${second}: behind a comma the time is a set of its own`;
  reading.report('time-as-set', spanBetween(distance.span, time.span), message, [
    replaceBy(between, ' in ', `Write ${first} in ${second}`),
  ]);
}

function isDistance({ amount }: SetGroup): boolean {
  return amount?.kind === 'quantity' && amount.quantity.measure === 'metres';
}

function isClock({ amount }: SetGroup): boolean {
  return amount?.kind === 'quantity' && amount.quantity.unit === 'clock';
}

/** An amount and nothing else. */
function isAlone(set: SetGroup): boolean {
  const isBare = set.ratings.length === 0 && set.drops.length === 0 && !set.loadSpan;
  return isBare && !set.counted && !set.within && set.amount?.kind === 'quantity' && !set.amount.perSide;
}

function reportMissingLoad(reading: EntryReading, set: SetGroup, before?: string, after?: string): void {
  // Where a line breaks off, this may be what broke it.
  if (reading.broken.has(set.span.line)) return;
  const texts = [...new Set([before, after])].filter((text) => text !== undefined);
  reading.report(
    'set-without-load',
    set.span,
    'After the first load every set writes its own, and this one has none',
    texts.map((text) => addAfter(set.amountSpan, ` @ ${text}`, `Add @ ${text}`)),
  );
}

/** `3x5 @ 100 kg rpe 7, 8, 8`: bare numbers behind a rating that are ratings too. Gives the sets that are meant so. */
function reportRatingLists(reading: EntryReading, sets: readonly SetGroup[]): ReadonlySet<SetGroup> {
  const listed = new Set<SetGroup>();
  for (let index = 0; index < sets.length; index++) {
    const rated = sets[index]!;
    const rating = rated.ratings.at(-1);
    if (rating?.scale !== 'rpe' && rating?.scale !== 'rir') continue;
    const more: SetGroup[] = [];
    while (isBareRating(sets[index + 1 + more.length])) more.push(sets[index + 1 + more.length]!);
    // Without a load, `12 rpe 7, 10` are two sets; three sets with three ratings are not.
    const meant = rated.ownLoad || (rated.counted && rated.count === more.length + 1);
    if (more.length === 0 || !meant) continue;
    for (const set of more) listed.add(set);
    reportRatingList(reading, rated, more);
    index += more.length;
  }
  return listed;
}

function isBareRating(set: SetGroup | undefined): boolean {
  if (!set || set.counted || set.loadSpan || set.ratings.length > 0 || set.amount?.kind !== 'quantity')
    return false;
  const { measure, value } = set.amount.quantity;
  return measure === 'reps' && value <= 10 && set.drops.length === 0;
}

function reportRatingList(reading: EntryReading, rated: SetGroup, more: readonly SetGroup[]): void {
  const { scale } = rated.ratings.at(-1)!;
  const span = spanBetween(more[0]!.span, more.at(-1)!.span);
  const { amount } = rated;
  const simple = amount?.kind === 'quantity' && amount.quantity.measure === 'reps' && !amount.perSide;
  const load = rated.loadText === undefined ? '' : ` @ ${rated.loadText}`;
  const written = more.map((set) => {
    const value = set.amount?.kind === 'quantity' ? set.amount.quantity.value : '?';
    return `${simple ? amount.quantity.value : '?'}${load} ${scale} ${value}`;
  });
  // Three sets were counted together: each is written by itself with its rating.
  const apart = rated.counted && rated.count === more.length + 1;
  const fixes = !simple
    ? []
    : apart
      ? [
          {
            title: 'Write each set with its rating',
            edits: [
              { span: { ...rated.span, end: rated.amountSpan.start }, newText: '' },
              { span, newText: written.join(', ') },
            ],
          },
        ]
      : [replaceBy(span, written.join(', '), 'Write each set with its rating')];
  reading.report(
    'rating-list',
    span,
    'A rating stands behind its own set, such as 5 @ 100 kg rpe 8: are these sets or ratings?',
    fixes,
  );
}
