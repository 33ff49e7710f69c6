import { listLines } from '@plimsoll/language/checks/check-context';
import type { SetGroup } from '@plimsoll/language/model/quantity';
import type { Place } from '@plimsoll/language/practice/athlete';
import { implementOf } from '@plimsoll/language/practice/movement';
import type { InlayHint, Range } from 'vscode-languageserver';
import type { FeatureContext } from './context.ts';
import { describePlates } from './hover/plates.ts';

/** `25 + 2.5 kg a side` behind each load of a bar, where the session's place can make it. */
export function listPlateHints(
  { practice }: FeatureContext,
  uri: string,
  { start, end }: Range,
): InlayHint[] {
  const entries = practice.file(uri)?.model.entries ?? [];
  return entries.flatMap(({ entry, line: entryLine }) => {
    const isInSight = entryLine <= end.line && entryLine + entry.lineCount > start.line;
    const name = isInSight && entry.kind === 'session' ? entry.place?.text : undefined;
    const place = name === undefined ? undefined : practice.findPlace(name);
    if (!place) return [];
    return listLines(entry)
      .filter(({ line }) => implementOf(practice.findMovement(line.name.text)) === 'bar')
      .flatMap(({ line }) => line.cells.flatMap(({ sets }) => sets))
      .filter(({ span }) => entryLine + span.line >= start.line && entryLine + span.line <= end.line)
      .flatMap((set) => toHint(place, entryLine, set));
  });
}

function toHint(place: Place, entryLine: number, { load, ownLoad, loadSpan }: SetGroup): InlayHint[] {
  if (load?.kind !== 'mass' || !ownLoad || !loadSpan || load.implements !== 1 || load.other || load.high)
    return [];
  const plates = describePlates(load.mass, place.entry);
  const side = plates && /^[^;]*each side (.+)$/.exec(plates)?.[1];
  if (!side) return [];
  const position = { line: entryLine + loadSpan.line, character: loadSpan.end };
  return [{ position, label: `${side} a side`, tooltip: `At ${place.name}: ${plates}`, paddingLeft: true }];
}
