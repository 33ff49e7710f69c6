import type {
  AthleteEntry,
  Entry,
  ExerciseEntry,
  MovementLine,
  PlanEntry,
  SessionEntry,
} from '../model/entry.ts';
import type { Fix, Problem, Written } from '../model/source.ts';
import { listModifiers } from '../plans/line-steps.ts';
import type { Practice } from '../practice/practice.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { type CheckContext, joinWords, NO_PROBLEMS, problem } from './check-context.ts';
import type { LineCheck } from './line-checks.ts';
import { findKnownNames, type KnownNames } from './nearest-names.ts';

interface Reference {
  readonly kind: keyof typeof REFERENCES;
  readonly name: Written;
}

/** For each kind of name: what it is called, the word that defines it, where near ones are, and when it is known. */
const REFERENCES = {
  movement: {
    code: 'unknown-movement',
    noun: 'movement',
    header: 'exercise',
    names: ['movements'],
    isKnown: (practice: Practice, name: string) => practice.findMovement(name) !== undefined,
  },
  'pattern or movement': {
    code: 'unknown-movement',
    noun: 'pattern or movement',
    header: 'exercise',
    names: ['patterns', 'movements'],
    isKnown: (practice: Practice, name: string) =>
      practice.findMovement(name) !== undefined || findKnownNames(practice).patterns.has(name),
  },
  // Nobody is asked to define anything: where a workspace defines no athlete or no place, names alone will do.
  athlete: {
    code: 'unknown-athlete',
    noun: 'athlete',
    header: 'athlete',
    names: ['athletes'],
    isKnown: (practice: Practice, name: string) =>
      practice.allAthletes().length === 0 || practice.findAthlete(name) !== undefined,
  },
  place: {
    code: 'unknown-place',
    noun: 'place',
    header: 'place',
    names: ['places'],
    isKnown: (practice: Practice, name: string) =>
      practice.allPlaces().length === 0 || practice.findPlace(name) !== undefined,
  },
  plan: {
    code: 'unknown-plan',
    noun: 'plan',
    header: 'plan',
    names: ['plans'],
    isKnown: (practice: Practice, name: string) => practice.findPlan(name) !== undefined,
  },
} as const satisfies Record<string, { names: readonly (keyof KnownNames)[] } & Record<string, unknown>>;

/** Every name in an entry, but for its movements' lines, that nothing defines, with the nearest that something does. */
export function checkNames(entry: Entry, { practice }: CheckContext): Iterable<Problem> {
  const partner = entry.kind === 'session' ? findPartner(entry, practice) : undefined;
  return partner ? [partner] : checkReferences(listReferences(entry), entry, practice);
}

/** `session 2026-11-17 Ann Elm, Bo Ash`: behind the comma stands a plan, and this is an athlete. */
function findPartner({ athletes, place, plan }: SessionEntry, practice: Practice): Problem | undefined {
  const [name, last] = [plan?.name, athletes.at(-1)];
  if (!name || !last || practice.findPlan(name.text) || !practice.findAthlete(name.text)) return undefined;
  const between = { ...last.span, start: last.span.end, end: name.span.start };
  return problem(
    'unknown-plan',
    name.span,
    `${name.text} is an athlete, and behind the comma stands a plan: write | between the athletes of a group`,
    [place ? undefined : replaceBy(between, ' | ', 'Write |')],
  );
}

/** The same for the names in a line. */
export const checkLineNames: LineCheck =
  (entry, { practice }) =>
  ({ line }) =>
    checkReferences(listLineNames(line), entry, practice);

function checkReferences(
  references: readonly Reference[],
  entry: Entry,
  practice: Practice,
): Iterable<Problem> {
  const unknown = references.filter(({ kind, name }) => !REFERENCES[kind].isKnown(practice, name.text));
  return unknown.length === 0 ? NO_PROBLEMS : describeUnknown(unknown, entry, practice);
}

function* describeUnknown(
  references: readonly Reference[],
  entry: Entry,
  practice: Practice,
): Iterable<Problem> {
  for (const { kind, name } of references) {
    const { code, noun, header, names } = REFERENCES[kind];
    const known = findKnownNames(practice);
    const nearest = names.map((each) => known[each].find(name.text)).find((near) => near.length > 0) ?? [];
    const advice =
      nearest.length > 0
        ? `did you mean ${joinWords(nearest, 'or')}?`
        : `define it with "${header} ${name.text}", or correct the name`;
    yield problem(code, name.span, `No ${noun} is called ${name.text}: ${advice}`, [
      ...nearest.map((near) => replaceBy(name.span, near)),
      // A movement is defined from a template, which is offered wherever its name stands.
      header === 'exercise' ? undefined : defineBefore(entry, header, name.text),
    ]);
  }
}

function defineBefore(entry: Entry, header: string, name: string): Fix {
  const start = { line: 0, start: entry.header.start, end: entry.header.start };
  return { title: `Define ${header} ${name}`, edits: [{ span: start, newText: `${header} ${name}\n\n` }] };
}

function listReferences(entry: Entry): Reference[] {
  switch (entry.kind) {
    case 'session':
      return listHeaderNames(entry);
    case 'plan':
      return listPlanNames(entry);
    case 'exercise':
      return listAlternatives(entry);
    case 'athlete':
      return listAthleteNames(entry);
    default:
      return [];
  }
}

const as =
  (kind: Reference['kind']) =>
  (name: Written | undefined): Reference[] =>
    name === undefined ? [] : [{ kind, name }];

function listHeaderNames({ athletes, place, plan }: SessionEntry): Reference[] {
  const references = athletes.map((name): Reference => ({ kind: 'athlete', name }));
  if (place) references.push({ kind: 'place', name: place });
  if (plan) references.push({ kind: 'plan', name: plan.name });
  return references;
}

function listPlanNames({ athletes, place, follows }: PlanEntry): Reference[] {
  return [...athletes.flatMap(as('athlete')), ...as('place')(place), ...as('plan')(follows)];
}

function listAlternatives({ easier, harder }: ExerciseEntry): Reference[] {
  return [...easier, ...harder].flatMap(as('movement'));
}

function listAthleteNames({ maxes, goals, retests, avoid }: AthleteEntry): Reference[] {
  return [
    ...[...maxes, ...goals, ...retests].flatMap(({ movement }) => as('movement')(movement)),
    ...avoid.flatMap(({ what }) => as('pattern or movement')(what)),
  ];
}

/** The movement of a line, those it stands in for, and those whose max its percentages are of. */
function listLineNames(line: MovementLine): Reference[] {
  const references: Reference[] = as('movement')(line.name);
  for (const modifier of listModifiers(line)) {
    if (modifier.kind === 'instead') references.push(...as('movement')(modifier.of));
  }
  for (const { sets } of line.cells) {
    for (const { ownLoad, load } of sets) {
      if (ownLoad && load?.kind === 'percent') references.push(...as('movement')(load.of));
    }
  }
  return references;
}
