import { toDayNumber } from '../calendar/iso-date.ts';
import type { AthleteEntry, SessionEntry } from '../model/entry.ts';
import type { Problem, Span } from '../model/source.ts';
import { listModifiers } from '../plans/line-steps.ts';
import { CHECKS } from './catalogue.ts';
import { type CheckContext, joinWords, NO_PROBLEMS, problem } from './check-context.ts';
import { hasTrait, haveTrait } from './line-traits.ts';
import { findSessionBefore } from './training-history.ts';

/** Years of age below which an athlete counts as young. */
const ADULT_AGE = CHECKS['caution-youth'].numbers.years;
/** Of 10: from here on pain counts as moderate. */
const MODERATE_PAIN = CHECKS['caution-pain'].numbers.score;
/** Days without a session after which a return begins lower. */
const LAYOFF_DAYS = CHECKS['caution-layoff'].numbers.days;
/** Days that a health screening is valid. */
const SCREENING_DAYS = CHECKS['caution-max-test'].numbers.days;
export const SIGNS = /\b(?:chest|heart|faint\w*|dizz\w*|breath\w*|blackout)\b/i;

/** What these signs call for. */
export const STOP = 'stop and seek medical help on chest pain, fainting or unusual breathlessness';

/** Who is under age for the whole year, as far as the year of birth tells. Said once, where the athlete is defined. */
export function* checkYouth(entry: AthleteEntry, { today }: CheckContext): Iterable<Problem> {
  if (!entry.name || !isYoung(entry, today)) return;
  const message = `${entry.name.text} is under ${ADULT_AGE}: qualified supervision, light loads, technique first; ask a licensed practitioner before any max`;
  yield problem('caution-youth', entry.name.span, message);
}

function isYoung({ born }: AthleteEntry, date: string): boolean {
  return born !== undefined && Number(date.slice(0, 4)) - born < ADULT_AGE;
}

/** The worst pain of a session, where it is moderate or more, or where its place is a sign to stop. */
export function checkPain(entry: SessionEntry): readonly Problem[] {
  const pains = listPains(entry);
  if (pains.length === 0) return NO_PROBLEMS;
  const sign = pains.find(({ where, score }) => score > 0 && where !== undefined && SIGNS.test(where));
  if (sign) {
    const message = `Pain ${sign.score}, ${sign.where}: ${STOP}`;
    return [problem('caution-pain', sign.span, message)];
  }
  const worst = pains.reduce<Pain | undefined>(
    (most, pain) => (pain.score > (most?.score ?? 0) ? pain : most),
    undefined,
  );
  if (!worst || worst.score < MODERATE_PAIN) return NO_PROBLEMS;
  const where = worst.where ? `, ${worst.where}` : '';
  const message = `Pain ${worst.score} of 10${where}: leave out what brings it on, and ask a licensed practitioner before loading it again`;
  return [problem('caution-pain', worst.span, message)];
}

/** Those of the session, and those of its lines. */
function listPains({ pains: ofSession, blocks }: SessionEntry): readonly Pain[] {
  if (!haveTrait(blocks, 'pain')) return ofSession;
  const pains: Pain[] = [];
  for (const { lines } of blocks) {
    for (const line of lines) {
      for (const modifier of listModifiers(line)) if (modifier.kind === 'pain') pains.push(modifier);
    }
  }
  return [...ofSession, ...pains];
}

interface Pain {
  readonly score: number;
  readonly where?: string;
  readonly span: Span;
}

/** The first test of a max with a load: what to see to, and whose screening is due. */
export function checkMaxTest(
  { blocks }: SessionEntry,
  { practice, records }: CheckContext,
): readonly Problem[] {
  if (!haveTrait(blocks, 'maxTest')) return NO_PROBLEMS;
  const test = blocks.flatMap(({ lines }) => lines).find((line) => hasTrait(line, 'maxTest'))!;
  const athletes = records.flatMap(({ athlete, day, date }) => {
    const defined = practice.findAthlete(athlete);
    return defined ? [{ ...defined, day, date }] : [];
  });
  const young = athletes.filter((athlete) => isYoung(athlete.entry, athlete.date));
  const unscreened = athletes.filter(({ entry: { screened }, day }) => !isScreened(screened, day));
  const who = (some: readonly { readonly name: string }[]) =>
    joinWords(
      some.map(({ name }) => name),
      'and',
    );
  const more = [
    young.length > 0 ? `${who(young)} under ${ADULT_AGE}: qualified supervision only` : '',
    unscreened.length > 0 ? `no health screening of ${who(unscreened)} in the 12 months before` : '',
  ].filter((part) => part !== '');
  const usual = 'A max test: rested, in steps, with a spotter or safeties, stopped at any pain';
  const advice = [usual, ...more, 'in doubt ask a licensed practitioner'].join('; ');
  return [problem('caution-max-test', test.name.span, advice)];
}

function isScreened(screened: AthleteEntry['screened'], day: number): boolean {
  return screened.some(({ date }) => {
    const since = day - toDayNumber(date);
    return since >= 0 && since <= SCREENING_DAYS;
  });
}

/** The first session after more than two weeks without one. */
export function checkLayoff(entry: SessionEntry, { practice, records }: CheckContext): readonly Problem[] {
  if (entry.missed || !entry.date) return NO_PROBLEMS;
  const back = records.flatMap((record) => {
    const before = findSessionBefore(practice, record, ({ missed }) => !missed);
    const days = before ? record.day - before.day : 0;
    return days > LAYOFF_DAYS ? [{ name: practice.athleteName(record.athlete), days }] : [];
  });
  if (back.length === 0) return NO_PROBLEMS;
  const days = Math.max(...back.map((each) => each.days));
  const names = joinWords(
    back.map(({ name }) => name).filter((name) => name !== ''),
    'and',
  );
  const who = names === '' ? 'The' : `${names}: the`;
  const message = `${who} first session in ${days} days: begin with less load and fewer sets and build up; after illness or injury ask a licensed practitioner`;
  return [problem('caution-layoff', entry.date.span, message)];
}
