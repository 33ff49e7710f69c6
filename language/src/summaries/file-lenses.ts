import type { SessionWorks } from '../measures/session-work.ts';
import { describeBlock } from './block-lens.ts';
import type { Lens, LensOptions, LineHint } from './lens.ts';
import { describeHints, describeMaxes } from './line-lens.ts';
import { describePlan, describePlanHints } from './plan-lens.ts';
import { describeRoundHints } from './round-hints.ts';
import { describeSession } from './session-lens.ts';

/** All lenses of one file, from top to bottom. */
export function describeLenses(works: SessionWorks, uri: string, options: LensOptions): Lens[] {
  const lenses: Lens[] = [];
  for (const placed of works.practice.file(uri)?.model.entries ?? []) {
    lenses.push(...describePlan(works, placed, options));
    const records = works.practice.recordsOf(uri, placed);
    if (placed.entry.kind !== 'session' || records.length === 0) continue;
    const { line } = placed;
    const session = describeSession(works, records, options);
    if (session.text !== '') lenses.push({ ...session, line });
    if (placed.entry.missed) continue;
    const alone = records.length === 1 ? works.of(records[0]!) : undefined;
    for (const block of placed.entry.blocks) {
      const described = alone
        ? describeBlock(works, alone, block, options)
        : describeGroupBlock(works, records, block, options);
      if (described) lenses.push({ ...described, line: line + block.span.line });
    }
    if (!alone) continue;
    for (const { entryLine, ...lens } of describeMaxes(works, alone, options))
      lenses.push({ ...lens, line: line + entryLine });
  }
  return lenses.sort((a, b) => a.line - b.line);
}

/** In a group each athlete has a headline; the lens shows the last fact of each: density, score or sum. */
function describeGroupBlock(
  works: SessionWorks,
  records: ReturnType<SessionWorks['practice']['recordsOf']>,
  block: Parameters<typeof describeBlock>[2],
  options: LensOptions,
): Omit<Lens, 'line'> | undefined {
  const parts = records.flatMap((record) => {
    const lens = describeBlock(works, works.of(record), block, { ...options, complete: true });
    const name = record.entry.athletes[record.index]!.text;
    return lens ? [{ lens, text: `${name} ${lens.text.split(' · ').at(-1)}` }] : [];
  });
  if (parts.length === 0) return undefined;
  return {
    kind: 'block',
    text: parts.map(({ text }) => text).join(' · '),
    results: parts.flatMap(({ lens }) => lens.results),
  };
}

/** The quiet facts at the lines' ends of one file. */
export function describeFileHints(works: SessionWorks, uri: string, options: LensOptions): LineHint[] {
  return (works.practice.file(uri)?.model.entries ?? []).flatMap((placed) => {
    if (placed.entry.kind === 'plan') return describePlanHints(works, placed, options);
    const records = works.practice.recordsOf(uri, placed);
    if (placed.entry.kind !== 'session') return [];
    const changes = records.length === 1 ? describeHints(works, works.of(records[0]!), options) : [];
    return [...describeRoundHints(placed.entry), ...changes].map(({ entryLine, ...hint }) => ({
      ...hint,
      line: placed.line + entryLine,
    }));
  });
}
