/** What a plan asks for on one day, worked out for one athlete: ordinary facts, and where each number comes from. */

import type { Result } from '../measures/result.ts';
import type { Block, MovementLine } from '../model/entry.ts';
import type { Load, Mass, SetGroup } from '../model/quantity.ts';
import type { PlanTurn } from './plan-calendar.ts';

export interface ProjectedLoad {
  /** As it is to be loaded; as the plan writes it where that cannot be worked out. */
  readonly load: Load;
  /** Kilograms of one implement (or of the added mass), with what went in; undefined where nothing was worked out. */
  readonly result?: Result;
  /** Unrounded grams of one implement; what an offset is taken from. */
  readonly grams?: number;
  /** Of a target the middle of its range. */
  readonly middle?: Mass;
  /** `80 % of 105 = 84`, `rpe 8 of e1RM 102`; undefined where the number is as written. */
  readonly derivation?: string;
  /** What a coach who reads the number must know: the place cannot load it, or its max is a lower bound. */
  readonly note?: string;
  /** Why there is no number: `no max of Back Squat is known`. */
  readonly unknown?: string;
}

export interface ProjectedSet {
  readonly group: SetGroup;
  readonly load?: ProjectedLoad;
  /** Of its drops that have one, in order. */
  readonly dropLoads: readonly ProjectedLoad[];
}

/** The set's own load and those of its drops. */
export function listLoads({ load, dropLoads }: ProjectedSet): ProjectedLoad[] {
  return load ? [load, ...dropLoads] : [...dropLoads];
}

export interface ProjectedLine {
  /** As the plan writes it, with all its cells and steps. */
  readonly source: MovementLine;
  /** As it stands that day: one cell, plain loads. */
  readonly line: MovementLine;
  readonly sets: readonly ProjectedSet[];
}

export interface ProjectedBlock {
  readonly block: Block;
  readonly lines: readonly ProjectedLine[];
}

export interface ProjectedDay {
  readonly turn: PlanTurn;
  readonly blocks: readonly ProjectedBlock[];
}
