import { createRandom } from './random.ts';

/** An invented athlete: what the sessions are made from. */
export interface Lifter {
  readonly name: string;
  readonly folder: string;
  readonly seed: number;
  readonly unit: 'kg' | 'lb';
  readonly place: string;
  /** Base load of the back squat, in the athlete's unit; the other lifts are shares of it. */
  readonly squat: number;
  readonly dumbbell: number;
  /** In kilograms, whatever the unit: so are the bells of both places. */
  readonly kettlebell: number;
  readonly body: number;
  readonly born: number;
  /** Days of training, Monday is 1. Never Sunday: the group trains then. */
  readonly weekdays: readonly number[];
}

export const LOFT = 'Belfry Loft';
export const BARN = 'Thistledown Barn';

const FIRST = 'Quillon Ottoline Fenwick Marigold Basil Tamsin Ludo Philippa Corin Isaura'.split(' ');
const LAST =
  'Brambleworth Candlewick Pebblestone Mothersole Thimbleby Cloverhand Gannetry Dovewattle Harrowbell Inklefoot'.split(
    ' ',
  );
const WEEKDAYS = [
  [1, 3, 5],
  [2, 4, 6],
  [1, 4],
  [1, 2, 4, 6],
];

/** As many invented people as wanted, at most a hundred, always the same ones. */
export function createLifters(count: number): Lifter[] {
  return Array.from({ length: count }, (_, index) => {
    const random = createRandom(1000 + index);
    const first = FIRST[index % FIRST.length]!;
    const last = LAST[(index + Math.floor(index / FIRST.length)) % LAST.length]!;
    const unit = index % 4 === 2 ? 'lb' : 'kg';
    return {
      name: `${first} ${last}`,
      folder: `${first}-${last}`.toLowerCase(),
      seed: index,
      unit,
      place: unit === 'kg' ? LOFT : BARN,
      squat: unit === 'kg' ? random.integer(28, 52) * 2.5 : random.integer(30, 50) * 5,
      dumbbell: unit === 'kg' ? random.integer(8, 14) * 2 : random.integer(7, 11) * 5,
      kettlebell: random.pick([12, 16, 20, 24]),
      body: unit === 'kg' ? random.integer(56, 96) : random.integer(125, 210),
      born: random.integer(1961, 2002),
      weekdays: WEEKDAYS[index % WEEKDAYS.length]!,
    };
  });
}
