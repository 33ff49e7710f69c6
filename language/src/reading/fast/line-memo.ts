import type { MassUnit } from '../../units/mass.ts';
import type { TrainingPiece } from '../training-fold.ts';
import { HeadMemo } from './movement-head.ts';
import { TailMemo } from './session-header.ts';

/** Lines of a unit kept at once, twice: years of one athlete's work stand in fewer different ones. */
const MOST_LINES = 100_000;

/** By the line's place in its entry: its text, and what it says. */
type Lines = (Map<string, TrainingPiece> | undefined)[];

/** What lines said in files of one unit of bare numbers. */
export class UnitMemo {
  #young: Lines = [];
  #old: Lines = [];
  #size = 0;

  find(index: number, text: string): TrainingPiece | undefined {
    return this.#young[index]?.get(text) ?? this.#findOld(index, text);
  }

  #findOld(index: number, text: string): TrainingPiece | undefined {
    const old = this.#old[index]?.get(text);
    if (old) this.keep(index, text, old);
    return old;
  }

  keep(index: number, text: string, piece: TrainingPiece): void {
    if (this.#size >= MOST_LINES) {
      this.#old = this.#young;
      this.#young = [];
      this.#size = 0;
    }
    const known = this.#young[index] ?? new Map<string, TrainingPiece>();
    this.#young[index] = known;
    known.set(text, piece);
    this.#size++;
  }
}

/**
 * What lines said when they were read before. A log says the same again and again, so a line of the same text at the
 * same place of its entry (spans count from there) is one and the same fact wherever it stands: it is read once, takes
 * room once, and what follows from it alone can be remembered by it. The longest unused are forgotten.
 */
export class LineMemo {
  readonly tails = new TailMemo();
  readonly heads = new HeadMemo();
  readonly #byUnit = new Map<MassUnit | undefined, UnitMemo>();

  of(unit: MassUnit | undefined): UnitMemo {
    const known = this.#byUnit.get(unit) ?? new UnitMemo();
    this.#byUnit.set(unit, known);
    return known;
  }
}
