import type { IsoDate } from '../calendar/iso-date.ts';
import { printWrittenMass } from '../printing/print-load.ts';
import { foldName } from '../text/names.ts';
import { EQUIPMENT } from '../vocabulary/equipment.ts';
import { KINDS_OF_WORK, PATTERNS, POSITIONS, TRUNK_DIRECTIONS } from '../vocabulary/movement-words.ts';
import { MUSCLES } from '../vocabulary/muscles.ts';
import { listComingDates, listMondays, listPastDates, offerDate } from './dates.ts';
import type { Offer } from './item.ts';
import { listMovements } from './movement-names.ts';
import { listPlaces } from './session-headers.ts';
import type { Spot } from './spot.ts';

/** What stands behind a property's word, when no more of it than `words` is written. */
type ValueList = (spot: Spot, words: readonly string[]) => readonly Offer[];

const values =
  (...labels: readonly string[]): ValueList =>
  (_spot, words) =>
    words.length === 0 ? labels.map((label) => ({ label, kind: 'value' })) : [];

const examples =
  (...labels: readonly string[]): ValueList =>
  (_spot, words) =>
    words.length === 0 ? labels.map((label) => ({ label, kind: 'value', detail: 'an example' })) : [];

/** Names between commas: each once. */
const names =
  (list: (spot: Spot) => readonly Offer[]): ValueList =>
  (spot, words) => {
    const due = words.length === 0 || words.at(-1) === ',';
    const written = spot.tokens
      .filter(({ kind }) => kind === 'NAME')
      .map(({ start, end }) => foldName(spot.line.slice(start, end)));
    return due ? list(spot).filter(({ label }) => !written.includes(foldName(label))) : [];
  };

const movements = (spot: Spot): Offer[] => listMovements(spot).map(({ detail: _detail, ...offer }) => offer);
const athletes = ({ practice }: Spot): Offer[] =>
  practice.allAthletes().map(({ name }) => ({ label: name, kind: 'athlete' }));
const plans = ({ practice }: Spot): Offer[] =>
  practice.allPlans().map(({ name }) => ({ label: name, kind: 'plan' }));
const equipment = (): Offer[] => EQUIPMENT.map(({ name, also }) => ({ label: name, kind: 'value', also }));
const stacked = (): Offer[] =>
  EQUIPMENT.filter(({ implement }) => implement === 'stack').map(({ name, also }) => ({
    label: name,
    kind: 'value',
    also,
    insert: `${name} `,
  }));
const word = (label: string): Offer => ({ label, kind: 'keyword', insert: `${label} `, continues: true });

/** A value, then a word and a day: `66 kg on 2026-02-22`. */
const dated =
  (first: ValueList, on: string, dates: (today: IsoDate) => readonly Offer[]): ValueList =>
  (spot, words) => {
    const last = words.at(-1);
    if (last === on) return dates(spot.options.today);
    if (words.length === 0 || words.includes(on)) return first(spot, words);
    return ['kg', 'lb', 'bw', 'NUMBER', 'TIME', 's', 'm', 'NAME'].includes(last ?? '') ? [word(on)] : [];
  };

/** A movement, then behind a colon its value. */
const ofMovement: ValueList = (spot, words) =>
  words.length === 0
    ? movements(spot).map((offer) => ({
        ...offer,
        insert: /:/.test(spot.line.slice(spot.column)) ? offer.label : `${offer.label}: `,
      }))
    : [];

const away: ValueList = ({ options: { today } }, words) => {
  if (words.length === 0) return [offerDate(today, today), ...listComingDates(today)];
  if (words.at(-1) === 'to') return listComingDates(today);
  return words.length === 1 && words[0] === 'DATE' ? [word('to')] : [];
};

const avoid: ValueList = (spot, words) => {
  if (words.length === 0)
    return [
      ...PATTERNS.map((label): Offer => ({ label, kind: 'value', detail: 'a pattern' })),
      ...movements(spot),
    ];
  if (words.at(-1) === 'until') return listComingDates(spot.options.today);
  return words.length === 1 && words[0] === 'NAME' ? [word('until')] : [];
};

const directions = names(() => TRUNK_DIRECTIONS.map((label) => ({ label, kind: 'value' })));

const muscleNames = names(() => MUSCLES.map(({ name, also }) => ({ label: name, kind: 'value', also })));

const trunk: ValueList = (spot, words) => {
  if (words.length === 0) return [word('resists'), word('moves')];
  return words.length === 1 || words.at(-1) === ',' ? directions(spot, [',']) : [];
};

/** Behind a muscle its share. */
const muscles: ValueList = (spot, words) =>
  words.at(-1) === 'NAME' && !spot.typing
    ? [{ label: '1/2', kind: 'value', detail: 'trained indirectly' }]
    : muscleNames(spot, words);

/** A movement is neither easier nor harder than itself. */
const otherMovements = (spot: Spot): Offer[] => {
  const entry = spot.placed?.entry;
  const own = entry?.kind === 'exercise' && entry.name ? foldName(entry.name.text) : undefined;
  return movements(spot).filter(({ label }) => foldName(label) !== own);
};

