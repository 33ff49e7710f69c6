import { printEntry } from '@plimsoll/language/printing/print-entry';
import { convertEntry, convertFile, convertLine } from '@plimsoll/language/rewrites/convert-units';
import { convertMass } from '@plimsoll/language/units/mass';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { applyRewrite, listErrors, openFiles, rewriteLog } from '../support/apply-rewrite.ts';
import { ENTRIES } from '../support/generators/entries.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';
import { stripSpans } from '../support/generators/strip-spans.ts';

vi.setConfig({ testTimeout: PATIENCE });

describe('a line', () => {
  const convert = (line: string, header = ''): string | undefined =>
    rewriteLog(convertLine, `${header}session 2026-11-17\n  <|>${line}\n`)?.split('\n').at(-2)?.trim();

  test.each([
    ['Back Squat: 5 @ 60 kg', 'Back Squat: 5 @ 132.28 lb'],
    ['Back Squat: 5 @ 40, 5 @ 60 kg', 'Back Squat: 5 @ 88.18, 5 @ 132.28 lb'],
    ['Curl: 10 @ 2x25 lb drop 8 @ 2x15 lbs', 'Curl: 10 @ 2x11.34 kg drop 8 @ 2x6.8 kg'],
    ['Row: 5 @ 24&16 kg, 5 @ 45 lb', 'Row: 5 @ 52.91&35.27 lb, 5 @ 45 lb'],
    ['Rower: 500 m @ 2:05/500 m', undefined],
    ['Back Squat: 5 @ 60', undefined],
  ])('%s', (before, after) => expect(convert(before)).toBe(after));

  test('whose unit the file says gets one of its own', () =>
    expect(convert('Back Squat: 5 @ 40, 5 @ 60, rest 2:00', 'units kg\n\n')).toBe(
      'Back Squat: 5 @ 88.18, 5 @ 132.28 lb, rest 2:00',
    ));
});

test('an entry is converted at its header', () => {
  const text =
    '<|>place Marsh Hall\n  bars 45 lb\n  plates 4x45, 2x10 lb\n\nsession 2026-11-17\n  Row: 5 @ 45 lb\n';
  expect(rewriteLog(convertEntry, text)).toBe(
    'place Marsh Hall\n  bars 20.41 kg\n  plates 4x20.41, 2x4.54 kg\n\nsession 2026-11-17\n  Row: 5 @ 45 lb\n',
  );
  expect(rewriteLog(convertEntry, text.replace('<|>', '').replace('  bars', '  <|>bars'))).toBeUndefined();
});

describe('a file', () => {
  test('is converted with the unit that it names', () =>
    expect(
      applyRewrite(
        convertFile,
        'units: kgs # mine\n\n<|>session 2026-11-17\n  Row: 5 @ 40, 5 @ 60\n  Dip: 5 @ bw+10 kg\n',
      ),
    ).toEqual({
      title: 'Convert this file to lb',
      kind: 'refactor.rewrite',
      files: {
        'log.plim':
          'units: lb # mine\n\nsession 2026-11-17\n  Row: 5 @ 88.18, 5 @ 132.28\n  Dip: 5 @ bw+22.05 lb\n',
      },
    }));

  test('every weight that the model can hold is converted, and nothing else changes', () => {
    const { plan, session, place, athlete } = ENTRIES;
    fc.assert(
      fc.property(
        fc.oneof<(typeof plan | typeof session | typeof place | typeof athlete)[]>(
          plan,
          session,
          place,
          athlete,
        ),
        (entry) => {
          const text = `${printEntry(entry)}\n`;
          const converted = rewriteLog(convertFile, `<|>${text}`);
          const before = facts(text);
          const masses = collect(before);
          if (converted === undefined) {
            expect(masses).toEqual([]);
            return;
          }
          const target =
            masses.length === 0
              ? undefined
              : /Convert this file to (..)/.exec(applyRewrite(convertFile, `<|>${text}`)!.title)![1];
          const after = facts(converted);
          expect(withoutMasses(after), converted).toEqual(withoutMasses(before));
          const now = collect(after);
          expect(
            now.map(({ unit }) => unit),
            converted,
          ).toEqual(masses.map(() => target));
          now.forEach(({ written }, index) => {
            const mass = masses[index]!;
            const exact = convertMass(mass.written, mass.unit, target as 'kg');
            const off = mass.unit === target ? 0 : 0.0050001;
            expect(Math.abs(written - exact), converted).toBeLessThanOrEqual(off);
          });
          expect(listErrors(converted)).toEqual(listErrors(text));
        },
      ),
      RUNS,
    );
  });
});

interface Written {
  readonly written: number;
  readonly unit: 'kg' | 'lb';
}

const facts = (text: string): unknown =>
  openFiles({ 'log.plim': text })
    .file('log.plim')!
    .model.entries.map(({ entry }) => stripSpans(entry));

const isMass = (value: object): value is Written => 'grams' in value;
interface StepFacts {
  readonly amount: number;
  readonly unit: string;
  readonly bound?: number;
  readonly boundUnit?: string;
}

const isStep = (value: object): value is StepFacts => 'kind' in value && value.kind === 'step';
const isMassUnit = (unit: string | undefined): unit is 'kg' | 'lb' => unit === 'kg' || unit === 'lb';

/** A step in kilograms or pounds, and its bound, which takes the step's unit where it writes none. */
function collectSteps({ amount, unit, bound, boundUnit = unit }: StepFacts): Written[] {
  return [
    ...(isMassUnit(unit) ? [{ written: amount, unit }] : []),
    ...(bound !== undefined && isMassUnit(boundUnit) ? [{ written: bound, unit: boundUnit }] : []),
  ];
}

function collect(value: unknown): Written[] {
  if (typeof value !== 'object' || value === null) return [];
  if (isMass(value)) return [value];
  return [...(isStep(value) ? collectSteps(value) : []), ...Object.values(value).flatMap(collect)];
}

function withoutMasses(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutMasses);
  if (typeof value !== 'object' || value === null) return value;
  if (isMass(value)) return 'mass';
  const hidden = isStep(value)
    ? [
        ...(isMassUnit(value.unit) ? ['unit', 'amount'] : []),
        ...(isMassUnit(value.boundUnit ?? value.unit) ? ['bound', 'boundUnit'] : []),
      ]
    : [];
  const kept = Object.entries(value).filter(([key]) => !hidden.includes(key));
  return Object.fromEntries(kept.map(([key, child]) => [key, withoutMasses(child)]));
}
