import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { recogniseLine } from '../../../language/src/syntax/line-kind.ts';
import { foldName } from '../../../language/src/text/names.ts';
import { EQUIPMENT, findEquipment } from '../../../language/src/vocabulary/equipment.ts';
import { LINE_WORDS } from '../../../language/src/vocabulary/keywords.ts';

const LIBRARY = new URL('../../../language/library/', import.meta.url);

/** In the order in which the library writes them. */
const PROPERTIES = [
  'pattern',
  'work',
  'position',
  'trunk',
  'each rep moves',
  'muscles',
  'needs',
  'bodyweight',
  'counts',
  'also',
  'easier',
  'harder',
  'setup',
  'cue',
  'caution',
] as const;
type Property = (typeof PROPERTIES)[number];

interface Movement {
  readonly name: string;
  readonly file: string;
  readonly lines: readonly { readonly property: Property; readonly text: string }[];
}

/** A line reader just wide enough for the library's own tidy form; a line it does not know throws. */
function readMovements(file: string): Movement[] {
  const [, ...entries] = readFileSync(new URL(file, LIBRARY), 'utf8').split(/^exercise /m);
  return entries.map((entry) => {
    const [name, ...lines] = entry.trimEnd().split('\n');
    return {
      name: name!,
      file,
      lines: lines.map((line) => {
        const property = PROPERTIES.find((word) => line.startsWith(`  ${word} `));
        if (property === undefined) throw new Error(`${file}, ${name}: ${line}`);
        return { property, text: line.slice(property.length + 3) };
      }),
    };
  });
}

const files = readdirSync(LIBRARY).filter((file) => file.endsWith('.plim'));
const movements = files.flatMap(readMovements);
const textsOf = (movement: Movement, property: Property) =>
  movement.lines.filter((line) => line.property === property).map((line) => line.text);
const namesOf = (movement: Movement, property: Property) =>
  textsOf(movement, property).flatMap((text) => text.split(', '));
const spellingsOf = (movement: Movement) => [movement.name, ...namesOf(movement, 'also')];
const find = (name: string) => {
  const movement = movements.find((candidate) => candidate.name === name);
  if (movement === undefined) throw new Error(`No movement is called ${name}`);
  return movement;
};
const shareOf = (movement: Movement) => {
  const [text] = textsOf(movement, 'bodyweight');
  const parts = text?.match(/^(\d+(?:\.\d+)?)%, (.+)$/);
  return parts ? { percent: Number(parts[1]), source: parts[2]! } : undefined;
};

describe('the equipment table', () => {
  test('no spelling names two things, or the same one twice', () => {
    const spellings = EQUIPMENT.flatMap((thing) => [thing.name, ...thing.also]).map(foldName);
    expect(spellings.filter((spelling, at) => spellings.indexOf(spelling) !== at)).toEqual([]);
  });

  test.each([
    ['Barbell', 'bar'],
    ['hex bar', 'bar'],
    ['dumbbells', 'dumbbell'],
    ['KETTLEBELL', 'kettlebell'],
    ['cable stack', 'stack'],
    ['pull up bar', 'none'],
    ['mat', 'none'],
  ])('%s: the load comes from %s', (name, implement) => {
    expect(findEquipment(name)?.implement).toBe(implement);
  });

  test('only floor, mat and wall are always there', () => {
    expect(EQUIPMENT.filter((thing) => thing.alwaysThere).map((thing) => thing.name)).toEqual([
      'mat',
      'floor',
      'wall',
    ]);
  });

  test('an unknown thing is none', () => expect(findEquipment('anvil')).toBeUndefined());

  test('all equipment of the library is in the table, spelt as there', () => {
    const used = new Set(movements.flatMap((movement) => namesOf(movement, 'needs')));
    expect([...used].filter((name) => findEquipment(name)?.name !== name)).toEqual([]);
  });

  test('everything in the table is used, but for the floor, which needs no mention', () => {
    const used = new Set(movements.flatMap((movement) => namesOf(movement, 'needs')));
    expect(EQUIPMENT.map((thing) => thing.name).filter((name) => !used.has(name))).toEqual(['floor']);
  });

  test('no movement is loaded from two inventories', () => {
    for (const movement of movements) {
      const implement = namesOf(movement, 'needs').map((name) => findEquipment(name)!.implement);
      expect(implement.filter((kind) => kind !== 'none').length, movement.name).toBeLessThanOrEqual(1);
    }
  });
});

