import type { MassUnit } from '../../units/mass.ts';
import type { TrainingPiece } from '../training-fold.ts';
import { TailMemo } from './session-header.ts';

/** Lines kept at once, twice: years of one athlete's work stand in fewer different ones. */
const MOST_LINES = 100_000;

/** By the line's place in its entry: its text, and what it says. */
type Lines = (Map<string, TrainingPiece> | undefined)[];
/** By the unit of bare numbers. */
type Generation = Map<MassUnit | undefined, Lines>;

/**
 * What lines said when they were read before. A log says the same again and again, so a line of the same text at the
 * same place of its entry (spans count from there) is one and the same fact wherever it stands: it is read once, takes
 * room once, and what follows from it alone can be remembered by it. The longest unused are forgotten.
 */
export class LineMemo {
  readonly tails = new TailMemo();
  #young: Generation = new Map();
  #old: Generation = new Map();
  #size = 0;

  find(unit: MassUnit | undefined, index: number, text: string): TrainingPiece | undefined {
    const known = this.#young.get(unit)?.[index]?.get(text);
    if (known) return known;
    const old = this.#old.get(unit)?.[index]?.get(text);
    if (old) this.keep(unit, index, text, old);
    return old;
  }

  keep(unit: MassUnit | undefined, index: number, text: string, piece: TrainingPiece): void {
    if (this.#size >= MOST_LINES) {
      this.#old = this.#young;
      this.#young = new Map();
      this.#size = 0;
    }
    const lines: Lines = this.#young.get(unit) ?? [];
    this.#young.set(unit, lines);
    const known = lines[index] ?? new Map<string, TrainingPiece>();
    lines[index] = known;
    known.set(text, piece);
    this.#size++;
  }
}
