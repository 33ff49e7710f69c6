import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitByExercise, splitChange } from '../../../language/src/measures/exercise-work.ts';
import { addWork, NO_WORK, volumeOf, type Work } from '../../../language/src/measures/work.ts';
import { printNumber } from '../../../language/src/units/number.ts';
import { expectNear } from './expect-near.ts';
import { NAME, printValue, readWorks } from './read-works.ts';
import { DEFINITIONS, sessionText } from './session-texts.ts';

const session = (date: string, lines: string): string => `session ${date} ${NAME}\n${lines}\n`;

/** `Bar Press 3 sets, 15 reps, 1 200 kg`. */
function printPart({ name, work }: { name: string; work: Work }): string {
  const lead = work.atLeast ? 'at least ' : '';
  return `${name} ${work.sets} sets, ${work.reps} reps, ${lead}${printNumber(volumeOf(work), 1)} kg`;
}

describe('work by exercise', () => {
  test.each([
    [
      'the lines of one movement together, in the order of the first',
      '  Bar Press: 3x5 @ 80 kg\n  Push-up: 10\n  circuit, 2 rounds\n    bar-press: 10 @ 20 kg',
      ['Bar Press 5 sets, 35 reps, 1 600 kg', 'Push-up 1 sets, 10 reps, 552 kg'],
    ],
    [
      'no warm-up',
      '  warmup Bar Press: 5 @ 40 kg\n  Bar Press: 5 @ 80 kg',
      ['Bar Press 1 sets, 5 reps, 400 kg'],
    ],
    ['an unknown movement too', '  Sack Heave: 5 @ 20 kg', ['Sack Heave 1 sets, 5 reps, 100 kg']],
    [
      'what is not known is at least, of its movement alone',
      '  Bar Press: 5, ? @ 80 kg\n  Hand Press: 5 @ 10 kg',
      ['Bar Press 2 sets, 5 reps, at least 400 kg', 'Hand Press 1 sets, 5 reps, 50 kg'],
    ],
    [
      'an amrap without its score is at least, all of it',
      '  amrap 5:00\n    Bar Press: 5 @ 20 kg\n    Hand Press: 5 @ 10 kg',
      ['Bar Press 1 sets, 5 reps, at least 100 kg', 'Hand Press 1 sets, 5 reps, at least 50 kg'],
    ],
  ])('%s', (_name, lines, expected) => {
    const { sessions } = readWorks(DEFINITIONS, session('2026-02-02', lines));
    expect(splitByExercise(sessions).map(printPart)).toEqual(expected);
  });

  test('over the sessions of a day or a week', () => {
    const { sessions } = readWorks(
      DEFINITIONS,
      session('2026-02-02', '  Bar Press: 5 @ 80 kg') + session('2026-02-02', '  Bar Press: 5 @ 60 kg'),
    );
    expect(splitByExercise(sessions).map(printPart)).toEqual(['Bar Press 2 sets, 10 reps, 700 kg']);
  });

  test('the parts add up to the whole', () => {
    fc.assert(
      fc.property(fc.array(sessionText, { minLength: 1, maxLength: 4 }), (texts) => {
        const { sessions } = readWorks(DEFINITIONS, texts.join(''));
        const whole = addWork([NO_WORK, ...sessions.map(({ total }) => total)]);
        const parts = addWork([NO_WORK, ...splitByExercise(sessions).map(({ work }) => work)]);
        for (const [sum, value] of Object.entries(whole)) {
          if (typeof value === 'number') expectNear(parts[sum as 'reps'], value, 1e-12);
        }
        expect(parts.atLeast).toBe(whole.atLeast);
      }),
      { numRuns: 150 },
    );
  });
});

