import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { computePatternRatios } from '../../../language/src/measures/balance.ts';
import { splitByExercise } from '../../../language/src/measures/exercise-work.ts';
import { computeIntensity, tallyIntensity } from '../../../language/src/measures/intensity.ts';
import { countSetsByMuscle, countSetsByPattern } from '../../../language/src/measures/muscle-sets.ts';
import { findBests, findRecordsOf } from '../../../language/src/measures/records.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { compareSides } from '../../../language/src/measures/side-balance.ts';
import { computeWeekWork } from '../../../language/src/measures/week-work.ts';
import { volumeOf, type Work } from '../../../language/src/measures/work.ts';
import { NAME } from './read-works.ts';
import {
  type BlockParts,
  block,
  blocks,
  DEFINITIONS,
  line,
  printSession,
  type SetParts,
} from './session-texts.ts';

/** Runs of each property; each reads and measures at least two logs. */
const RUNS = { numRuns: 150 };

/** Reads files of a log, `[name, text]`. */
function readFiles(files: readonly (readonly [string, string])[]): SessionWorks {
  const practice = createPractice();
  practice.setFile('definitions.plim', DEFINITIONS);
  for (const [name, text] of files) practice.setFile(name, text);
  return new SessionWorks(practice);
}

const readOne = (text: string): SessionWorks => readFiles([['log.plim', text]]);

type Totals = ReadonlyMap<string, number>;

function* listSums(of: string, work: Work): Iterable<[string, number]> {
  for (const [sum, value] of Object.entries(work)) {
    if (typeof value === 'number') yield [`${of}: ${sum}`, value];
    if (typeof value === 'boolean') yield [`${of}: ${sum}`, Number(value)];
  }
}

/** Every sum of an athlete's whole log: of all, by exercise, by muscle and by pattern, and the ratios. */
function measureSums(works: SessionWorks): Totals {
  const sessions = works.practice.sessionsOf(NAME).map((record) => works.of(record));
  const totals = new Map<string, number>();
  for (const { total, record } of sessions) {
    for (const [name, value] of listSums(record.date, total)) totals.set(name, value);
  }
  for (const { key, work } of splitByExercise(sessions)) {
    for (const [name, value] of listSums(key, work)) totals.set(name, value);
  }
  for (const { name, result } of countSetsByMuscle(sessions).counts)
    totals.set(`muscle ${name}`, result.value!);
  for (const { name, result } of countSetsByPattern(sessions).counts)
    totals.set(`pattern ${name}`, result.value!);
  for (const { name, result } of computePatternRatios(sessions)) totals.set(name, result.value ?? -1);
  return totals;
}

/** What is found rather than summed: estimates, intensities, bests and records. */
function measureFinds(works: SessionWorks): Totals {
  const sessions = works.practice.sessionsOf(NAME).map((record) => works.of(record));
  const found = new Map<string, number>();
  for (const work of sessions) {
    const { date } = work.record;
    for (const { series, result } of works.maxesOf(work))
      found.set(`${date} max ${series.key}`, result.value!);
    const { average, relative, zones } = computeIntensity(tallyIntensity(works, work));
    for (const [index, result] of [average, relative, ...zones].entries()) {
      found.set(`${date} intensity ${index}`, result.value ?? -1);
    }
    const records = findRecordsOf(works, work);
    for (const { series, reps, result } of records.sets) {
      found.set(`${date} record ${series.key} ${reps}`, result.value!);
    }
    found.set(`${date} records of estimates`, records.maxes.length);
  }
  for (const { series, byReps } of findBests(works, NAME)) {
    byReps.forEach((best, reps) => {
      if (best) found.set(`best ${series.key} ${reps}`, best.result.value!);
    });
  }
  return found;
}

/** Sums in doubles may differ in the last digits with their order. */
function expectSame(actual: Totals, expected: Totals, tolerance = 1e-9): void {
  expect([...actual.keys()].sort()).toEqual([...expected.keys()].sort());
  for (const [name, value] of expected) {
    const off = Math.abs(actual.get(name)! - value);
    expect(off, `${name}: ${actual.get(name)} against ${value}`).toBeLessThanOrEqual(
      tolerance * Math.max(1, Math.abs(value)),
    );
  }
}

