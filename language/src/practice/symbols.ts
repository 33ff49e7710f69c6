import type { Span } from '../model/source.ts';
import { foldName } from '../text/names.ts';
import type { NamedKind } from './mentions.ts';
import type { Practice } from './practice.ts';
import type { Definition } from './references.ts';

/** Something with a name anywhere in the workspace or the library. */
export interface NamedThing {
  readonly kind: NamedKind | 'session';
  readonly name: string;
  readonly uri: string;
  /** Counts from the file's first. */
  readonly line: number;
  readonly span: Span;
  readonly builtIn: boolean;
}

const MOST = 200;

/**
 * What a search for a name finds, the nearest first: its letters stand in the name in that order, whatever stands
 * between them. Built-in movements and sessions answer to a search that asks for something.
 */
export function findNamed(practice: Practice, query: string): readonly NamedThing[] {
  const wanted = foldName(query).replaceAll(' ', '');
  const things = [...listDefined(practice), ...(wanted === '' ? [] : listOthers(practice, wanted))];
  const ranked = things.flatMap((thing) => {
    const rank = rankName(foldName(thing.name), wanted);
    return rank === undefined ? [] : [{ thing, rank: rank + (thing.builtIn ? 0.5 : 0) }];
  });
  return ranked
    .sort((a, b) => a.rank - b.rank || a.thing.name.localeCompare(b.thing.name))
    .slice(0, MOST)
    .map(({ thing }) => thing);
}

function* listDefined(practice: Practice): Iterable<NamedThing> {
  for (const movement of practice.allMovements()) if (!movement.builtIn) yield toThing('movement', movement);
  for (const athlete of practice.allAthletes()) yield toThing('athlete', athlete);
  for (const place of practice.allPlaces()) yield toThing('place', place);
  for (const plan of practice.allPlans()) yield toThing('plan', plan);
}

/** Sessions are looked for by their day, so letters alone find none. */
function* listOthers(practice: Practice, wanted: string): Iterable<NamedThing> {
  for (const movement of practice.allMovements()) if (movement.builtIn) yield toThing('movement', movement);
  if (!/\d/.test(wanted)) return;
  for (const key of practice.athleteKeys()) {
    const name = practice.athleteName(key);
    for (const { entry, date, uri, line, index } of practice.sessionsOf(key)) {
      if (index === 0)
        yield {
          kind: 'session',
          name: `${date} ${name}`.trim(),
          uri,
          line,
          span: entry.header,
          builtIn: false,
        };
    }
  }
}

function toThing(kind: NamedKind, definition: Definition): NamedThing {
  const { name, uri, line, entry } = definition;
  const builtIn = 'builtIn' in definition && definition.builtIn;
  return { kind, name, uri, line, span: entry.name!.span, builtIn };
}

/** 0 where the name begins so, 1 where a word of it does, 2 where it holds the letters in a row, 3 where in order. */
function rankName(name: string, wanted: string): number | undefined {
  const packed = name.replaceAll(' ', '');
  if (packed.startsWith(wanted)) return 0;
  const words = name.split(' ');
  if (words.some((_, index) => words.slice(index).join('').startsWith(wanted))) return 1;
  if (packed.includes(wanted)) return 2;
  let at = 0;
  for (const char of wanted) {
    at = packed.indexOf(char, at) + 1;
    if (at === 0) return undefined;
  }
  return 3;
}