describe('names in the library', () => {
  test('at least 150 movements', () => expect(movements.length).toBeGreaterThanOrEqual(150));

  test('no spelling stands twice', () => {
    const spellings = movements.flatMap(spellingsOf).map(foldName);
    expect(spellings.filter((spelling, at) => spellings.indexOf(spelling) !== at)).toEqual([]);
  });

  test('names are names: two letters, no comma, colon, @ or |, no keyword or pattern alone, no warmup, test or week first', () => {
    const patterns = new Set(movements.flatMap((movement) => namesOf(movement, 'pattern')));
    for (const name of movements.flatMap(spellingsOf)) {
      expect(name.match(/\p{L}/gu)?.length, name).toBeGreaterThanOrEqual(2);
      expect(name).not.toMatch(/[,:@|]|^\s|\s$|\s\s/);
      expect(LINE_WORDS.has(name.toLowerCase()), name).toBe(false);
      expect(name).not.toMatch(/^(warm-?up|test|week)/i);
      // "avoid squat" must go on meaning the pattern.
      expect(patterns.has(name.toLowerCase()), name).toBe(false);
    }
  });

  test.each(['session', 'plan'] as const)(
    'each, with its colon, begins a movement line in a %s',
    (context) => {
      for (const name of movements.flatMap(spellingsOf)) {
        for (const indent of ['', '    ']) {
          const line = `${indent}${name}: 10`;
          expect(recogniseLine(line, context), line).toEqual({
            kind: 'movement',
            start: indent.length,
            colon: indent.length + name.length,
          });
        }
      }
    },
  );

  test('easier and harder name movements of the library by their own names', () => {
    const names = new Set(movements.map((movement) => movement.name));
    const targets = movements.flatMap((movement) => [
      ...namesOf(movement, 'easier'),
      ...namesOf(movement, 'harder'),
    ]);
    expect(targets.filter((target) => !names.has(target))).toEqual([]);
  });

  test('going to an easier movement never leads back', () => {
    const easier = new Map(
      movements.map((movement) => [movement.name, new Set(namesOf(movement, 'easier'))]),
    );
    for (const movement of movements) {
      for (const target of namesOf(movement, 'harder')) easier.get(target)!.add(movement.name);
    }
    const findLoop = (name: string, path: readonly string[]): readonly string[] | undefined =>
      path.includes(name)
        ? [...path.slice(path.indexOf(name)), name]
        : [...easier.get(name)!]
            .map((next) => findLoop(next, [...path, name]))
            .find((loop) => loop !== undefined);
    const loops = movements.flatMap((movement) => findLoop(movement.name, []) ?? []);
    expect(loops).toEqual([]);
  });
});

describe('what every movement says', () => {
  const allowed: Partial<Record<Property, RegExp>> = {
    pattern:
      /^(squat|hinge|lunge|horizontal push|vertical push|horizontal pull|vertical pull|carry|trunk|jump|isolation|conditioning|mobility)$/,
    work: /^(strength|carry|hold|jump|conditioning|mobility)$/,
    position: /^(standing|kneeling|half-kneeling|quadruped|supine|prone|side-lying|hanging|seated)$/,
    trunk: /^(resists|moves) (extension|flexion|rotation|side bend)$/,
    'each rep moves': /^(one|both)$/,
    counts: /^contacts$/,
  };
  const once: readonly Property[] = ['pattern', 'work', 'position', 'each rep moves'];
  const severalTimes: readonly Property[] = ['setup', 'cue', 'caution'];

  test('pattern, work, position and what a rep moves once each, and at least one cue', () => {
    for (const movement of movements) {
      for (const property of once)
        expect(textsOf(movement, property).length, `${movement.name}: ${property}`).toBe(1);
      expect(textsOf(movement, 'cue').length, movement.name).toBeGreaterThanOrEqual(1);
    }
  });

  test('words of the notation only', () => {
    for (const movement of movements) {
      for (const { property, text } of movement.lines) {
        expect(text, movement.name).toMatch(allowed[property] ?? /^\S.*\S$/);
      }
    }
  });

  test('lines in one order, and none twice but setup, cue and caution', () => {
    for (const movement of movements) {
      const order = movement.lines.map((line) => PROPERTIES.indexOf(line.property));
      expect(order, movement.name).toEqual(order.toSorted((a, b) => a - b));
      const single = movement.lines.filter((line) => !severalTimes.includes(line.property));
      expect(new Set(single.map((line) => line.property)).size, movement.name).toBe(single.length);
    }
  });

  test('jumps, and jumps alone, count contacts', () => {
    for (const movement of movements) {
      const isJump = textsOf(movement, 'work')[0] === 'jump';
      expect(textsOf(movement, 'counts').length, movement.name).toBe(isJump ? 1 : 0);
    }
  });

  test('barbells, cables and machines move as a whole', () => {
    const single = movements.filter((movement) => textsOf(movement, 'each rep moves')[0] === 'one');
    for (const movement of single) {
      const kinds = namesOf(movement, 'needs').map((name) => findEquipment(name)!.implement);
      expect(
        kinds.some((kind) => kind === 'bar' || kind === 'stack'),
        movement.name,
      ).toBe(false);
    }
  });

  test.each([
    ['Alternating Dumbbell Curl', 'one'],
    ['One-Arm Row', 'one'],
    ['Goblet Squat', 'one'],
    ['Suitcase Carry', 'one'],
    ['Dumbbell Curl', 'both'],
    ['Dumbbell Bench Press', 'both'],
    ['Dumbbell Floor Press', 'both'],
    ['Dumbbell Split Squat', 'both'],
    ['Farmer Carry', 'both'],
    ['Double Kettlebell Swing', 'both'],
    ['Back Squat', 'both'],
  ])('%s: each rep moves %s', (name, moves) => {
    expect(textsOf(find(name), 'each rep moves')).toEqual([moves]);
  });

  // Common practice.
  test.each(['Low-Incline Bench Press', 'Low-Incline Dumbbell Press'])(
    '%s says its angle, 15 to 30 degrees',
    (name) => {
      expect(textsOf(find(name), 'setup')).toEqual(['Bench at a low incline, 15 to 30 degrees']);
    },
  );

  test('a caution that speaks of medicine names licensed practice or medical help', () => {
    const cautions = movements.flatMap((movement) => textsOf(movement, 'caution'));
    const medical = cautions.filter((text) => /blood pressure|tingling|chest pain|travels down/.test(text));
    expect(medical.length).toBeGreaterThan(0);
    for (const text of medical)
      expect(text).toMatch(/licensed practitioner|medical help|^Breathe|^Stop at pain or tingling/);
  });
});

