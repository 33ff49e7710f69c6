import type { SessionEntry } from '../model/entry.ts';
import type { Problem, Written } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { type CheckContext, problem, textAt } from './check-context.ts';

type Slot = 'athlete' | 'place' | 'plan';

const KNOWN: Readonly<Record<Slot, (practice: Practice, name: string) => unknown>> = {
  athlete: (practice, name) => practice.findAthlete(name),
  place: (practice, name) => practice.findPlace(name),
  plan: (practice, name) => practice.findPlan(name),
};

/** What may stand between two names where a bar, the word `at` or a comma should. */
const BETWEEN = /^(?:in|with|and|at|[/\-–—;+&])$/i;
const TIME_OF_DAY = /^(?:\s+\d{1,2}:\d{2})?/;

/** Names of a session's header up to one place in it, as they are meant. */
interface Names {
  readonly athletes: readonly string[];
  readonly place?: string;
  readonly plan?: string;
}

/**
 * Of names in a session's header that nothing defines, the first that holds names which something does: of an athlete
 * where a plan would stand, or two in one. The fix writes them apart, and leaves out nothing.
 */
export function findJoinedNames(entry: SessionEntry, context: CheckContext): Problem | undefined {
  const { date, athletes, place, plan } = entry;
  const { practice } = context;
  if (!date) return undefined;
  for (const [slot, name] of listSlots(entry)) {
    if (KNOWN[slot](practice, name.text)) continue;
    // The names behind it stay where they are.
    const isLast = slot !== 'athlete' || name === athletes.at(-1);
    const before: Names = {
      athletes: athletes.filter((each) => each.span.start < name.span.start).map(({ text }) => text),
      ...(slot === 'plan' && place && { place: place.text }),
    };
    const isFree = { place: !place || slot === 'place', plan: !plan || slot === 'plan' };
    const found = splitName(name.text, practice).flatMap(
      (parts) => joinNames(slot, parts, before, isLast ? isFree : { place: false, plan: false }) ?? [],
    )[0];
    if (!found || (slot === 'plan' && plan?.week !== undefined)) continue;
    const written = writeNames(found);
    const header = textAt(context, { ...date.span, start: date.span.end, end: name.span.end });
    const start = date.span.end + TIME_OF_DAY.exec(header)![0].length;
    const span = { line: name.span.line, start, end: name.span.end };
    const isAlone = written === name.text;
    const advice = isAlone ? 'but an athlete is: no comma stands before the name' : `write ${written}`;
    const message = `No ${slot} is called ${name.text}${isAlone ? ',' : ':'} ${advice}`;
    return problem(`unknown-${slot}`, name.span, message, [
      replaceBy(span, written.startsWith(',') ? written : ` ${written}`, `Write ${written}`),
    ]);
  }
  return undefined;
}

function listSlots({ athletes, place, plan }: SessionEntry): (readonly [Slot, Written])[] {
  return [
    ...athletes.map((name) => ['athlete', name] as const),
    ...(place ? [['place', place] as const] : []),
    ...(plan ? [['plan', plan.name] as const] : []),
  ];
}

type Part = readonly [slot: Slot, name: string];

/** The ways in which a name is one or two that are defined. */
function splitName(text: string, practice: Practice): Part[][] {
  const words = text.replace(/[/;+&]/g, ' $& ').split(/\s+/);
  const whole = findKinds(words, practice).map((part) => [part]);
  const pairs = words.slice(1).flatMap((word, at) => {
    const left = findKinds(words.slice(0, at + 1), practice);
    const right = words.slice(at + (BETWEEN.test(word) ? 2 : 1));
    return left.length === 0
      ? []
      : left.flatMap((first) => findKinds(right, practice).map((second) => [first, second]));
  });
  return [...whole, ...pairs];
}

function findKinds(words: readonly string[], practice: Practice): Part[] {
  const name = words.join(' ');
  if (name === '') return [];
  return (Object.keys(KNOWN) as Slot[])
    .filter((slot) => KNOWN[slot](practice, name))
    .map((slot): Part => [slot, name]);
}

/** Names of which each has its own place; undefined where one is taken already, or a plan stands before another name. */
function joinNames(
  slot: Slot,
  parts: readonly Part[],
  before: Names,
  isFree: { readonly place: boolean; readonly plan: boolean },
): Names | undefined {
  const of = (wanted: Slot): string[] => parts.filter(([found]) => found === wanted).map(([, name]) => name);
  const [athletes, places, plans] = [of('athlete'), of('place'), of('plan')];
  const isTaken =
    (places.length > 0 && (!isFree.place || before.place !== undefined)) ||
    (plans.length > 0 && !isFree.plan);
  if (isTaken || places.length > 1 || plans.length > 1 || (plans.length > 0 && parts.at(-1)![0] !== 'plan'))
    return undefined;
  // Behind a place or a comma somebody is only named if nobody was before: else a plan may be meant.
  if (slot === 'place' && athletes.length > 0 && before.athletes.length > 0) return undefined;
  const place = places[0] ?? before.place;
  return {
    athletes: [...before.athletes, ...athletes],
    ...(place !== undefined && { place }),
    ...(plans.length > 0 && { plan: plans[0]! }),
  };
}

function writeNames({ athletes, place, plan }: Names): string {
  const names = athletes.join(' | ');
  const where = place === undefined ? '' : `at ${place}`;
  return `${[names, where].filter((part) => part !== '').join(' ')}${plan === undefined ? '' : `, ${plan}`}`;
}