const mapSets = (parts: readonly BlockParts[], map: (set: SetParts) => readonly SetParts[]): BlockParts[] =>
  parts.map(({ header, lines }) => ({
    header,
    lines: lines.map(({ name, sets }) => ({ name, sets: sets.flatMap(map) })),
  }));

const DATES = ['2026-02-02', '2026-02-04', '2026-02-09', '2026-02-16'];

/** Up to four sessions on days of their own. */
const log = fc
  .array(blocks, { minLength: 1, maxLength: 4 })
  .map((sessions) => sessions.map((parts, index) => printSession(parts, 'kg', DATES[index])));

describe('no total changes', () => {
  test('when counted sets are spelled out, a rating repeated with each', () => {
    fc.assert(
      fc.property(blocks, (parts) => {
        const spelled = mapSets(parts, (set) =>
          Array.from({ length: set.count }, () => ({ ...set, count: 1 })),
        );
        const [a, b] = [parts, spelled].map((each) => readOne(printSession(each)));
        expectSame(measureSums(b!), measureSums(a!));
        expectSame(measureFinds(b!), measureFinds(a!));
      }),
      RUNS,
    );
  });

  test('when unrated sets share the load written behind the last', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 15 }), (count, reps) => {
        const session = (sets: string): string =>
          `session 2026-02-02 ${NAME}\n  Bar Press: ${sets} @ 82.5 kg\n`;
        const [a, b] = [`${count}x${reps}`, Array.from({ length: count }, () => reps).join(', ')].map(
          (sets) => readOne(session(sets)),
        );
        expectSame(measureSums(b!), measureSums(a!));
        expectSame(measureFinds(b!), measureFinds(a!));
      }),
      { numRuns: 50 },
    );
  });

  test('when all loads are written in pounds: the whole grams are the same', () => {
    fc.assert(
      fc.property(blocks, (parts) => {
        const [a, b] = (['kg', 'lb'] as const).map((unit) => readOne(printSession(parts, unit)));
        expectSame(measureSums(b!), measureSums(a!));
        expectSame(measureFinds(b!), measureFinds(a!));
      }),
      RUNS,
    );
  });

  test('when exercises and blocks stand in another order', () => {
    fc.assert(
      fc.property(blocks, fc.infiniteStream(fc.nat()), (parts, keys) => {
        const shuffle = <T>(list: readonly T[]): T[] =>
          list
            .map((item) => ({ item, key: keys.next().value as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ item }) => item);
        const shuffled = shuffle(parts).map(({ header, lines }) => ({ header, lines: shuffle(lines) }));
        const [a, b] = [parts, shuffled].map((each) => readOne(printSession(each)));
        expectSame(measureSums(b!), measureSums(a!));
        expectSame(measureFinds(b!), measureFinds(a!));
      }),
      RUNS,
    );
  });

  test('when sessions move to another file, or to another place in it', () => {
    fc.assert(
      fc.property(log, fc.integer({ min: 0, max: 4 }), (sessions, at) => {
        const together = readOne(sessions.join(''));
        const apart = readFiles([
          ['z.plim', sessions.slice(0, at).join('')],
          ['a.plim', sessions.slice(at).reverse().join('\n')],
        ]);
        expectSame(measureSums(apart), measureSums(together));
        expectSame(measureFinds(apart), measureFinds(together));
      }),
      RUNS,
    );
  });

  test('when a session moves there while the files are open', () => {
    fc.assert(
      fc.property(log, (sessions) => {
        const works = readOne(sessions.join(''));
        const before = [measureSums(works), measureFinds(works)];
        works.practice.setFile('log.plim', `# a line above\n\n${sessions.slice(1).join('')}`);
        works.practice.setFile('other.plim', sessions[0]!);
        expectSame(measureSums(works), before[0]!);
        expectSame(measureFinds(works), before[1]!);
      }),
      RUNS,
    );
  });
});

