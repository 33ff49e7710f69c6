import { describe, expect, test } from 'vitest';
import {
  isAdded,
  listSeriesSets,
  nameMovement,
  readExternal,
} from '../../../language/src/measures/series-sets.ts';
import { NAME, readWorks } from './read-works.ts';

const DEFINITIONS = `
athlete ${NAME}
athlete Wenna Flit
exercise Bar Press
  needs barbell
exercise Hang Pull
  bodyweight 95%, for the sums of this test
exercise Hand Press
  needs dumbbell
exercise Long Hold
  work hold
exercise Floor Wave
`;

const HEADER = `session 2026-02-02 ${NAME} at Net Attic`;
const read = (lines: string, header = HEADER) =>
  readWorks(DEFINITIONS, `${header}\n  ${lines}\n`).sessions[0]!;

describe('the working sets of strength work', () => {
  test('in the order of their lines, each with its series and written set', () => {
    const sets = listSeriesSets(
      read(
        'Bar Press: 2x5 @ 60 kg, 3 @ 70 kg, setting Pins low\n  Hand Press: 8 @ 2x12 kg\n  Unlisted Thing: 4 @ 20 kg',
      ),
    );
    expect(sets.map(({ series, setNumber, work }) => [series.key, setNumber, work.reps])).toEqual([
      ['bar press | pins low', 1, 5],
      ['bar press | pins low', 1, 5],
      ['bar press | pins low', 3, 3],
      ['hand press | two implements', 1, 8],
      ['unlisted thing', 1, 4],
    ]);
    expect(sets.map(({ movement }) => movement?.name)).toEqual([
      'Bar Press',
      'Bar Press',
      'Bar Press',
      'Hand Press',
      undefined,
    ]);
    expect(sets[0]!.block.total.sets).toBe(5);
  });

  test('without warm-ups, cooldowns, and what is no strength work', () => {
    const lines =
      'straight\n    warmup Bar Press: 5 @ 20 kg\n    Long Hold: 30 s\n  cooldown\n    Bar Press: 5 @ 20 kg';
    expect(listSeriesSets(read(lines))).toEqual([]);
  });

  test('of each athlete of a group with the settings of their own cell', () => {
    const { works } = readWorks(
      DEFINITIONS,
      `session 2026-02-02 ${NAME} | Wenna Flit\n  Bar Press: 5 @ 60 kg, setting Pins low | 5 @ 40 kg\n`,
    );
    const keys = [NAME, 'Wenna Flit'].map((name) => {
      const work = works.of(works.practice.sessionsOf(name)[0]!);
      return listSeriesSets(work).map(({ series }) => series.key);
    });
    expect(keys).toEqual([['bar press | pins low'], ['bar press']]);
  });
});

test('a movement is named as it is defined, else as it was written', () => {
  const { works } = readWorks(DEFINITIONS, '');
  expect(nameMovement(works.practice.findMovement('bar-press'), 'bar-press')).toEqual({
    key: 'bar press',
    name: 'Bar Press',
  });
  expect(nameMovement(undefined, 'Unlisted Thing')).toEqual({
    key: 'unlisted thing',
    name: 'Unlisted Thing',
  });
});

describe('what is in the hands, beside the body', () => {
  const load = (line: string) => {
    const work = read(line);
    const { set } = work.blocks[0]!.sets[0]!;
    return { load: set.group.load, movement: work.context.findMovement(set.line.name.text) };
  };

  // Grams of one implement, and whether they come on top of the body.
  test.each<[string, number | undefined, boolean]>([
    ['Bar Press: 5 @ 60 kg', 60_000, false],
    ['Bar Press: 5 @ 60 kg + 20 kg chain', 60_000, false],
    ['Hand Press: 5 @ 2x24 kg', 24_000, false],
    ['Hand Press: 5 @ 24&16 kg', undefined, false],
    ['Bar Press: 5 @ 50-60 kg', undefined, false],
    ['Bar Press: 5 @ ?', undefined, false],
    ['Bar Press: 5', undefined, false],
    ['Floor Wave: 5', 0, false],
    ['Floor Wave: 5 @ red band', undefined, false],
    ['Floor Wave: 5 @ bw', 0, true],
    ['Hang Pull: 5', 0, true],
    ['Hang Pull: 5 @ bw', 0, true],
    ['Hang Pull: 5 @ bw+10 kg', 10_000, true],
    ['Hang Pull: 5 @ bw-10 kg', -10_000, true],
    ['Hang Pull: 5 @ bw-pin 4', undefined, true],
    ['Hang Pull: 5 @ bw-red band', undefined, true],
    // However it was spelt, the movement moves the body too.
    ['Hang Pull: 5 @ 10 kg', 10_000, true],
  ])('%s', (line, grams, added) => {
    const { load: written, movement } = load(line);
    expect(readExternal(written, movement)).toBe(grams);
    expect(isAdded(written, movement)).toBe(added);
  });
});
