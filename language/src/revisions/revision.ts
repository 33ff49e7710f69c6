/** What changed between two versions of a practice's files, in facts: what was written, what it asks for, what it costs. */
import type { Result } from '../measures/result.ts';
import type { MassUnit } from '../model/quantity.ts';
import type { PlanTotals } from '../plans/plan-totals.ts';

export interface Revision {
  /** Files in which two versions stand side by side: nothing inside was compared. */
  readonly conflicts: readonly ConflictedFile[];
  readonly files: readonly FileChange[];
  readonly plans: readonly PlanRevision[];
  readonly sessions: readonly SessionRevision[];
  /** Movements, athletes, places and units. */
  readonly definitions: readonly DefinitionRevision[];
}

/** Lines from 1, the markers included. */
export interface ConflictedFile {
  readonly path: string;
  readonly side: 'before' | 'after';
  readonly regions: readonly { readonly first: number; readonly last: number }[];
}

export type FileChange =
  | { readonly change: 'added' | 'removed'; readonly path: string }
  | { readonly change: 'renamed'; readonly path: string; readonly was: string };

/** A line of canonical text that is new (`after` alone), gone (`before` alone) or another now. */
export interface TextChange {
  readonly before?: string;
  readonly after?: string;
}

export type EntryChange = 'added' | 'removed' | 'changed';

interface EntryRevision {
  readonly change: EntryChange;
  readonly path: string;
  readonly name: string;
  /** The name before, where it was another. */
  readonly was?: string;
}

export interface DefinitionRevision extends EntryRevision {
  readonly kind: 'exercise' | 'athlete' | 'place' | 'units' | 'unknown';
  readonly texts: readonly TextChange[];
}

/** Movements and blocks that changed in the days of a plan, or in a session. */
export interface TrainingChanges {
  readonly blocks: readonly BlockChange[];
  readonly lines: readonly LineChange[];
}

export interface SessionRevision extends EntryRevision, TrainingChanges {
  readonly texts: readonly TextChange[];
  /** One for each athlete, of a session that changed. */
  readonly effects: readonly SessionEffect[];
}

/** What a revision of a session changes for one athlete, of what was done. */
export interface SessionEffect {
  /** As spelt in the session; empty where it names nobody. */
  readonly athlete: string;
  readonly unit: MassUnit;
  readonly sets: Result;
  /** Kilograms; absent where neither version weighs anything. */
  readonly volume?: Result;
}

export interface PlanRevision extends EntryRevision, TrainingChanges {
  /** Line of the plan's header in its file, from 0, as it is now; absent where the plan is gone. */
  readonly line?: number;
  /** Settings, notes and names of days. */
  readonly texts: readonly TextChange[];
  /** One for each athlete of the plan. */
  readonly effects: readonly PlanEffect[];
}

export interface BlockChange {
  /** `day 1 Squat`; empty in a session. */
  readonly day: string;
  readonly kind: 'added' | 'removed' | 'changed' | 'reordered';
  /** `B circuit`. */
  readonly block: string;
  /** Its settings beside the kind (`3 rounds`, `rest 1:30`); where it was reordered, its movements. */
  readonly texts: readonly TextChange[];
}

export type AspectName =
  | 'sets'
  | 'reps'
  | 'load'
  | 'rating'
  | 'rest'
  | 'progression'
  | 'tempo'
  | 'setting'
  | 'weeks'
  | 'other'
  | 'note';

/** One thing that a line asks for otherwise; a side without it is empty. */
export interface Aspect {
  readonly what: AspectName;
  readonly before: string;
  readonly after: string;
}

export interface LineChange {
  readonly kind: 'added' | 'removed' | 'swapped' | 'moved' | 'changed';
  /** Of a removed line the day that it stood in; empty in a session. */
  readonly day: string;
  /** `B circuit`. */
  readonly block: string;
  /** Where a moved line stood: another day, or another block of the same. */
  readonly from?: string;
  readonly movement: string;
  /** The movement that a swapped line had. */
  readonly was?: string;
  /** `week 5`, `warmup`, `test`: what stands before the name. */
  readonly prefix: string;
  /** What the line asks for, `3x5 @ 70%`. */
  readonly before?: string;
  readonly after?: string;
  readonly aspects: readonly Aspect[];
  /** What changed in few words: `3x5 → 4x5 @ 70%`; empty where only the place did. */
  readonly text: string;
}

/** What a plan asks for in one week. */
export interface PlanWeek extends PlanTotals {
  readonly week: number;
  /** Kilograms; zero where nothing weighs anything, undefined where it is not known. */
  readonly kilograms?: number;
  /** Mean of the predicted time of its days. */
  readonly secondsADay?: number;
}

export interface WeekEffect {
  readonly week: number;
  readonly before?: PlanWeek;
  readonly after?: PlanWeek;
}

/** What a revision of a plan changes for one athlete. Differences are means over the weeks that both versions have. */
export interface PlanEffect {
  /** As spelt in the plan; empty where it names nobody. */
  readonly athlete: string;
  readonly unit: MassUnit;
  readonly weeks: readonly WeekEffect[];
  /** Sets a week. */
  readonly sets: Result;
  /** Kilograms a week. */
  readonly volume?: Result;
  /** Seconds a day. */
  readonly time?: Result;
  /** Points of percent of the max. */
  readonly intensity?: Result;
  /** Hard sets a week of the muscles for which they change, the largest change first. */
  readonly muscles: readonly { readonly name: string; readonly result: Result }[];
}