/** Sums of the first session. */
function totalOf(parts: readonly BlockParts[]): Work {
  const works = readOne(printSession(parts));
  return works.of(works.practice.sessionsOf(NAME)[0]!).total;
}

describe('adding work never lowers a sum', () => {
  const expectNoLower = (before: Work, after: Work): void => {
    for (const [sum, value] of Object.entries(before)) {
      if (typeof value === 'number') expect(after[sum as 'reps'], sum).toBeGreaterThanOrEqual(value - 1e-6);
    }
    expect(volumeOf(after)).toBeGreaterThanOrEqual(volumeOf(before) - 1e-9);
  };

  test('a set more', () => {
    fc.assert(
      fc.property(blocks, line, fc.nat(), fc.nat(), (parts, { name, sets }, at, place) => {
        // In a round block another set is another round's, so only straight sets are added to.
        const straight = { header: 'straight', lines: [{ name, sets }] };
        const extra = sets[at % sets.length]!;
        const cut = place % (sets.length + 1);
        const longer = {
          ...straight,
          lines: [{ name, sets: [...sets.slice(0, cut), extra, ...sets.slice(cut)] }],
        };
        const [before, after] = [straight, longer].map((each) => totalOf([...parts, each]));
        expectNoLower(before!, after!);
        if (extra.amount !== '?') expect(after!.sets).toBe(before!.sets + extra.count);
      }),
      RUNS,
    );
  });

  test('a line or a block more', () => {
    fc.assert(
      fc.property(blocks, block, (parts, more) => {
        const [first, ...rest] = parts;
        const lines = [
          ...first!.lines,
          { ...more.lines[0]!, sets: [{ ...more.lines[0]!.sets[0]!, count: 1 }] },
        ];
        expectNoLower(totalOf(parts), totalOf([{ ...first!, lines }, ...rest]));
        expectNoLower(totalOf(parts), totalOf([...parts, more]));
      }),
      RUNS,
    );
  });
});

describe('what is done on each side is done twice', () => {
  const bothSides = (set: SetParts, write: (value: number, unit: string) => string): SetParts[] => {
    const found = /^(\d+)( s| m)?\/side$/.exec(set.amount);
    return [found ? { ...set, amount: write(Number(found[1]), found[2] ?? '') } : set];
  };

  test.each([
    ['in every sum, as twice the amount', (value: number, unit: string) => `${value * 2}${unit}`],
    ['and as left and right', (value: number, unit: string) => `${value}${unit} left ${value}${unit} right`],
  ])('%s', (_name, write) => {
    fc.assert(
      fc.property(blocks, (parts) => {
        const [a, b] = [parts, mapSets(parts, (set) => bothSides(set, write))].map((each) =>
          readOne(printSession(each)),
        );
        expectSame(measureSums(b!), measureSums(a!));
      }),
      RUNS,
    );
  });

  test('and equal on both', () => {
    fc.assert(
      fc.property(blocks, (parts) => {
        const even = mapSets(parts, (set) =>
          /left/.test(set.amount) ? [{ ...set, amount: '5/side' }] : [set],
        );
        const works = readOne(printSession(even));
        expect(compareSides(works.practice.sessionsOf(NAME).map((record) => works.of(record)))).toEqual([]);
      }),
      RUNS,
    );
  });
});

test('a week is the sum of its sessions, in whatever files', () => {
  fc.assert(
    fc.property(fc.array(blocks, { minLength: 1, maxLength: 4 }), (sessions) => {
      const texts = sessions.map((parts) => printSession(parts));
      const works = readFiles(texts.map((text, index) => [`${index}.plim`, text]));
      const { total } = computeWeekWork(works.practice, works, NAME, works.practice.sessionsOf(NAME)[0]!.day);
      const parts = works.practice.sessionsOf(NAME).map((record) => works.of(record).total);
      expect(total.external).toBe(parts.reduce((sum, part) => sum + part.external, 0));
      expect(total.sets).toBe(parts.reduce((sum, part) => sum + part.sets, 0));
    }),
    RUNS,
  );
});
