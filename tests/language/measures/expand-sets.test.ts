import { describe, expect, test } from 'vitest';
import {
  countRounds,
  type ExpandedSet,
  expandBlock,
  findCell,
  lacksLoad,
} from '../../../language/src/measures/expand-sets.ts';
import { measureAmount } from '../../../language/src/measures/set-work.ts';
import { NAME, readWorks } from './read-works.ts';

const OTHER = 'Wenna Flit';
const DEFINITIONS = `athlete ${NAME}\nathlete ${OTHER}\nexercise Bar Press\n  needs barbell\n`;

function blockOf(lines: string, header = `session 2026-02-02 ${NAME}`) {
  const { sessions } = readWorks(DEFINITIONS, `${header}\n  ${lines}\n`);
  return sessions[0]!.record.entry.blocks[0]!;
}

/** `Bar Press 5 r1 g0`: amount, round and written group of each set; `part` where it was not finished. */
function list(sets: readonly ExpandedSet[]): string[] {
  return sets.map(({ line, amount, round, groupIndex, unfinished }) => {
    const done = amount && measureAmount(amount);
    return [
      line.name.text,
      done?.total ?? amount?.kind,
      round === undefined ? '-' : `r${round}`,
      `g${groupIndex}`,
      ...(unfinished ? ['part'] : []),
    ].join(' ');
  });
}

const expand = (lines: string): string[] => list(expandBlock(blockOf(lines)));

describe('the sets of a block', () => {
  test.each([
    ['a count is so many sets of one group', 'Bar Press: 2x5, 3 @ 20 kg', ['5 - g0', '5 - g0', '3 - g1']],
    // One number stands for every round; several are taken as they are written.
    [
      'one number is for each round',
      'circuit, 3 rounds\n    Bar Press: 5 @ 20 kg',
      ['5 r0 g0', '5 r1 g0', '5 r2 g0'],
    ],
    ['one for each round', 'circuit, 2 rounds\n    Bar Press: 5, 4 @ 20 kg', ['5 r0 g0', '4 r1 g1']],
    [
      'fewer than rounds stay as written',
      'circuit, 3 rounds\n    Bar Press: 5, 4 @ 20 kg',
      ['5 r0 g0', '4 r1 g1'],
    ],
    [
      'rounds that nobody counted are those written',
      'circuit\n    Bar Press: 5, 4 @ 20 kg',
      ['5 r0 g0', '4 r1 g1'],
    ],
    ['a skipped line is skipped once', 'circuit, 3 rounds\n    Bar Press: skipped', ['skipped r0 g0']],
    // 2 rounds of 2 passes are four sets: two in each round.
    [
      'one number is for each pass too',
      'circuit, 2 rounds x 2 passes\n    Bar Press: 5 @ 20 kg',
      ['5 r0 g0', '5 r0 g0', '5 r1 g0', '5 r1 g0'],
    ],
    [
      'one a round is done in each of its passes',
      'circuit, 2 rounds x 2 passes\n    Bar Press: 5, 4 @ 20 kg',
      ['5 r0 g0', '5 r0 g0', '4 r1 g1', '4 r1 g1'],
    ],
    [
      'one a pass is written out',
      'circuit, 2 rounds x 2 passes\n    Bar Press: 5, 4, 3, 2 @ 20 kg',
      ['5 r0 g0', '4 r0 g1', '3 r1 g2', '2 r1 g3'],
    ],
    [
      'every minute gives its rounds',
      'every 1:00 for 3:00\n    Bar Press: 2 @ 50 kg',
      ['2 r0 g0', '2 r1 g0', '2 r2 g0'],
    ],
    // 90 s in a window of 4:00 begin twice and end twice; the third is not finished.
    [
      'an interval that does not fit is none',
      'every 1:30 for 4:00\n    Bar Press: 2 @ 50 kg',
      ['2 r0 g0', '2 r1 g0'],
    ],
    ['straight sets have no round', 'straight\n    Bar Press: 5 @ 20 kg', ['5 - g0']],
    ['an amrap without its score is done once', 'amrap 10:00\n    Bar Press: 5 @ 20 kg', ['5 r0 g0']],
    [
      'rounds done, not planned',
      'circuit, 4 rounds\n    Bar Press: 5 @ 20 kg\n    done 2 of 4 rounds',
      ['5 r0 g0', '5 r1 g0'],
    ],
  ])('%s', (_name, lines, expected) => {
    expect(expand(lines)).toEqual(expected.map((set) => `Bar Press ${set}`));
  });

  test('lines that take turns share the rounds', () => {
    const lines = ', alternating\n    Bar Press: 2 @ 50 kg\n    Dip: 4';
    const turns = [
      'Bar Press 2 r0 g0',
      'Bar Press 2 r2 g0',
      'Bar Press 2 r4 g0',
      'Dip 4 r1 g0',
      'Dip 4 r3 g0',
    ];
    expect(expand(`every 1:00 for 5:00${lines}`)).toEqual(turns);
    expect(expand(`intervals 0:40 on, 0:20 off, 5 rounds${lines}`)).toEqual(turns);
    // In a circuit everything is done in each round all the same.
    expect(expand(`circuit, 1 rounds${lines}`)).toEqual(['Bar Press 2 r0 g0', 'Dip 4 r0 g0']);
  });

  test('more lines than rounds: the last ones have no turn', () => {
    expect(
      expand('every 1:00 for 1:00, alternating\n    Bar Press: 2 @ 50 kg\n    Dip: 4\n    Plank: 30 s'),
    ).toEqual(['Bar Press 2 r0 g0']);
  });

  test('a part round: finished movements, and the one that was not', () => {
    const lines =
      'amrap 12:00\n    Bar Press: 5 @ 20 kg\n    Dip: 10\n    Plank: 30 s\n    done 2 rounds + 5 + 4';
    expect(expand(lines)).toEqual([
      'Bar Press 5 r0 g0',
      'Bar Press 5 r1 g0',
      'Bar Press 5 r2 g0',
      'Dip 10 r0 g0',
      'Dip 10 r1 g0',
      'Dip 4 r2 g0 part',
      'Plank 30 r0 g0',
      'Plank 30 r1 g0',
    ]);
  });

  test('a part of a side counts both sides as asked', () => {
    const part = (done: number) => expand(`amrap 12:00\n    Dip: 5/side\n    done 0 rounds + ${done}`).at(-1);
    expect(part(9)).toBe('Dip 9 r0 g0 part');
    expect(part(10)).toBe('Dip 10 r0 g0');
  });

  test('calories of a movement asked for in reps finish nothing', () => {
    expect(expand('amrap 12:00\n    Dip: 5\n    done 1 rounds + 12 cal').at(-1)).toBe('Dip 12 r1 g0 part');
  });
});

