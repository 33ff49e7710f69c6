import type { Practice } from '../practice/practice.ts';
import { measureEditDistance } from '../text/edit-distance.ts';
import { foldName } from '../text/names.ts';

/** Below this likeness (0 to 1) a name is not worth offering. */
const LEAST_LIKENESS = 0.6;
/** Names that are this much less like the written one than the best are not offered beside it. */
const LARGEST_GAP = 0.1;
const MOST_OFFERED = 3;

interface Candidate {
  readonly name: string;
  readonly folded: string;
  /** Of a defined name alone: other spellings are short, and would come before it. */
  readonly words: readonly string[];
}

/**
 * Names that a mistyped or shortened one may stand for, best first: `goblin squat` by its letters, `bulgarian split`
 * by its words. Looked up once for each spelling, until a definition changes.
 */
export class NearestNames {
  private readonly candidates: readonly Candidate[];
  private readonly spellings: ReadonlySet<string>;
  private readonly known = new Map<string, readonly string[]>();

  /** Pairs of a spelling and the name that is offered for it. */
  constructor(spellings: Iterable<readonly [spelling: string, name: string]>) {
    this.candidates = [...spellings].map(([spelling, name]) => {
      const folded = foldName(spelling);
      return { name, folded, words: folded === foldName(name) ? toWords(folded) : [] };
    });
    this.spellings = new Set(this.candidates.map(({ folded }) => folded));
  }

  has(written: string): boolean {
    return this.spellings.has(foldName(written));
  }

  find(written: string): readonly string[] {
    const folded = foldName(written);
    const known = this.known.get(folded);
    if (known) return known;
    const found = this.rank(folded);
    this.known.set(folded, found);
    return found;
  }

  private rank(folded: string): string[] {
    const words = toWords(folded);
    const best = new Map<string, number>();
    for (const { name, folded: other, words: otherWords } of this.candidates) {
      const likeness = Math.max(compareLetters(folded, other), compareWords(words, otherWords));
      if (likeness >= LEAST_LIKENESS && likeness > (best.get(name) ?? 0)) best.set(name, likeness);
    }
    const most = Math.max(...best.values());
    // Of equally near ones the first defined comes first: a workspace's own, then the library's most usual.
    return [...best]
      .filter(([, likeness]) => likeness >= most - LARGEST_GAP)
      .sort(([, a], [, b]) => b - a)
      .slice(0, MOST_OFFERED)
      .map(([name]) => name);
  }
}

/** Where letters differ, up to a quarter of the name and three in all. */
function compareLetters(a: string, b: string): number {
  const limit = Math.min(3, Math.max(1, Math.floor(Math.min(a.length, b.length) / 4)));
  const distance = measureEditDistance(a, b, limit);
  return distance > limit ? 0 : 1 - distance / Math.max(a.length, b.length);
}

/** A word alone does not say which of the names that hold it: the most usual comes first, not the shortest. */
const WORD_OF_NAME = 0.75;

/** Letters in shared words, twice, over all letters (Dice's measure); part of a name is never less than worth offering. */
function compareWords(a: readonly string[], b: readonly string[]): number {
  const left = [...b];
  let shared = 0;
  for (const word of a) {
    const at = left.findIndex((other) => isSameWord(word, other));
    if (at < 0) continue;
    shared += word.length;
    left.splice(at, 1);
  }
  const likeness = (2 * shared) / (countLetters(a) + countLetters(b));
  if (shared < countLetters(a)) return likeness;
  return a.length === 1 && b.length > 1 ? WORD_OF_NAME : Math.max(LEAST_LIKENESS, likeness);
}

function countLetters(words: readonly string[]): number {
  return words.reduce((sum, word) => sum + word.length, 0);
}

function isSameWord(written: string, other: string): boolean {
  if (written === other) return true;
  if (Math.min(written.length, other.length) < 4) return false;
  return other.startsWith(written) || measureEditDistance(written, other, 1) <= 1;
}

/** Words without a plural's ending, so that `squats` is `squat`. */
function toWords(folded: string): string[] {
  return folded.split(' ').map((word) => (word.length > 3 ? word.replace(/(?<!s)s$/, '') : word));
}

/** What kinds of name there are to look for. */
export interface KnownNames {
  readonly movements: NearestNames;
  readonly patterns: NearestNames;
  readonly athletes: NearestNames;
  readonly places: NearestNames;
  readonly plans: NearestNames;
}

const knownByPractice = new WeakMap<Practice, { version: number; names: KnownNames }>();

/** The names of a practice, kept until a definition changes. */
export function findKnownNames(practice: Practice): KnownNames {
  const known = knownByPractice.get(practice);
  if (known?.version === practice.definitionsVersion) return known.names;
  const names = collectNames(practice);
  knownByPractice.set(practice, { version: practice.definitionsVersion, names });
  return names;
}

function collectNames(practice: Practice): KnownNames {
  const movements = [...practice.movementSpellings()].map(
    (spelling) => [spelling, practice.findMovement(spelling)!.name] as const,
  );
  const patterns = new Set([...practice.allMovements()].flatMap(({ entry }) => entry.pattern?.text ?? []));
  const spell = (names: Iterable<string>) =>
    new NearestNames([...names].map((name) => [name, name] as const));
  const spellDefined = (defined: readonly { readonly name: string }[]) =>
    spell(defined.map(({ name }) => name));
  return {
    movements: new NearestNames(movements),
    patterns: spell(patterns),
    athletes: spellDefined(practice.allAthletes()),
    places: spellDefined(practice.allPlaces()),
    plans: spellDefined(practice.allPlans()),
  };
}
