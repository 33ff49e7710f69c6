import type { IsoDate } from '../calendar/iso-date.ts';
import type { Cell, Load, Mass, MassUnit, Modifier, Quantity, SetGroup, Step } from './quantity.ts';
import type { Problem, Span, Written } from './source.ts';

/** One movement's line in a session or a plan. */
export interface MovementLine {
  readonly kind: 'movement';
  readonly name: Written;
  readonly purpose: 'work' | 'warmup' | 'test';
  /** `week 5 …`: for one week of a plan only. */
  readonly week?: number;
  /** `A1`: letter of the superset it was written into. */
  readonly label?: Written;
  readonly cells: readonly Cell[];
  /** Modifiers after the last cell, for the whole line. */
  readonly modifiers: readonly Modifier[];
  readonly notes: readonly Written[];
  /** Part of the line could not be read: what was read counts, and totals say "at least". */
  readonly broken: boolean;
  readonly span: Span;
}

export type BlockKind =
  | 'straight'
  | 'circuit'
  | 'superset'
  | 'giant set'
  | 'every'
  | 'amrap'
  | 'for time'
  | 'intervals'
  | 'warmup'
  | 'cooldown';

/** How a block ended: `done in 9:48`, `done 2 of 4 rounds`, `done 4 rounds + 12 cal + 5`. */
export interface Done {
  readonly seconds?: number;
  readonly rounds?: number;
  readonly of?: number;
  readonly plus: readonly Quantity[];
  readonly span: Span;
}

/** One recorded time; `undefined` is `?`. */
export type RoundTime = number | undefined;

/** `rest 0:20` on a line of its own, after the movement line with that index (-1: before the first). */
export interface RestBetween {
  readonly after: number;
  readonly seconds: number;
  /** Upper end of a plan's range. */
  readonly high?: number;
  readonly span: Span;
}

/** A block: its header's settings, its lines, and what was recorded of it. A log without a header has one implicit block. */
export interface Block {
  readonly kind: BlockKind;
  readonly implicit: boolean;
  readonly letter?: string;
  readonly rounds?: number;
  readonly passes: number;
  /** Seconds of rest between rounds, as planned; a plan may give a range. */
  readonly rest?: Range;
  readonly cap?: number;
  readonly alternating: boolean;
  /** `every 1:00 for 10:00`: both in seconds. */
  readonly every?: { readonly interval: number; readonly total?: number };
  /** `amrap 12:00`. */
  readonly window?: number;
  /** `intervals 0:40 on, 0:20 off`, `intervals 6 x 500 m`. */
  readonly intervals?: {
    readonly on?: number;
    readonly off?: number;
    readonly count?: number;
    readonly work?: Quantity;
  };
  readonly lines: readonly MovementLine[];
  readonly restsBetween: readonly RestBetween[];
  /** One list for each athlete of a group; empty where no time was written. */
  readonly times: readonly (readonly RoundTime[])[];
  readonly timesSpan?: Span;
  /** Rests really taken, round by round. */
  readonly restsTaken: readonly RoundTime[];
  /** `rest -10 s each week` in a plan. */
  readonly restSteps: readonly Modifier[];
  /** `4 rounds, +1 round each week to 6` in a plan. */
  readonly roundStep?: Step;
  readonly done?: Done;
  readonly notes: readonly Written[];
  readonly span: Span;
  /** Last line of the block (entry-relative). */
  readonly lastLine: number;
}

export interface Range {
  readonly low: number;
  readonly high?: number;
}

interface EntryBase {
  /** Number of lines the entry takes in its file, blank ones included. */
  readonly lineCount: number;
  /** The whole header line. */
  readonly header: Span;
  readonly notes: readonly Written[];
  /** Lines nothing recognised: kept, not counted. */
  readonly strays: readonly Written[];
  /** What reading alone found wrong. */
  readonly problems: readonly Problem[];
  /** `# ignore code` comments, by line. */
  readonly ignores: readonly { readonly line: number; readonly codes: readonly string[] }[];
}

export interface UnitsEntry extends EntryBase {
  readonly kind: 'units';
  readonly unit?: MassUnit;
}

export interface MuscleShare {
  readonly name: Written;
  /** 1 for direct. */
  readonly share: number;
  /** As written, `1/2`; absent for direct. */
  readonly fraction?: readonly [number, number];
}

export interface ExerciseEntry extends EntryBase {
  readonly kind: 'exercise';
  readonly name?: Written;
  readonly pattern?: Written;
  readonly work?: Written;
  readonly position?: Written;
  readonly trunk: readonly { readonly demand: 'resists' | 'moves'; readonly direction: Written }[];
  readonly muscles: readonly MuscleShare[];
  readonly needs: readonly Written[];
  readonly repMoves?: 'one' | 'both';
  /** Share of body mass that counts, 0.69. */
  readonly bodyShare?: {
    readonly share: number;
    readonly percent: number;
    readonly source?: string;
    readonly span: Span;
  };
  readonly countsContacts: boolean;
  readonly also: readonly Written[];
  readonly easier: readonly Written[];
  readonly harder: readonly Written[];
  readonly setups: readonly Written[];
  readonly cues: readonly Written[];
  readonly cautions: readonly Written[];
}

