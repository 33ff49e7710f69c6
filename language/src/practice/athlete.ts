import type { IsoDate } from '../calendar/iso-date.ts';
import type { AthleteEntry, PlaceEntry, PlanEntry, SessionEntry } from '../model/entry.ts';

interface Defined<T> {
  readonly name: string;
  readonly key: string;
  readonly entry: T;
  readonly uri: string;
  readonly line: number;
}

export type Athlete = Defined<AthleteEntry>;
export type Place = Defined<PlaceEntry>;
export type Plan = Defined<PlanEntry>;

/** One athlete's part in a session; a group's session gives one for each. */
export interface SessionRecord {
  readonly entry: SessionEntry;
  readonly uri: string;
  /** Line of the session's header in its file. */
  readonly line: number;
  readonly date: IsoDate;
  /** Days since 1970-01-01. */
  readonly day: number;
  /** Folded name, empty where the session names nobody and the workspace defines nobody. */
  readonly athlete: string;
  /** Which of the group's cells are this athlete's, and how many there are. */
  readonly index: number;
  readonly groupSize: number;
}