describe('rounds', () => {
  test.each([
    ['as it ended', 'circuit, 4 rounds\n    Dip: 5\n    done 3 of 4 rounds', 3],
    ['an amrap by its score alone', 'amrap 10:00\n    Dip: 5\n    done 6 rounds', 6],
    ['an amrap without one', 'amrap 10:00\n    Dip: 5', undefined],
    ['as its header says', 'superset, 3 rounds\n    Dip: 5', 3],
    ['by the clock', 'every 2:00 for 10:00\n    Dip: 5', 5],
    ['whole ones', 'every 3:00 for 10:00\n    Dip: 5', 3],
    ['not known', 'circuit\n    Dip: 5', undefined],
    ['of straight sets', 'straight\n    Dip: 5', undefined],
  ])('%s', (_name, lines, expected) => {
    expect(countRounds(blockOf(lines))).toBe(expected);
  });
});

describe('whose cell', () => {
  const header = `session 2026-02-02 ${NAME} | ${OTHER}`;
  const block = blockOf('Bar Press: 5 @ 20 kg | 8 @ 10 kg\n  Dip: 4', header);

  test('one cell is for all, else each has their own', () => {
    const [press, dip] = block.lines;
    expect(findCell(press!, 1)).toBe(press!.cells[1]);
    expect(findCell(dip!, 1)).toBe(dip!.cells[0]);
    expect(findCell(press!, 2)).toBeUndefined();
  });

  test('and each their own sets', () => {
    expect(list(expandBlock(block, 0))).toEqual(['Bar Press 5 - g0', 'Dip 4 - g0']);
    expect(list(expandBlock(block, 1))).toEqual(['Bar Press 8 - g0', 'Dip 4 - g0']);
    // Nobody's cell gives no set.
    expect(list(expandBlock(block, 2))).toEqual(['Dip 4 - g0']);
  });
});

describe('a set without a load', () => {
  const lacks = (sets: string): boolean[] => {
    const line = blockOf(`Bar Press: ${sets}`).lines[0]!;
    return line.cells[0]!.sets.map((group) => lacksLoad(line, group));
  };

  test.each([
    ['lacks one behind a set that has its own', '5 @ 60 kg, 3', [false, true]],
    ['shares the one that follows', '5, 3 @ 60 kg', [false, false]],
    ['lacks none where none is written', '5, 3', [false, false]],
  ])('%s', (_name, sets, expected) => {
    expect(lacks(sets)).toEqual(expected);
  });
});