describe('shares of body mass', () => {
  const shared = movements.filter((movement) => textsOf(movement, 'bodyweight').length > 0);

  test('only with a number and a published source', () => {
    for (const movement of shared) {
      expect(shareOf(movement)?.source, movement.name).toMatch(
        /^(Mier et al\. 2014|Ebben et al\. 2011|Winter 2009 table 4\.1|Melrose and Dawes 2015)/,
      );
    }
  });

  test('none on a movement loaded with bar, dumbbell, kettlebell, cable or machine', () => {
    for (const movement of shared) {
      expect(movement.file, movement.name).toBe('bodyweight.plim');
      for (const name of namesOf(movement, 'needs'))
        expect(findEquipment(name)!.implement, movement.name).toBe('none');
    }
  });

  // Winter DA (2009) Biomechanics and Motor Control of Human Movement, 4th ed., table 4.1: shares of one side.
  const winter = { forearm: 0.016, hand: 0.006, shank: 0.0465, foot: 0.0145 };
  const hanging = 1 - 2 * (winter.forearm + winter.hand);
  const twoLegs = 1 - 2 * (winter.shank + winter.foot);
  const oneLeg = 1 - (winter.shank + winter.foot);
  const mean = (...values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

  test.each([
    ['Pull-up', hanging],
    ['Chin-up', hanging],
    ['Neutral-Grip Pull-up', hanging],
    ['Dip', hanging],
    ['Ring Dip', hanging],
    ['Bodyweight Squat', twoLegs],
    ['Bodyweight Box Squat', twoLegs],
    ['Pistol Squat', oneLeg],
    // Melrose D, Dawes J (2015) J Athl Enhancement 4:1.
    ['Suspension Row 30 degrees', 0.3744],
    ['Suspension Row 45 degrees', 0.5288],
    ['Suspension Row 60 degrees', 0.6808],
    ['Suspension Row 75 degrees', 0.7938],
    // Ebben WP et al. (2011) JSCR 25(10):2891-2894, peak ground reaction force, from secondary copies.
    ['Feet-Elevated Push-up 30 cm', 0.7],
    ['Feet-Elevated Push-up 60 cm', 0.74],
    ['Hands-Elevated Push-up 30 cm', 0.55],
    ['Hands-Elevated Push-up 60 cm', 0.41],
  ])('%s: %d', (name, share) => {
    expect(shareOf(find(name))!.percent / 100).toBeCloseTo(share, 10);
  });

  // Mier CM et al. (2014) Int J Exerc Sci 7(2):161-168: up and down, men and women; kept to a whole percent.
  test.each([
    ['Push-up', mean(67.0, 74.6, 65.1, 70.3), 69],
    ['Knee Push-up', mean(52.5, 60.1, 51.5, 56.6), 55],
  ])('%s: the mean of four figures, %d, kept as %d', (name, exact, whole) => {
    expect(Math.round(exact)).toBe(whole);
    expect(shareOf(find(name))!.percent).toBe(whole);
    expect(shareOf(find(name))!.source).toContain('mean of four static figures');
  });

  test('a peak says that it is one', () => {
    const peaks = shared.filter((movement) => shareOf(movement)!.source.startsWith('Ebben'));
    expect(peaks).toHaveLength(4);
    for (const movement of peaks) expect(shareOf(movement)!.source).toContain('peak');
  });

  test.each([
    'Inverted Row',
    'Decline Push-up',
    'Ring Push-up',
    'Nordic Curl',
    'Split Squat',
    'Glute Bridge',
  ])('%s has no published share here and so states none', (name) =>
    expect(textsOf(find(name), 'bodyweight')).toEqual([]),
  );
});
