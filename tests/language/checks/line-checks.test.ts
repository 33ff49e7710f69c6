import { expect, test } from 'vitest';
import { check, lines, listChecks, openPractice, toUri } from './workspace.ts';

const CELLAR = ['place Kelp Cellar', '  bars 20 kg', '  plates 2x20, 4x10 kg', '  has mat'];
const SESSION = (day: number) => `session 2026-11-${day} Odalys Fenn at Kelp Cellar`;

const codesOf = (problems: readonly string[]) =>
  problems.map((line) => `${line.split(':')[1]} ${/\[([\w-]+)\]/.exec(line)![1]}`);

test('what a line shows is told wherever the same line stands', () => {
  const text = lines(SESSION(16), '  Deadlft: 5', '', SESSION(17), '  Deadlft: 5');
  expect(codesOf(check(text, 'unknown-place', 'unknown-athlete'))).toEqual([
    '2 unknown-movement',
    '5 unknown-movement',
  ]);
});

test('what is told once for a session is told in the next one too, though the line before was silent', () => {
  const text = lines(
    ...CELLAR,
    '',
    SESSION(16),
    '  Lat Pulldown: 3x10 @ pin 7',
    '  Lat Pulldown: 3x8 @ pin 7',
    '',
    SESSION(18),
    '  Push-up: 10',
    '  Lat Pulldown: 3x8 @ pin 7',
  );
  expect(codesOf(check(text))).toEqual(['7 lacks-equipment', '12 lacks-equipment']);
});

test('a line that was clean is asked about again at another place, and under another definition', () => {
  const at = (place: string, day: number) =>
    lines(`session 2026-11-${day} Odalys Fenn at ${place}`, '  Millstone Carry: 20 m @ 20 kg', '');
  const practice = openPractice({
    'log.plim': lines(at('Tar Hut', 16), at('Kelp Cellar', 18)),
    'places.plim': lines(...CELLAR, '', 'place Tar Hut', '  has sled'),
  });
  const define = (need: string): readonly string[] => {
    practice.setFile(toUri('own.plim'), lines('exercise Millstone Carry', `  needs ${need}`));
    return codesOf(listChecks(practice));
  };
  expect(define('sled')).toEqual(['5 lacks-equipment']);
  expect(define('mat')).toEqual([]);
  expect(define('rings')).toEqual(['2 lacks-equipment', '5 lacks-equipment']);
});
