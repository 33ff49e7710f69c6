import type { ExerciseEntry } from '../model/entry.ts';
import type { Problem, Written } from '../model/source.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { findNearest } from '../text/edit-distance.ts';
import { foldName } from '../text/names.ts';
import { shorten } from '../text/shorten.ts';
import { KINDS_OF_WORK, PATTERNS, POSITIONS, TRUNK_DIRECTIONS } from '../vocabulary/movement-words.ts';
import { findMuscle, MUSCLES } from '../vocabulary/muscles.ts';
import { joinWords, problem } from './check-context.ts';

/** Words of an exercise that its line does not know: they would be grouped with nothing. */
export function* checkVocabulary(entry: ExerciseEntry): Iterable<Problem> {
  yield* checkWord(entry.pattern, 'pattern', PATTERNS);
  yield* checkWord(entry.work, 'kind of work', KINDS_OF_WORK);
  yield* checkWord(entry.position, 'position', POSITIONS);
  for (const { direction } of entry.trunk) yield* checkWord(direction, 'direction', TRUNK_DIRECTIONS);
  for (const { name } of entry.muscles) {
    if (!findMuscle(name.text)) yield report(name, 'muscle', MUSCLE_NAMES, 'quadriceps, glutes or lats');
  }
}

const MUSCLE_NAMES = MUSCLES.flatMap(({ name, also }) => [name, ...also]);

function* checkWord(written: Written | undefined, what: string, words: readonly string[]): Iterable<Problem> {
  if (!written || words.some((word) => foldName(word) === foldName(written.text))) return;
  yield report(written, what, words, joinWords(words, 'or'));
}

function report({ text, span }: Written, what: string, words: readonly string[], all: string): Problem {
  const [nearest] = findNearest(text.toLowerCase(), words, 1);
  // `push` is a horizontal or a vertical one.
  const near = nearest ? [nearest] : words.filter((word) => holdsWord(word, text));
  const meant = near.length > 0 && near.length <= 3;
  const message = meant
    ? `${shorten(text)} is no ${what}: did you mean ${joinWords(near, 'or')}?`
    : `${shorten(text)} is no ${what}: write ${all}`;
  return problem('vocabulary', span, message, meant ? near.map((word) => replaceBy(span, word)) : []);
}

function holdsWord(word: string, written: string): boolean {
  return word.split(' ').length > 1 && word.split(' ').includes(written.toLowerCase());
}