const each: ValueList = (_spot, words) => {
  if (words.length === 0) return [word('rep moves')];
  if (words.length === 1) return [word('moves')];
  return words.length === 2 ? ['both', 'one'].map((label) => ({ label, kind: 'value' })) : [];
};

const deload: ValueList = ({ placed }, words) => {
  const weeks = placed?.entry.kind === 'plan' ? placed.entry.weeks?.count : undefined;
  const last = words.at(-1);
  if (words.length === 0) return [word('week')];
  if (last === 'week') {
    const numbers = Array.from({ length: weeks ?? 0 }, (_, index) => String(index + 1)).reverse();
    return numbers.map((label) => ({ label, kind: 'value' }));
  }
  if (last === ',')
    return ['sets 50%', 'load 90%']
      .filter((label) => !words.includes(label.slice(0, 4)))
      .map((label) => ({ label, kind: 'value' }));
  return [];
};

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

const days: ValueList = ({ line, tokens }, words) => {
  const due = words.length === 0 || words.at(-1) === ',';
  if (!due || words.includes('alternate')) return [];
  const written = tokens.map(({ start, end }) => line.slice(start, end));
  const free = WEEKDAYS.filter((day) => !written.includes(day)).map(
    (label): Offer => ({ label, kind: 'value' }),
  );
  return words.length === 0
    ? [...free, { label: 'alternate, 3 a week', kind: 'value', detail: 'the days of the plan in turn' }]
    : free;
};

const nextDay: ValueList = ({ placed, lineNumber }, words) => {
  if (words.length > 0 || placed?.entry.kind !== 'plan') return [];
  const others = placed.entry.days.filter(({ span }) => placed.line + span.line !== lineNumber);
  return [{ label: String(Math.max(0, ...others.map(({ number }) => number)) + 1), kind: 'value' }];
};

const training: ValueList = (_spot, words) => {
  if (words.length === 0) return [word('max')];
  return words.length === 1 && words[0] === 'max'
    ? ['90%', '85%', '95%'].map((label) => ({ label, kind: 'value' }))
    : [];
};

const lastWeighIn: ValueList = ({ placed }, words) => {
  if (words.length > 0 || placed?.entry.kind !== 'athlete') return [];
  const last = placed.entry.weighIns.at(-1);
  return last ? [{ label: printWrittenMass(last.mass), kind: 'value', detail: `as on ${last.date}` }] : [];
};

const exercise: Readonly<Record<string, ValueList>> = {
  pattern: values(...PATTERNS),
  work: values(...KINDS_OF_WORK),
  position: values(...POSITIONS),
  trunk,
  muscles,
  needs: names(equipment),
  each,
  counts: values('contacts'),
  easier: names(otherMovements),
  harder: names(otherMovements),
};

/** A whole range may say how its weights stand there. */
const dumbbells: ValueList = (spot, words) => {
  const range = words.slice(words.lastIndexOf(',') + 1);
  const isWhole = range.includes('by') && ['kg', 'lb'].includes(range.at(-1) ?? '');
  return isWhole ? soldAs(spot, []) : dumbbellRanges(spot, words);
};
const soldAs = values('pairs', 'singles');
const dumbbellRanges = examples('4-30 by 2 kg pairs', '10-50 by 5 lb pairs');

const place: Readonly<Record<string, ValueList>> = {
  bars: examples('20 kg', '20 kg, 15 kg', '45 lb'),
  plates: examples('2x20, 2x10, 4x5, 4x2.5, 2x1.25 kg', '4x45, 2x25, 4x10, 4x5, 2x2.5 lb'),
  collars: examples('2.5 kg'),
  dumbbells,
  kettlebells: examples('8, 12, 16, 20, 24 kg'),
  stacks: (_spot, words) => (words.length === 0 ? stacked() : []),
  has: names(equipment),
};

const athlete: Readonly<Record<string, ValueList>> = {
  sex: values('female', 'male'),
  units: values('kg', 'lb'),
  bodyweight: dated(lastWeighIn, 'on', listPastDates),
  max: dated(ofMovement, 'on', listPastDates),
  goal: dated(ofMovement, 'by', listComingDates),
  retest: dated(ofMovement, 'on', listPastDates),
  avoid,
  away,
  screened: ({ options: { today } }, words) => (words.length === 0 ? listPastDates(today) : []),
};

const plan: Readonly<Record<string, ValueList>> = {
  for: names(athletes),
  at: (spot, words) => (words.length === 0 ? listPlaces(spot.practice) : []),
  starts: ({ options: { today } }, words) => (words.length === 0 ? listMondays(today) : []),
  follows: (spot, words) =>
    words.length === 0 ? plans(spot).filter(({ label }) => label !== nameOfEntry(spot)) : [],
  weeks: values('4', '6', '8', '12'),
  deload,
  days,
  day: nextDay,
  training,
};

function nameOfEntry({ placed }: Spot): string | undefined {
  return placed?.entry.kind === 'plan' ? placed.entry.name?.text : undefined;
}

/** Values of the properties of definitions and plans, by the kind of entry and the property's word. */
export const DEFINITION_VALUES: Readonly<Record<string, Readonly<Record<string, ValueList>>>> = {
  exercise,
  place,
  athlete,
  plan,
};
