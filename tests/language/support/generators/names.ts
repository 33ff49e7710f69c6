import fc, { type Arbitrary } from 'fast-check';
import { fromDayNumber, type IsoDate, toDayNumber } from '../../../../language/src/calendar/iso-date.ts';
import type { Span, Written } from '../../../../language/src/model/source.ts';
import { LINE_WORDS } from '../../../../language/src/vocabulary/keywords.ts';

/** The place of everything that is generated: none. Comparisons leave places out. */
export const NOWHERE: Span = { line: 0, start: 0, end: 0 };

export const written = (text: Arbitrary<string>): Arbitrary<Written> =>
  text.map((text) => ({ text, span: NOWHERE }));

/** A value that may be absent. */
export const maybe = <T>(value: Arbitrary<T>): Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined });

/** Mostly nothing, else one or two. */
export const few = <T>(value: Arbitrary<T>): Arbitrary<T[]> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant<T[]>([]) }, fc.array(value, { minLength: 1, maxLength: 2 }));

/** Words that mean something within a line, which a name is therefore not made of at random. */
const RESERVED = new Set([
  ...LINE_WORDS,
  'at',
  'on',
  'by',
  'to',
  'until',
  'bw',
  'rpe',
  'rir',
  'hr',
  'drop',
  'one',
  'both',
]);

const LETTERS = [...'abcdefghijklmnopqrstuvwyzäéîñøşžабвгджияλμξπωאבגדبتجरकमタレ引体上'];

const anyWord = fc
  .string({ unit: fc.constantFrom(...LETTERS), minLength: 2, maxLength: 6 })
  .map((word) => word.normalize('NFC'))
  .filter((word) => !RESERVED.has(word) && !/^(?:warmup|test|week)/.test(word));

const capitalWord = anyWord.map((word) => word[0]!.toUpperCase() + word.slice(1));

const knownWord = fc.constantFrom(
  'Lantern',
  'T-Bar',
  "Farmer's",
  'Ferryman’s',
  'Half-Kneeling',
  'Приседание',
  'Καθίσματα',
  'سكوات',
  'स्क्वाट',
  'スクワット',
  '引体向上',
  'Zażółć',
);

const word = fc.oneof({ weight: 2, arbitrary: capitalWord }, { weight: 2, arbitrary: knownWord }, anyWord);
const words = fc.array(word, { minLength: 1, maxLength: 3 }).map((list) => list.join(' '));

/** An athlete, a plan or a muscle: words of any script. */
export const plainName = written(words);

/** A movement: `90/90 Hip Lift` and `Squat (pause)` are names too. */
export const movementName = written(
  fc
    .tuple(
      fc.constantFrom('', '', '', '90/90 ', '45° '),
      words,
      fc.constantFrom('', '', '', ' (pause)', ' 2'),
    )
    .map((parts) => parts.join('')),
);

/** A place, which may have a number: `Hall #2`. */
export const placeName = written(
  fc.tuple(words, fc.constantFrom('', '', ' #2')).map((parts) => parts.join('')),
);

export const names = fc.array(plainName, { maxLength: 3 });

const PHRASES = ['left knee', 'box 40 cm', 'Grip went first', 'reisen, später', 'в дороге', '2 cm wedge'];

const phrase = fc.oneof(
  fc.constantFrom(...PHRASES),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }).map((text) =>
    text
      .normalize('NFC')
      .replace(/[\p{C}\p{Z}\s]+/gu, ' ')
      .trim(),
  ),
);

/** Text to the end of its line, in which `#`, commas and colons are text. */
export const freeText = phrase.filter((text) => text !== '' && !text.startsWith(':'));

/** Text behind a comma, up to a comment. */
export const reason = freeText.filter((text) => !/#/.test(text));

/** Text up to a comma or a bar. */
export const shortText = reason.filter((text) => !/[,|]/.test(text) && text.toLowerCase() !== 'bw');

/** Notes are kept as they are, an empty one too. */
export const notes = fc.array(written(fc.oneof({ weight: 5, arbitrary: freeText }, fc.constant(''))), {
  maxLength: 2,
});

/** Lines that nothing recognises in any entry. */
export const strays = fc.oneof(
  { weight: 4, arbitrary: fc.constant([]) },
  fc.array(written(fc.constantFrom('felt heavy today', '12 something', '¿qué?', '-- --')), { maxLength: 2 }),
);

const FIRST_DAY = toDayNumber('2020-01-01');

export const isoDate: Arbitrary<IsoDate> = fc
  .integer({ min: 0, max: 4000 })
  .map((day) => fromDayNumber(FIRST_DAY + day));

export const writtenDate = isoDate.map((date) => ({ text: date, date, span: NOWHERE }));
