import { expect, test } from 'vitest';
import { addDays, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { describeResult } from '../../../language/src/measures/explain.ts';
import { METHODS, type MethodId } from '../../../language/src/measures/methods.ts';
import { ONE_REP_MAX_FORMULA_IDS } from '../../../language/src/measures/one-rep-max.ts';
import type { Result } from '../../../language/src/measures/result.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import type { Practice } from '../../../language/src/practice/practice.ts';
import { describeRevision } from '../../../language/src/revisions/describe-revision.ts';
import { describeLenses } from '../../../language/src/summaries/file-lenses.ts';
import type { LensOptions } from '../../../language/src/summaries/lens.ts';
import { describeMovementMax } from '../../../language/src/summaries/movement-max.ts';
import { makeReport } from '../../../language/src/summaries/report.ts';
import { SAMPLES } from '../support/samples.ts';

const TODAY = '2026-11-24';
const WRITTEN = SAMPLES.filter(({ name }) => name.startsWith('samples/'));

/** What the samples do not hold: repeats by five athletes, the two tested machine lifts, jumps, held, failed and other work. */
const PEOPLE = ['Ottoline Quern', 'Fabio Wisket', 'Ursel Thrapp', 'Nils Obergarn', 'Pia Luddock'];
const LATEST = '2026-11-23';
const MORE = [
  ...PEOPLE.map(
    (name, at) =>
      `athlete ${name}\n  max Front Squat: ${90 + at} kg on 2026-01-05\n  retest Back Squat: ${80 + 5 * at} kg, ${82 + 4 * at} kg on 2026-06-01\n`,
  ),
  ...PEOPLE.map(
    (name, at) =>
      `session ${LATEST} ${name}\n  Back Squat: 3 @ ${80 + 5 * at} kg rpe 9\n  Front Squat: 5 @ 60 kg\n`,
  ),
  `session 2026-11-16 Ottoline Quern
  Back Squat: 3 @ 70 kg rpe 9
session 2026-11-24 Ottoline Quern
  Run: 2 km
  Goblet Squat: 8 @ 20 kg, tempo 3-1-X-0
  Deadlift: 3 @ 100 kg rpe 9, 1 @ 120 kg, 0 of 1 @ 125 kg
  Overhead Press: 1 @ 60 kg rpe 6, 3 @ 50 kg rpe 9
  Bench Press: 3 @ 70 kg rpe 9, 0 of 1 @ 75 kg
  Leg Press: 5 @ 140 kg rpe 9
  Machine Chest Press: 5 @ 40 kg rpe 9
  test Plank: 75 s
`,
].join('\n');

function read(texts: readonly { name: string; text: string }[]): Practice {
  const practice = createPractice();
  for (const { name, text } of texts) practice.setFile(name, text);
  return practice;
}

/** Every result inside of any answer, however deep. */
function collect(value: unknown, found: Map<Result, true> = new Map()): Map<Result, true> {
  if (Array.isArray(value)) for (const each of value) collect(each, found);
  else if (value && typeof value === 'object') {
    if ('method' in value && 'bound' in value && 'inputs' in value) found.set(value as Result, true);
    for (const each of Object.values(value)) if (typeof each === 'object') collect(each, found);
  }
  return found;
}

const texts = [...WRITTEN, { name: 'more.plim', text: MORE }];
const practice = read(texts);
const works = new SessionWorks(practice);

/** All that the lenses, the hovers over movements, the report and the comparison of two versions can show. */
function listShown(): Result[] {
  const options: LensOptions = { today: TODAY, formula: 'epley', unit: 'kg', complete: true };
  const reports = [0, 1, 2].map((back) =>
    makeReport(works, { ...options, today: addDays(TODAY, -7 * back) }),
  );
  const formulas = ONE_REP_MAX_FORMULA_IDS.map((formula) =>
    makeReport(works, { ...options, formula, athlete: PEOPLE[0]! }),
  );
  const lenses = texts.flatMap(({ name }) =>
    describeLenses(works, name, options).map(({ explain }) => explain()),
  );
  const maxes = practice
    .athleteKeys()
    .flatMap((athlete) =>
      ['Leg Press', 'Machine Chest Press', 'Back Squat', 'Front Squat'].map((movement) =>
        describeMovementMax(works, athlete, movement, toDayNumber(TODAY), options),
      ),
    );
  const earlier = texts.map(({ name, text }) => ({ name, text: text.replaceAll('3x5', '4x5') }));
  const paths = texts.map(({ name }) => name);
  const revision = describeRevision({ practice: read(earlier), paths }, { practice, paths }, works, options);
  return [...collect([reports, formulas, lenses, maxes, revision]).keys()];
}

const SHOWN = listShown();

test('every method is that of a number that somebody can be shown', () => {
  const shown = new Set(
    SHOWN.flatMap(({ method, inputs }) => [method, ...inputs.flatMap(({ by }) => by ?? [])]),
  );
  expect(Object.keys(METHODS).filter((id) => !shown.has(id as MethodId))).toEqual([]);
});

test('every number says what went into it, by its formula and its source', () => {
  for (const result of SHOWN) {
    const headings = describeResult(result).lines.map(([heading]) => heading);
    expect(headings, result.method).toEqual(expect.arrayContaining(['Formula', 'Source']));
    if (result.value !== undefined) expect(headings, result.method).toContain('What went in');
    // One that is none says why, one way or the other.
    else expect(result.remark ?? result.omitted[0], result.method).toBeDefined();
  }
});

test('what is left out of a number is named once', () => {
  for (const { method, omitted } of SHOWN) {
    const texts = omitted.map(({ what, why }) => `${what}: ${why}`);
    expect(texts, method).toEqual([...new Set(texts)]);
  }
});
