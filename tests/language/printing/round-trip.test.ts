import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Entry } from '../../../language/src/model/entry.ts';
import { printEntry } from '../../../language/src/printing/print-entry.ts';
import { ENTRIES } from '../support/generators/entries.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';
import { slip } from '../support/generators/slips.ts';
import { stripSpans } from '../support/generators/strip-spans.ts';
import { readEntries, readOne } from './print-again.ts';

vi.setConfig({ testTimeout: PATIENCE });

const LIBRARY = join(import.meta.dirname, '../../../language/library');

const errorsOf = (entry: Entry) =>
  entry.problems
    .filter(({ severity }) => severity === 'error')
    .map(({ code, message, span }) => ({ code, message, span }));

describe('what the model can express is printed, read without error and printed again as the same', () => {
  test.each(Object.entries(ENTRIES))('%s', (_kind, entry) => {
    fc.assert(
      fc.property(entry, (entry: Entry) => {
        const text = printEntry(entry);
        const read = readOne(text);
        expect(errorsOf(read), text).toEqual([]);
        expect(stripSpans(read), text).toEqual(stripSpans(entry));
        expect(printEntry(read)).toBe(text);
      }),
      RUNS,
    );
  });
});

test('what is printed means the same in a file of either unit', () => {
  const anyEntry = fc.oneof(ENTRIES.place, ENTRIES.athlete, ENTRIES.session, ENTRIES.plan);
  fc.assert(
    fc.property(fc.constantFrom('kg', 'lb'), anyEntry, (unit, entry: Entry) => {
      const [, read] = readEntries(`units ${unit}\n${printEntry(entry)}`);
      expect(stripSpans(read!)).toEqual(stripSpans(entry));
    }),
    RUNS,
  );
});

test('what a coach wrote by half or by slip is printed in a form that stays', () => {
  fc.assert(
    fc.property(slip, (written) => {
      for (const entry of readEntries(written)) {
        const text = printEntry(entry);
        expect(readEntries(text).map(printEntry).join('\n'), written).toBe(text);
      }
    }),
    { ...RUNS, numRuns: 4 * RUNS.numRuns },
  );
});

test.each(readdirSync(LIBRARY).filter((file) => file.endsWith('.plim')))('the library file %s', (file) => {
  const entries = readEntries(readFileSync(join(LIBRARY, file), 'utf8'));
  expect(entries.length).toBeGreaterThan(0);
  for (const entry of entries) expect(stripSpans(readOne(printEntry(entry)))).toEqual(stripSpans(entry));
});
