import type { IsoDate } from '../calendar/iso-date.ts';
import type { OneRepMaxFormula } from '../measures/one-rep-max.ts';
import type { Result } from '../measures/result.ts';
import type { MassUnit } from '../units/mass.ts';

/** What a lens shows over a line of a file. */
export interface Lens {
  readonly kind: 'session' | 'block' | 'line' | 'plan';
  /** Line of the file, from 0. */
  readonly line: number;
  readonly text: string;
  /** The numbers behind it, which can explain themselves. Most are never asked for, so that they wait until they are. */
  readonly explain: () => readonly Result[];
}

/** Which of a file's lenses. */
export interface LensPlace {
  readonly kind: Lens['kind'];
  /** Line of the file, from 0. */
  readonly line: number;
  /** Among those of its kind on that line, from 0. */
  readonly nth: number;
  /** What it says, where that is known without working it out. */
  readonly text?: string;
}

/** A quiet fact at a line's end. */
export interface LineHint {
  readonly line: number;
  readonly column: number;
  readonly text: string;
  readonly tooltip: string;
}

export interface LensOptions {
  readonly today: IsoDate;
  readonly formula: OneRepMaxFormula;
  /** Unit of the numbers shown, where the athlete states none. */
  readonly unit: MassUnit;
  /** Whether all files were read: until then nothing is compared with history. */
  readonly complete: boolean;
}