export interface PlaceEntry extends EntryBase {
  readonly kind: 'place';
  readonly name?: Written;
  readonly bars: readonly Mass[];
  readonly plates: readonly { readonly count: number; readonly mass: Mass }[];
  readonly collars?: Mass;
  readonly dumbbells: readonly MassRange[];
  readonly kettlebells: readonly Mass[];
  readonly stacks: readonly (MassRange & { readonly name: Written })[];
  readonly has: readonly Written[];
}

/** `4-32 by 2 kg pairs`. */
export interface MassRange {
  readonly low: Mass;
  readonly high: Mass;
  readonly step: Mass;
  readonly sold?: 'pairs' | 'singles';
}

export interface AthleteEntry extends EntryBase {
  readonly kind: 'athlete';
  readonly name?: Written;
  readonly born?: number;
  readonly sex?: 'female' | 'male';
  readonly units?: MassUnit;
  readonly weighIns: readonly { readonly mass: Mass; readonly date: IsoDate; readonly span: Span }[];
  readonly maxes: readonly {
    readonly movement: Written;
    readonly load?: Load;
    readonly date?: IsoDate;
    readonly span: Span;
  }[];
  readonly goals: readonly {
    readonly movement: Written;
    readonly set?: SetGroup;
    readonly by?: IsoDate;
    readonly span: Span;
  }[];
  readonly retests: readonly {
    readonly movement: Written;
    readonly masses: readonly Mass[];
    readonly date?: IsoDate;
    readonly span: Span;
  }[];
  readonly avoid: readonly {
    readonly what: Written;
    readonly until?: IsoDate;
    readonly reason?: string;
    readonly span: Span;
  }[];
  readonly away: readonly {
    readonly from?: IsoDate;
    readonly to?: IsoDate;
    readonly reason?: string;
    readonly span: Span;
  }[];
  readonly screened: readonly { readonly date: IsoDate; readonly by?: string; readonly span: Span }[];
}

/** A date as written; `date` is absent where no such day exists. */
export interface WrittenDate {
  readonly text: string;
  readonly date?: IsoDate;
  readonly span: Span;
}

/** Per athlete of a group; one value is for all. */
export interface PerAthlete<T> {
  readonly values: readonly T[];
  readonly span: Span;
}

export interface SessionFacts {
  readonly efforts?: PerAthlete<number | undefined>;
  /** Seconds. */
  readonly lasted?: PerAthlete<number | undefined>;
  readonly bodyweight?: { readonly mass: Mass; readonly span: Span };
  /** Hours. */
  readonly sleep?: { readonly hours: number; readonly span: Span };
  readonly readiness?: { readonly score: number; readonly span: Span };
  readonly pains: readonly { readonly score: number; readonly where?: string; readonly span: Span }[];
  readonly missed?: { readonly reason?: string; readonly span: Span };
}

export interface SessionEntry extends EntryBase, SessionFacts {
  readonly kind: 'session';
  readonly date?: WrittenDate;
  /** `07:10`, as written. */
  readonly clock?: string;
  readonly athletes: readonly Written[];
  readonly place?: Written;
  readonly plan?: { readonly name: Written; readonly week?: number; readonly day?: number };
  readonly blocks: readonly Block[];
}

export interface PlanDay {
  readonly number: number;
  readonly name?: string;
  readonly blocks: readonly Block[];
  readonly notes: readonly Written[];
  readonly span: Span;
}

export interface PlanEntry extends EntryBase {
  readonly kind: 'plan';
  readonly name?: Written;
  readonly athletes: readonly Written[];
  readonly place?: Written;
  readonly starts?: WrittenDate;
  readonly follows?: Written;
  readonly weeks?: { readonly count: number; readonly span: Span };
  readonly deloads: readonly {
    readonly week: number;
    readonly sets?: number;
    readonly load?: number;
    readonly span: Span;
  }[];
  readonly weekdays: readonly Written[];
  readonly alternate?: { readonly perWeek: number };
  readonly trainingMax?: number;
  readonly days: readonly PlanDay[];
}

/** Lines before any header, or under a header that nothing knows: read like a session's, in no total. */
export interface UnknownEntry extends EntryBase, SessionFacts {
  readonly kind: 'unknown';
  readonly title?: Written;
  readonly blocks: readonly Block[];
}

export type Entry =
  | UnitsEntry
  | ExerciseEntry
  | PlaceEntry
  | AthleteEntry
  | PlanEntry
  | SessionEntry
  | UnknownEntry;
export type EntryKind = Entry['kind'];

/** An entry and the line of the file it begins on. */
export interface PlacedEntry {
  readonly line: number;
  readonly entry: Entry;
}

/** Everything one file says. */
export interface FileModel {
  readonly uri: string;
  readonly entries: readonly PlacedEntry[];
  readonly units?: MassUnit;
}
