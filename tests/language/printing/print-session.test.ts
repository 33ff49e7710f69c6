import { expect, test } from 'vitest';
import { printEntry } from '../../../language/src/printing/print-entry.ts';
import { printAgain, readOne } from './print-again.ts';

test.each([
  ['session 2026-11-17', 'session 2026-11-17'],
  ['SESSION: 2026-11-17 07:10 Nessa Quill', 'session 2026-11-17 07:10 Nessa Quill'],
  [
    'session 2026-11-17 Nessa|Bo at Hall #2, Slow Tide week 2 day 1',
    'session 2026-11-17 Nessa | Bo at Hall #2, Slow Tide week 2 day 1',
  ],
  ['session 2026-11-17 at Hall , Slow Tide', 'session 2026-11-17 at Hall, Slow Tide'],
])('the header %s prints as %s', (header, printed) => {
  expect(printEntry(readOne(header))).toBe(printed);
});

test('how the athlete came, the training, how it went', () => {
  const lines = [
    'bodyweight 68.2 kg',
    'sleep 6:50:00',
    'readiness 3',
    'Marsh Pull: 5 @ 60 kg',
    'A straight',
    '  Ferry Squat: 5',
    'effort 7 | ?',
    'lasted 58 min | 1:02:05',
    'pain 2 right knee',
    'missed, the tide',
    '> windy',
  ];
  expect(printAgain('session 2026-11-17', [...lines.slice(6), ...lines.slice(0, 6)].join('\n'))).toBe(
    lines.join('\n'),
  );
});

test('a note of a session without properties stands behind its header', () => {
  const lines = ['> windy', 'A straight', '  Ferry Squat: 5'];
  expect(printAgain('session 2026-11-17', lines.join('\n'))).toBe(lines.join('\n'));
});

test('an unknown entry keeps its header', () => {
  expect(printAgain('sesion 2026-11-17 Nessa', 'Ferry Squat:5')).toBe('Ferry Squat: 5');
});

test('lines that nothing recognises stand at the end', () => {
  expect(printAgain('session 2026-11-17', 'felt heavy\nFerry Squat: 5')).toBe('Ferry Squat: 5\nfelt heavy');
});