describe('the change from one week to another by movement', () => {
  const change = (before: string, now: string): string[] => {
    const [was, is] = [before, now].map((lines) =>
      splitByExercise(readWorks(DEFINITIONS, session('2026-02-02', lines)).sessions),
    );
    return splitChange(was!, is!).map(({ name, presence, insteadOf, change: result }) =>
      [
        `${name} ${printValue(result)}`,
        presence === 'both' ? [] : presence,
        insteadOf.map((of) => `for ${of}`),
      ]
        .flat()
        .join(', '),
    );
  };

  test.each([
    [
      'largest first, with what was done in one week only',
      '  Bar Press: 3x5 @ 80 kg\n  Hand Press: 10 @ 20 kg',
      '  Bar Press: 3x5 @ 82 kg\n  Bar Pull: 5 @ 100 kg',
      ['Bar Pull 500 kg, only now', 'Hand Press -200 kg, only before', 'Bar Press 30 kg'],
    ],
    [
      'a substitute counts as what was done',
      '  Bar Press: 5 @ 80 kg',
      '  Hand Press: 5 @ 2x30 kg, instead of Bar Press',
      // Of the two in hand each rep moves one.
      ['Bar Press -400 kg, only before', 'Hand Press 150 kg, only now, for Bar Press'],
    ],
    ['reps where there are no kilograms', '  Band Row: 10', '  Band Row: 12', ['Band Row 2 reps']],
    [
      'metres, seconds and calories where there are no reps: never 0 reps to 0',
      '  Sack Drag: 40 m\n  Sack Hug: 30 s\n  Sack Mill: 10 cal',
      '  Sack Drag: 60 m\n  Sack Hug: 25 s\n  Sack Mill: 12 cal',
      ['Sack Drag 20 m', 'Sack Hug -5 s', 'Sack Mill 2 cal'],
    ],
    [
      'what was skipped both times is a known zero',
      '  Band Row: skipped',
      '  Band Row: skipped',
      ['Band Row 0 sets'],
    ],
    [
      'a lower bound now makes it one',
      '  Bar Press: 5 @ 80 kg',
      '  Bar Press: 6, ? @ 80 kg',
      ['Bar Press at least 80 kg'],
    ],
    [
      'a lower bound before leaves it open',
      '  Bar Press: 5, ? @ 80 kg',
      '  Bar Press: 6 @ 80 kg',
      ['Bar Press none, the earlier week is a lower bound'],
    ],
    ['nothing to nothing', '', '', []],
  ])('%s', (_name, before, now, expected) => {
    expect(change(before, now)).toEqual(expected);
  });

  test('adds up to the change of the whole', () => {
    fc.assert(
      fc.property(sessionText, sessionText, (before, now) => {
        const [was, is] = [before, now].map((text) => readWorks(DEFINITIONS, text).sessions);
        const changes = splitChange(splitByExercise(was!), splitByExercise(is!)).map((part) => part.change);
        fc.pre(changes.every(({ value }) => value !== undefined));
        const kilograms = changes
          .filter(({ unit }) => unit === 'kg')
          .reduce((sum, { value }) => sum + value!, 0);
        const whole = volumeOf(is![0]!.total) - volumeOf(was![0]!.total);
        expect(kilograms).toBeCloseTo(whole, 6);
      }),
      { numRuns: 100 },
    );
  });
});

describe('what changed, explained', () => {
  const part = (work: Partial<Work>, key = 'bar press') => ({
    key,
    name: 'Bar Press',
    work: { ...NO_WORK, ...work },
    insteadOf: [],
  });
  const gap = { what: 'Bar Press', why: 'a set not recorded' };

  test('in kilograms, with both weeks and what is missing in them', () => {
    const [row] = splitChange([part({ external: 400_000, omitted: [gap] })], [part({ external: 500_000 })]);
    expect(row!.change).toEqual({
      value: 100,
      unit: 'kg',
      bound: 'exact',
      method: 'change-by-movement',
      inputs: [
        { label: 'before', value: 400, unit: 'kg' },
        { label: 'now', value: 500, unit: 'kg' },
      ],
      omitted: [gap],
    });
    const later = splitChange(
      [part({ external: 400_000 })],
      [part({ external: 500_000, atLeast: true, omitted: [gap] })],
    );
    expect(later[0]!.change).toMatchObject({ bound: 'at least', omitted: [gap] });
  });

  test('kilograms before reps, what is open last', () => {
    const rows = splitChange(
      [
        part({ external: 1, atLeast: true }, 'open'),
        part({ reps: 10 }, 'reps'),
        part({ external: 1000 }, 'down'),
      ],
      [part({ external: 9_000_000 }, 'open'), part({ reps: 60 }, 'reps'), part({ external: 3000 }, 'up')],
    );
    expect(rows.map(({ key, change }) => [key, change.value, change.unit])).toEqual([
      ['up', 3, 'kg'],
      ['down', -1, 'kg'],
      ['reps', 50, 'reps'],
      ['open', undefined, 'kg'],
    ]);
  });

  test('a line that could not be read, and an amrap without its score, say which and why', () => {
    const parts = (lines: string) =>
      splitByExercise(readWorks(DEFINITIONS, session('2026-02-02', lines)).sessions).map(
        ({ work }) => work.omitted,
      );
    expect(parts('  Bar Press: 5 @ 80 kg, 3 @ @ kg')[0]).toContainEqual({
      what: 'Bar Press',
      why: 'part of the line could not be read',
    });
    expect(parts('  amrap 5:00\n    Bar Press: 5 @ 20 kg')).toEqual([
      [{ what: 'Bar Press', why: 'its rounds are not written' }],
    ]);
    expect(parts('  amrap 5:00\n    Bar Press: 5 @ 20 kg\n    done 2 rounds')).toEqual([[]]);
  });

  test('what another movement was done instead of', () => {
    const { sessions } = readWorks(
      DEFINITIONS,
      session('2026-02-02', '  Bar Press: 5 @ 80 kg, instead of Hand Press, tempo 3-1-X-0'),
    );
    expect(splitByExercise(sessions)[0]!.insteadOf).toEqual(['Hand Press']);
  });
});
