import type {
  AthleteEntry,
  Entry,
  ExerciseEntry,
  MovementLine,
  PlanEntry,
  SessionEntry,
} from '../model/entry.ts';
import type { Fix, Problem, Written } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { type CheckContext, joinWords, listLines, problem } from './check-context.ts';
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

/** Every name in an entry that nothing defines, with the nearest ones that something does. */
export function* checkNames(entry: Entry, { practice }: CheckContext): Iterable<Problem> {
  for (const { kind, name } of listReferences(entry)) {
    const { code, noun, header, names, isKnown } = REFERENCES[kind];
    if (isKnown(practice, name.text)) continue;
    const known = findKnownNames(practice);
    const nearest = names.map((each) => known[each].find(name.text)).find((near) => near.length > 0) ?? [];
    const advice =
      nearest.length > 0
        ? `did you mean ${joinWords(nearest, 'or')}?`
        : `define it with "${header} ${name.text}", or correct the name`;
    yield problem(code, name.span, `No ${noun} is called ${name.text}: ${advice}`, [
      ...nearest.map((near) => replaceBy(name.span, near)),
      defineBefore(entry, header, name.text),
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
      return [...listHeaderNames(entry), ...listLines(entry).flatMap(({ line }) => listLineNames(line))];
    case 'plan':
      return [...listPlanNames(entry), ...listLines(entry).flatMap(({ line }) => listLineNames(line))];
    case 'unknown':
      return listLines(entry).flatMap(({ line }) => listLineNames(line));
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
  return [...athletes.flatMap(as('athlete')), ...as('place')(place), ...as('plan')(plan?.name)];
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
  const modifiers = [...line.modifiers, ...line.cells.flatMap((cell) => cell.modifiers)];
  const loads = line.cells.flatMap((cell) =>
    cell.sets.flatMap((set) => (set.ownLoad && set.load ? [set.load] : [])),
  );
  return [
    ...as('movement')(line.name),
    ...modifiers.flatMap((modifier) => (modifier.kind === 'instead' ? as('movement')(modifier.of) : [])),
    ...loads.flatMap((load) => (load.kind === 'percent' ? as('movement')(load.of) : [])),
  ];
}
