/** Whatever is kept from before an edit: the answers are those of a practice that has read the same texts afresh. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type IsoDate, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import { checkFile } from '../../../language/src/checks/check-file.ts';
import { createPractice } from '../../../language/src/create-practice.ts';
import { findMaxOn } from '../../../language/src/measures/maxes.ts';
import { findBests, findRecordsOf } from '../../../language/src/measures/records.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { writeNextSession } from '../../../language/src/plans/next-session.ts';
import {
  describeFileHints,
  describeLens,
  describeLenses,
  listLensPlaces,
} from '../../../language/src/summaries/file-lenses.ts';
import type { Lens, LensOptions } from '../../../language/src/summaries/lens.ts';
import { makeReport } from '../../../language/src/summaries/report.ts';
import type { LineEdit } from '../../../language/src/text/line-edit.ts';
import { splitTexts } from '../../../language/src/text/lines.ts';
import { countSameEnds } from '../../../language/src/text/same-ends.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';
import { DEFINED, DEFINITIONS, edit, practice as practices, type Texts } from './random-edits.ts';
import * as typed from './random-typing.ts';

const TODAY = '2026-02-25' as IsoDate;
const OPTIONS: LensOptions = { today: TODAY, formula: 'epley', unit: 'kg', complete: true };

/** What an editor shows in the text, as text that can be compared. */
function tellShown(works: SessionWorks): Record<string, string> {
  const told: Record<string, string> = {};
  for (const uri of [...works.practice.fileUris()].sort()) {
    told[`lenses of ${uri}`] = printLenses(describeLenses(works, uri, OPTIONS));
    told[`hints of ${uri}`] = print(describeFileHints(works, uri, OPTIONS));
    told[`problems of ${uri}`] = print(checkFile(works.practice, uri, { today: TODAY, works }));
  }
  return told;
}

/** All that is shown anywhere. */
function tellAll(works: SessionWorks): Record<string, string> {
  const { practice } = works;
  const told = tellShown(works);
  for (const uri of [...practice.fileUris()].sort()) {
    told[`lenses of ${uri} while others are read`] = printLenses(
      describeLenses(works, uri, { ...OPTIONS, complete: false }),
    );
    const places = listLensPlaces(works, uri, OPTIONS);
    told[`lenses of ${uri} without words`] = print(
      places.filter((place) => !describeLens(works, uri, place, OPTIONS)?.text),
    );
  }
  told.report = print(makeReport(works, OPTIONS));
  for (const athlete of practice.athleteKeys()) {
    const records = practice.sessionsOf(athlete);
    told[`next session of ${athlete}`] = print(
      writeNextSession(works, { athlete, today: TODAY, formula: 'epley', unit: 'kg', fallback: 'new.plim' }),
    );
    told[`bests of ${athlete}`] = print(findBests(works, athlete));
    told[`records of ${athlete}`] = print(records.map((record) => findRecordsOf(works, works.of(record))));
    told[`maxes of ${athlete}`] = print(
      ['Bar Press', 'Shelf Pull', 'Back Squat'].map((name) =>
        findMaxOn(works, athlete, name, toDayNumber(TODAY)),
      ),
    );
  }
  return told;
}

/** With the numbers behind them. */
const printLenses = (lenses: readonly Lens[]): string =>
  print(lenses.map((lens) => ({ ...lens, results: lens.explain() })));

const print = (value: unknown): string => JSON.stringify(value, undefined, 1);

function readAfresh(texts: Texts): SessionWorks {
  const practice = createPractice();
  for (const uri of [...texts.keys()].sort()) practice.setFile(uri, texts.get(uri)!);
  return new SessionWorks(practice);
}

test('the definitions that are edited say what they are meant to', () => {
  for (const text of DEFINED.flat()) {
    const practice = createPractice();
    practice.setFile('a.plim', text);
    const problems = practice.file('a.plim')!.model.entries.flatMap(({ entry }) => entry.problems);
    const strays = practice.file('a.plim')!.model.entries.flatMap(({ entry }) => entry.strays);
    expect([...problems, ...strays]).toEqual([]);
  }
});

/** Makes the changes of some files in a practice that was read before. */
function apply(kept: SessionWorks, before: Texts, after: Texts): void {
  for (const uri of before.keys()) if (!after.has(uri)) kept.practice.removeFile(uri);
  for (const [uri, text] of after) if (before.get(uri) !== text) kept.practice.setFile(uri, text);
}

function findEdit(before: string, after: string): LineEdit {
  const [old, lines] = [splitTexts(before), splitTexts(after)];
  const { front, back } = countSameEnds(old, lines);
  return { first: front, removed: old.length - front - back, added: lines.slice(front, lines.length - back) };
}

test('each definition put in the place of another counts at once', { timeout: PATIENCE }, () => {
  const [start] = fc.sample(practices, { seed: 4, numRuns: 1 });
  const write = (chosen: readonly string[]): Texts => new Map([...start!, [DEFINITIONS, chosen.join('\n')]]);
  const chosen = DEFINED.map(([first]) => first!);
  let texts = write(chosen);
  const kept = readAfresh(texts);
  for (const [index, choices] of DEFINED.entries()) {
    for (const choice of [...choices.slice(1), choices[0]!]) {
      tellAll(kept);
      chosen[index] = choice;
      const before = texts;
      texts = write(chosen);
      apply(kept, before, texts);
      expect(tellAll(kept)).toEqual(tellAll(readAfresh(texts)));
    }
  }
});

test('after any edits the answers are those of a practice read afresh', { timeout: PATIENCE }, () => {
  fc.assert(
    fc.property(practices, fc.array(edit, { minLength: 1, maxLength: 8 }), (start, edits) => {
      const kept = readAfresh(start);
      let texts = start;
      tellAll(kept);
      for (const change of edits) {
        const before = texts;
        texts = change(texts);
        apply(kept, before, texts);
        const told = tellAll(kept);
        for (const uri of texts.keys()) expect(told[`lenses of ${uri} without words`]).toBe('[]');
        expect(told).toEqual(tellAll(readAfresh(texts)));
      }
    }),
    { ...RUNS, numRuns: Math.ceil(RUNS.numRuns / 10) },
  );
});

test('whatever is typed in a set, what is said of others stays right', { timeout: PATIENCE }, () => {
  fc.assert(
    fc.property(typed.defined, typed.log, typed.typing, (defined, start, keys) => {
      let log = start;
      const write = (): Texts =>
        new Map([
          [DEFINITIONS, defined],
          ['log.plim', typed.print(log)],
        ]);
      const kept = readAfresh(write());
      tellShown(kept);
      for (const key of keys) {
        const before = typed.print(log);
        log = typed.type(log, key);
        // As an editor tells it: which lines are others.
        kept.practice.editFile('log.plim', findEdit(before, typed.print(log)));
        expect(tellShown(kept)).toEqual(tellShown(readAfresh(write())));
      }
    }),
    { ...RUNS, numRuns: Math.ceil(RUNS.numRuns / 5) },
  );
});
