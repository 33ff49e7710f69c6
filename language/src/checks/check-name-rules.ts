import type { Entry } from '../model/entry.ts';
import type { Problem, Written } from '../model/source.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { shorten } from '../text/shorten.ts';
import { NAME_PREFIXES, RESERVED_NAMES } from '../vocabulary/keywords.ts';
import { problem } from './check-context.ts';
import type { Definition } from './check-definitions.ts';

/** Names that could not be told from the notation where they are used. */
export function* checkNameRules(entry: Definition): Iterable<Problem> {
  if (!entry.name) return;
  for (const name of entry.kind === 'exercise' ? [entry.name, ...entry.also] : [entry.name]) {
    const broken = findBrokenRule(name, entry.kind);
    if (broken) yield broken;
  }
}

export function findBrokenRule(name: Written, kind: Entry['kind']): Problem | undefined {
  const { text, span } = name;
  const report = (message: string, fixes: Problem['fixes'] = []): Problem =>
    problem('name-rules', span, message, fixes);
  const sign = /[,:@|]/.exec(text)?.[0];
  if (sign !== undefined) {
    const clean = text
      .replace(/[,:@|]/g, ' ')
      .replace(/\s+/g, ' ')
      .trim();
    return report(`A name has no "${sign}" in it`, clean === '' ? [] : [replaceBy(span, clean)]);
  }
  const words = text.toLowerCase().split(/\s+/);
  if ((text.match(/\p{L}/gu)?.length ?? 0) < 2) return report('A name has at least two letters');
  if (RESERVED_NAMES.has(text.toLowerCase())) {
    return report(`${text} alone is a word of the notation: a name says more, such as ${text} Walk`);
  }
  if (words.length > 1 && NAME_PREFIXES.has(words[0]!)) {
    return report(
      `A name does not begin with ${words[0]}: before a movement that word says what its sets are for`,
    );
  }
  if (kind === 'athlete' && words.includes('at')) {
    return report(`An athlete's name does not hold the word at: in a session, a place follows it`);
  }
  const between = kind === 'athlete' ? /[&+]|(?<=\s)and(?=\s)/i.exec(text)?.[0] : undefined;
  if (between !== undefined) {
    return report(
      `An athlete's name does not hold ${between}: in a session it would stand between two athletes`,
    );
  }
  return text.length > LONGEST
    ? report(`A name has at most ${LONGEST} letters: ${shorten(text)}`)
    : undefined;
}

/** Longer than any name, and short enough for a list. */
const LONGEST = 80;
