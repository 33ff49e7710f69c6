import { findNearHeader, type LineKind, recogniseLine } from '@plimsoll/language/syntax/line-kind';
import type { LineContext } from '@plimsoll/language/vocabulary/keywords';
import { describe, expect, test } from 'vitest';

/** `movement Back Squat`: the kind, and what it begins with. */
function show(line: string, context: LineContext): string {
  const kind: LineKind = recogniseLine(line, context);
  switch (kind.kind) {
    case 'header':
      return `header ${kind.word} | ${line.slice(kind.rest)}`;
    case 'property':
      return `property ${kind.word} | ${line.slice(kind.rest)}`;
    case 'movement':
      return `movement ${line.slice(kind.start, kind.colon)}`;
    case 'block':
      return `block | ${line.slice(kind.rest)}`;
    default:
      return kind.kind;
  }
}

describe('headers', () => {
  test.each([
    ['session 2026-11-17 Ivo', 'header session | 2026-11-17 Ivo'],
    ['Session: 2026-11-17', 'header session | 2026-11-17'],
    ['session', 'header session | '],
    ['session # today', 'header session |  # today'],
    ['session 11/17 Ivo', 'header session | 11/17 Ivo'],
    ['session Ivo Brundt', 'header session | Ivo Brundt'],
    ['session at Herne Loft', 'header session | at Herne Loft'],
    ['Session Finisher', 'stray'],
    ['Session Finisher: 10', 'movement Session Finisher'],
    ['session finisher: 10', 'movement session finisher'],
    ['\ufeffathlete Ivo', 'header athlete | Ivo'],
    ['athlete', 'header athlete | '],
    ['athlete: Ivo', 'header athlete | Ivo'],
    ['athlete Ivo:', 'header athlete | Ivo:'],
    ['Athletes Foot: 5', 'movement Athletes Foot'],
    ['exercise Bike: 20:00', 'movement exercise Bike'],
    ['Exercise Bike: ?', 'movement Exercise Bike'],
    ['Plan-Do Squat: 5', 'movement Plan-Do Squat'],
    ['units kg', 'header units | kg'],
    ['  units kg', 'stray'],
    ['  session 2026-11-17', 'stray'],
  ])('%j', (line, expected) => {
    expect(show(line, 'session')).toBe(expected);
  });

  test('an athlete has units of its own', () => {
    expect(show('units lb', 'athlete')).toBe('property units | lb');
  });
});

describe('lines shaped like a header', () => {
  test.each([
    'sesion 2026-11-17 Ivo',
    'Sesion 2026-11-17 Ivo',
    'workout 2026-11-17',
    'friday 17.11.2026',
    'sesion 11/17 Ivo',
    'athlet Ivo Brundt',
    'plans Wicker Base',
    'weekly Ivo Brundt',
    'exercice Goblet Squat',
  ])('%j', (line) => {
    expect(show(line, 'session')).toBe('title');
  });

  test.each([
    ['Row 10/10 @ 20 kg', 'stray'],
    ['Row 8/8', 'stray'],
    ['Goblet Squat', 'stray'],
    ['goblet squat 3x5', 'stray'],
    ['effort 7', 'property effort | 7'],
    ['test Back Squat', 'stray'],
    ['circuit Ivo Brundt', 'stray'],
  ])('%j is none', (line, expected) => {
    expect(show(line, 'session')).toBe(expected);
  });

  test.each([
    ['sesion', 'session'],
    ['athletes', 'athlete'],
    ['excercise', 'exercise'],
    ['plna', 'plan'],
    ['unit', 'units'],
    ['workout', undefined],
    ['x'.repeat(100_000), undefined],
  ])('%j is near %s', (word, header) => {
    expect(findNearHeader(word)).toBe(header);
  });
});

describe('lines of a session', () => {
  test.each([
    ['', 'blank'],
    [' \t\u00a0', 'blank'],
    ['  # a comment', 'blank'],
    ['#2 is a name, not a comment', 'stray'],
    ['> a note', 'note'],
    ['  Back Squat: 5', 'movement   Back Squat'.replace('  ', '')],
    ['Back Squat : 5', 'movement Back Squat '],
    ['4:05 Run: 10', 'movement 4:05 Run'],
    ['A1 Row: 8', 'movement A1 Row'],
    ['warmup Row: 8', 'movement warmup Row'],
    ['Bodyweight Squat: 10', 'movement Bodyweight Squat'],
    ['Time Trial: 10:00', 'movement Time Trial'],
    ['Rest Day Walk: 20 min', 'movement Rest Day Walk'],
    ['Circuit Row: 5', 'movement Circuit Row'],
    ['effort: 7', 'property effort | 7'],
    ['EFFORT 7', 'property effort | 7'],
    ['effort hard', 'property effort | hard'],
    ['Bodyweight Squat 10', 'stray'],
    ['time 2:55', 'property time | 2:55'],
    ['rest: 1:15', 'property rest | 1:15'],
    ['A circuit, 4 rounds', 'block | , 4 rounds'],
    ['A circuit: 4 rounds', 'block | 4 rounds'],
    ['circuit', 'block | '],
    ['giant  set, 3 rounds', 'block | , 3 rounds'],
    ['every 1:00 for 10:00', 'block | 1:00 for 10:00'],
    ['Every Day Stretch', 'stray'],
    ['warm-up', 'block | '],
    ['for time, cap 9:00', 'block | , cap 9:00'],
    ['weeks 6', 'stray'],
    ['pattern squat', 'stray'],
    ['a, b: 5', 'stray'],
  ])('%j', (line, expected) => {
    expect(show(line, 'session')).toBe(expected);
  });
});

describe('the kind of entry decides', () => {
  test.each<[string, LineContext, string]>([
    ['A circuit, 4 rounds', 'place', 'stray'],
    ['Back Squat: 5', 'exercise', 'stray'],
    ['cue In this order: elbows', 'exercise', 'property cue | In this order: elbows'],
    ['bodyweight 69%', 'exercise', 'property bodyweight | 69%'],
    ['bodyweight 68 kg on 2026-10-01', 'athlete', 'property bodyweight | 68 kg on 2026-10-01'],
    ['max Back Squat: 105 kg', 'athlete', 'property max | Back Squat: 105 kg'],
    ['max Back Squat: 105 kg', 'session', 'movement max Back Squat'],
    ['day 1: Squat', 'plan', 'property day | 1: Squat'],
    ['for Ivo', 'plan', 'property for | Ivo'],
    ['for time', 'plan', 'block | '],
    ['weeks six', 'plan', 'property weeks | six'],
    ['effort 7', 'plan', 'stray'],
    ['effort 7', 'unknown', 'property effort | 7'],
    ['weeks 6', 'unknown', 'property weeks | 6'],
    ['has bench', 'units', 'stray'],
    ['constructor', 'place', 'stray'],
    ['__proto__', 'exercise', 'stray'],
  ])('%j in %s', (line, context, expected) => {
    expect(show(line, context)).toBe(expected);
  });
});
