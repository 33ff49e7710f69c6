import type { Cell, MassLoad, SetGroup } from '../model/quantity.ts';
import { printMass } from '../units/mass.ts';
import { printNumber } from '../units/number.ts';

/** A set with a mass that is written at it. */
export interface WrittenMass {
  readonly set: SetGroup & {
    readonly loadText: string;
    readonly loadSpan: NonNullable<SetGroup['loadSpan']>;
  };
  readonly load: MassLoad;
}

/** Masses as they stand on a line, not those shared by the sets before. */
export function listMasses(cells: readonly Cell[]): WrittenMass[] {
  return cells.flatMap(({ sets }) =>
    sets.flatMap((set) =>
      set.ownLoad && set.load?.kind === 'mass' && set.loadSpan && set.loadText !== undefined
        ? [{ set: set as WrittenMass['set'], load: set.load }]
        : [],
    ),
  );
}

/** `2x18 kg`, `24&16 kg`, `80 kg`. */
export function printMassLoad({ mass, implements: count, other }: MassLoad): string {
  if (other) return `${printPlain(mass.written)}&${printMass(other.grams, other.unit)}`;
  return `${count === 2 ? '2x' : ''}${printMass(mass.grams, mass.unit)}`;
}

/** A number as the notation writes it, without the space between thousands. */
export function printPlain(value: number): string {
  return printNumber(value, 3).replaceAll(' ', '');
}
