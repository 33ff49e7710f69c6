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
  readonly records: readonly SessionRecord[];
  readonly athlete: AthleteEntry | undefined;
  readonly list: readonly BodyMass[];
}

/** Weigh-ins by athlete, from definitions and from sessions, in order of days. */
export class WeighIns {
  private readonly practice: Practice;
  private readonly known = new Map<string, Known>();

  constructor(practice: Practice) {
    this.practice = practice;
  }

  /** The list and what is in it stay the same objects as long as they say the same. */
  of(athlete: string): readonly BodyMass[] {
    const records = this.practice.sessionsOf(athlete);
    const entry = this.practice.findAthlete(athlete)?.entry;
    const known = this.known.get(athlete);
    if (known?.records === records && known.athlete === entry) return known.list;
    const fresh = collect(entry, records);
    const list = known && saySame(known.list, fresh) ? known.list : fresh;
    this.known.set(athlete, { records, athlete: entry, list });
    return list;
  }
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
