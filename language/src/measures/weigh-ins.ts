import { toDayNumber } from '../calendar/iso-date.ts';
import type { AthleteEntry } from '../model/entry.ts';
import type { SessionRecord } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';

/** A weigh-in. */
export interface BodyMass {
  readonly grams: number;
  /** Days since 1970-01-01. */
  readonly day: number;
}

interface Known {
  /** Of the practice, when the list was last known to be right. */
  readonly edition: number;
  /** By definitions it may be another whose sessions those are that name nobody. */
  readonly definitionsVersion: number;
  readonly records: readonly SessionRecord[];
  readonly athlete: AthleteEntry | undefined;
  readonly list: readonly BodyMass[];
}

/** What a session says of its movements is no weigh-in. */
const OF_NO_MOVEMENT: ReadonlySet<string> = new Set();

/** Weigh-ins by athlete, from definitions and from sessions, in order of days. */
export class WeighIns {
  private readonly practice: Practice;
  private readonly known = new Map<string, Known>();

  constructor(practice: Practice) {
    this.practice = practice;
  }

  /** The list and what is in it stay the same objects as long as they say the same. */
  of(athlete: string): readonly BodyMass[] {
    const { edition, definitionsVersion } = this.practice;
    const records = this.practice.sessionsOf(athlete);
    const entry = this.practice.findAthlete(athlete)?.entry;
    const known = this.known.get(athlete);
    const isSame =
      known && known.athlete === entry && (known.records === records || this.isStillRight(athlete, known));
    const list = isSame ? known.list : collectAgain(entry, records, known?.list);
    this.known.set(athlete, { edition, definitionsVersion, records, athlete: entry, list });
    return list;
  }

  /** Whether no session of theirs was changed but for what it says of movements. */
  private isStillRight(athlete: string, known: Known): boolean {
    const { practice } = this;
    return (
      known.definitionsVersion === practice.definitionsVersion &&
      !practice.hasChangedSince(known.edition, athlete, Number.POSITIVE_INFINITY, OF_NO_MOVEMENT)
    );
  }
}

function collectAgain(
  athlete: AthleteEntry | undefined,
  records: readonly SessionRecord[],
  before: readonly BodyMass[] | undefined,
): readonly BodyMass[] {
  const fresh = collect(athlete, records);
  return before && saySame(before, fresh) ? before : fresh;
}

function saySame(a: readonly BodyMass[], b: readonly BodyMass[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ grams, day }, index) => grams === b[index]!.grams && day === b[index]!.day)
  );
}

function collect(athlete: AthleteEntry | undefined, records: readonly SessionRecord[]): BodyMass[] {
  const weighIns = (athlete?.weighIns ?? []).map(({ mass, date }) => ({
    grams: mass.grams,
    day: toDayNumber(date),
  }));
  for (const { entry, day, groupSize } of records)
    if (entry.bodyweight && groupSize === 1) weighIns.push({ grams: entry.bodyweight.mass.grams, day });
  // A weigh-in of the session itself comes after one of the definition on the same day.
  return weighIns.sort((a, b) => a.day - b.day);
}
