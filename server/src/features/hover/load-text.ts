import type { Load } from '@plimsoll/language/model/quantity';
import { printMass } from '@plimsoll/language/units/mass';
import { printNumber } from '@plimsoll/language/units/number';

/** A load of the kinds that a max may have, in its own unit: `105 kg`, `2x18 kg`, `bw+20 kg`. */
export function toLoadText(load: Load): string | undefined {
  switch (load.kind) {
    case 'mass': {
      const text = printMass(load.mass.grams, load.mass.unit);
      if (load.other)
        return `${printNumber(load.mass.written, 2)}&${printMass(load.other.grams, load.other.unit)}`;
      return load.implements === 2 ? `2x${text}` : text;
    }
    case 'bodyweight':
      return `bw${load.mass ? `${load.sign}${printMass(load.mass.grams, load.mass.unit)}` : ''}`;
    default:
      return undefined;
  }
}
