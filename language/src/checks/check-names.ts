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
import { foldName } from '../text/names.ts';
import { findAddedWord } from './added-words.ts';
import { type CheckContext, joinWords, NO_PROBLEMS, problem } from './check-context.ts';
import { findJoinedNames } from './joined-names.ts';
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
export function checkNames(entry: Entry, context: CheckContext): Iterable<Problem> {
  const unknown = findUnknown(listReferences(entry), context.practice);
  if (unknown.length === 0) return NO_PROBLEMS;
  const joined = entry.kind === 'session' ? findJoinedNames(entry, context) : undefined;
  return joined ? [joined] : describeUnknown(unknown, entry, context.practice);
}

/** The same for the names in a line. */
export const checkLineNames: LineCheck =
  (entry, { practice }) =>
  ({ line }) => {
    const unknown = findUnknown(listLineNames(line), practice);
    return unknown.length === 0 ? NO_PROBLEMS : describeLineNames(unknown, line, entry, practice);
  };

function findUnknown(references: readonly Reference[], practice: Practice): readonly Reference[] {
  return references.filter(({ kind, name }) => !REFERENCES[kind].isKnown(practice, name.text));
}

function* describeLineNames(
  unknown: readonly Reference[],
  line: MovementLine,
  entry: Entry,
  practice: Practice,
): Iterable<Problem> {
  const isFirst = unknown[0]!.name === line.name && !isTold(entry, line.name);
  const added = isFirst ? findAddedWord(line, practice) : undefined;
  if (added) yield added;
  yield* describeUnknown(added ? unknown.slice(1) : unknown, entry, practice);
}

/** Whether reading said of all that holds a name that it is something else: until it is corrected the name waits. */
function isTold({ problems }: Entry, { span: name }: Written): boolean {
  return problems.some(
    ({ span, severity }) =>
      severity !== 'info' && span.line === name.line && span.start <= name.start && span.end >= name.end,
  );
}

function* describeUnknown(
  references: readonly Reference[],
  entry: Entry,
  practice: Practice,
): Iterable<Problem> {
  for (const { kind, name } of references) {
    if (isTold(entry, name)) continue;
    const { code, noun, header, names } = REFERENCES[kind];
    const known = findKnownNames(practice);
    const nearest = names.map((each) => known[each].find(name.text)).find((near) => near.length > 0) ?? [];
    const advice =
      nearest.length > 0
        ? `did you mean ${joinWords(nearest, 'or')}?`
        : `define it with "${header} ${name.text}", or correct the name`;
    yield problem(code, name.span, `No ${noun} is called ${name.text}: ${advice}`, [
      ...nearest.map((near) => (losesWords(kind, name.text, near) ? undefined : replaceBy(name.span, near))),
      // A movement is defined from a template, which is offered wherever its name stands.
      header === 'exercise' ? undefined : defineBefore(entry, header, name.text),
    ]);
  }
}

/** What is not part of a name and would be lost with it: a load, a week, a purpose. */
const MEANING =
  /\d\s*(?:kgs?|lbs?|%|s|secs?|min|m|km)(?![\p{L}\d])|[()]|(?<!\p{L})(?:warm[\s-]*up|w\/?u|test|week|wk)(?!\p{L})/iu;

/** Whether the nearest name leaves out what may be another name or more than one. */
function losesWords(kind: Reference['kind'], written: string, near: string): boolean {
  if (REFERENCES[kind].header === 'exercise') return MEANING.test(written) && !MEANING.test(near);
  return foldName(written).split(' ').length > foldName(near).split(' ').length;
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
