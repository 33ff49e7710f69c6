import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { foldName } from '../../../language/src/text/names.ts';
import { findMuscle, MUSCLES } from '../../../language/src/vocabulary/muscles.ts';

const LIBRARY = new URL('../../../language/library/', import.meta.url);

/** `quadriceps, adductors 1/2` from each `muscles` line of the library. */
function readMuscleLines(): string[] {
  return readdirSync(LIBRARY)
    .filter((file) => file.endsWith('.plim'))
    .flatMap((file) => readFileSync(new URL(file, LIBRARY), 'utf8').split('\n'))
    .filter((line) => line.startsWith('  muscles '))
    .map((line) => line.slice('  muscles '.length));
}

const lines = readMuscleLines();
const withoutShare = (muscle: string) => muscle.replace(/ \d\/\d$/, '');

describe('the table', () => {
  test('no spelling names two muscles, or the same one twice', () => {
    const spellings = MUSCLES.flatMap((muscle) => [muscle.name, ...muscle.also]).map(foldName);
    expect(spellings.filter((spelling, at) => spellings.indexOf(spelling) !== at)).toEqual([]);
  });

  test('every muscle has ids of the form UBERON:0001377, none twice, and a Latin name', () => {
    for (const { name, uberon, latin } of MUSCLES) {
      expect(uberon.length, name).toBeGreaterThan(0);
      expect(new Set(uberon).size, name).toBe(uberon.length);
      for (const id of uberon) expect(id, name).toMatch(/^UBERON:\d{7}$/);
      expect(latin, name).toMatch(/^(musculus|musculi|pars) /);
    }
  });

  // Uberon's own bridge to the Foundational Model of Anatomy (bridge/uberon-bridge-to-fma.obo).
  test.each([
    ['quads', 'UBERON:0001377'],
    ['gluteus maximus', 'UBERON:0001370'],
    ['gluteus medius', 'UBERON:0001371'],
    ['hamstring', 'UBERON:0002463'],
    ['gastrocnemius', 'UBERON:0001388'],
    ['soleus', 'UBERON:0001389'],
    ['tibialis anterior', 'UBERON:0001385'],
    ['latissimus dorsi', 'UBERON:0001112'],
    ['Trapezius', 'UBERON:0002380'],
    ['erector spinae', 'UBERON:0002462'],
    ['pectoralis major', 'UBERON:0002381'],
    ['serratus anterior', 'UBERON:0001125'],
    ['Front Deltoids', 'UBERON:0001476'],
    ['biceps', 'UBERON:0001507'],
    ['triceps', 'UBERON:0001509'],
    ['rectus abdominis', 'UBERON:0002382'],
  ])('%s is %s', (spelling, id) => {
    expect(findMuscle(spelling)?.uberon).toContain(id);
  });

  test('a name nobody knows is no muscle', () => {
    expect(findMuscle('wing muscle')).toBeUndefined();
    expect(findMuscle('')).toBeUndefined();
  });
});

describe('the muscles of the library', () => {
  test('there are some to check', () => expect(lines.length).toBeGreaterThanOrEqual(150));

  test('all are names of the table, spelt as there', () => {
    const names = new Set(MUSCLES.map((muscle) => muscle.name));
    const used = new Set(lines.flatMap((line) => line.split(', ')).map(withoutShare));
    expect([...used].filter((name) => !names.has(name))).toEqual([]);
  });

  test('every muscle of the table is used', () => {
    const used = new Set(lines.flatMap((line) => line.split(', ')).map(withoutShare));
    expect(MUSCLES.map((muscle) => muscle.name).filter((name) => !used.has(name))).toEqual([]);
  });

  test('a line names a muscle once, direct ones first, and indirect ones with 1/2 or 1/4', () => {
    for (const line of lines) {
      const muscles = line.split(', ');
      expect(new Set(muscles.map(withoutShare)).size, line).toBe(muscles.length);
      expect(line).toMatch(/^[a-z ]+(, [a-z ]+)*(, [a-z ]+ 1\/[24])*$|^[a-z ]+ 1\/[24](, [a-z ]+ 1\/[24])*$/);
    }
  });
});
