import type { Load, Mass, MassUnit } from '../../model/quantity.ts';
import { METRES_PER } from '../../units/distance.ts';
import { toGrams } from '../../units/mass.ts';
import type { LimitName } from '../../vocabulary/limits.ts';
import { within } from './amounts.ts';
import { giveUp, type LineCursor } from './line-cursor.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

const MASS_UNITS: ReadonlyMap<string, MassUnit> = new Map([
  ['kg', 'kg'],
  ['lb', 'lb'],
]);

/**
 * The weights of one line. A bare number takes the only unit of its line, which may stand behind it: it is filled in
 * when the line has been read.
 */
export class LineMasses {
  private readonly fileUnit: MassUnit | undefined;
  private readonly limit: LimitName;
  private readonly bare: Mutable<Mass>[] = [];
  private unit: MassUnit | undefined;
  private isMixed = false;

  constructor(fileUnit: MassUnit | undefined, limit: LimitName) {
    this.fileUnit = fileUnit;
    this.limit = limit;
  }

  take(cursor: LineCursor): Mass {
    const written = cursor.takeNumber();
    return this.make(written, cursor.takeFrom(MASS_UNITS));
  }

  make(written: number, unit: MassUnit | undefined): Mass {
    if (unit === undefined) {
      const mass = { grams: 0, written, unit: 'kg' as const };
      this.bare.push(mass);
      return mass;
    }
    if (this.unit !== undefined && this.unit !== unit) this.isMixed = true;
    this.unit = unit;
    return { grams: within(this.limit, toGrams(written, unit)), written, unit };
  }

  finish(): void {
    if (this.bare.length === 0) return;
    const unit = this.isMixed ? undefined : (this.unit ?? this.fileUnit);
    if (unit === undefined) giveUp();
    for (const mass of this.bare) {
      mass.unit = unit;
      mass.grams = within(this.limit, toGrams(mass.written, unit));
    }
  }
}

/** Words that are known to be no words of the notation. Any other kind of band is left to the parser. */
const BANDS =
  /(?:(?:red|blue|green|black|yellow|orange|purple|gr[ae]y|white|pink|light|medium|heavy|thick|thin) +)+band(?![a-z'])/iy;

function takeBand(cursor: LineCursor): string {
  return cursor.takeMatch(BANDS).split(/ +/).slice(0, -1).join(' ').toLowerCase();
}

const PACE = /\d+:\d\d\//y;
const PAIR = /[12] *x *(?=\d)/y;

/** The load behind `@`, without those that only plans have. */
export function takeLoad(cursor: LineCursor, masses: LineMasses): Load {
  if (cursor.takes('?')) return { kind: 'unrecorded' };
  if (cursor.takesWord('bw')) return takeBodyweight(cursor, masses);
  if (cursor.takesWord('pin')) {
    const pin = within('pin', cursor.takeNumber());
    return { kind: 'pin', pin, ...(cursor.takes('+') && { plus: masses.take(cursor) }) };
  }
  if (cursor.atWord) return { kind: 'band', band: takeBand(cursor) };
  PACE.lastIndex = cursor.at;
  if (PACE.test(cursor.text)) return takePace(cursor);
  return takeNumberLoad(cursor, masses);
}

/** `bw`, `bw+5 kg`, `bw-pin 9`, `bw-red band` */
function takeBodyweight(cursor: LineCursor, masses: LineMasses): Load {
  const sign = cursor.takes('+') ? '+' : cursor.takes('-') ? '-' : undefined;
  if (!sign) return { kind: 'bodyweight' };
  if (cursor.atDigit) return { kind: 'bodyweight', sign, mass: masses.take(cursor) };
  if (cursor.takesWord('pin')) return { kind: 'bodyweight', sign, pin: within('pin', cursor.takeNumber()) };
  return { kind: 'bodyweight', sign, band: takeBand(cursor) };
}

const PACE_UNITS: ReadonlyMap<string, keyof typeof METRES_PER> = new Map([
  ['m', 'm'],
  ['km', 'km'],
]);

/** `2:05/500 m` */
function takePace(cursor: LineCursor): Load {
  const value = cursor.takeSeconds();
  if (!cursor.takes('/')) giveUp();
  const distance = cursor.takeNumber();
  const metres = distance * METRES_PER[cursor.takeFrom(PACE_UNITS) ?? giveUp()];
  return value > 0 && metres > 0 ? { kind: 'setting', setting: 'pace', value, metres } : giveUp();
}

const SETTINGS: ReadonlyMap<string, readonly ['height' | 'power' | 'speed', LimitName]> = new Map([
  ['cm', ['height', 'height']],
  ['W', ['power', 'watts']],
  ['km', ['speed', 'speed']],
] as const);

/** `85 kg`, `2x18 kg`, `24&16 kg`, `20 kg left 18 kg right`, `80 kg + 20 kg chain`, `60 cm`, `180 W`, `8 km/h` */
function takeNumberLoad(cursor: LineCursor, masses: LineMasses): Load {
  PAIR.lastIndex = cursor.at;
  const counted = PAIR.test(cursor.text) ? cursor.takeWhole(1, 2) : undefined;
  if (counted !== undefined) cursor.takes('x');
  const written = cursor.takeNumber();
  if (counted === undefined) {
    const known = cursor.takeFrom(SETTINGS);
    if (known) {
      const [setting, limit] = known;
      if (setting === 'speed' && !(cursor.takes('/') && cursor.takesWord('h'))) giveUp();
      return { kind: 'setting', setting, value: within(limit, written) };
    }
    if (cursor.takes('&')) {
      const second = cursor.takeNumber();
      const unit = cursor.takeFrom(MASS_UNITS);
      const [mass, other] = [masses.make(written, unit), masses.make(second, unit)];
      return { kind: 'mass', mass, implements: 2, other };
    }
  }
  const mass = masses.make(written, cursor.takeFrom(MASS_UNITS));
  if (counted === undefined && cursor.takesWord('left')) {
    const right = masses.take(cursor);
    return cursor.takesWord('right') ? { kind: 'sides', left: mass, right } : giveUp();
  }
  const load = { kind: 'mass', mass, implements: counted === 2 ? 2 : 1 } as const;
  return cursor.takes('+') ? { ...load, ...takeAdded(cursor, masses) } : load;
}

function takeAdded(cursor: LineCursor, masses: LineMasses): { chain: Mass } | { band: string } {
  if (!cursor.atDigit) return { band: takeBand(cursor) };
  const chain = masses.take(cursor);
  return cursor.takesWord('chain') ? { chain } : giveUp();
}
