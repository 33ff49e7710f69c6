import type { Extent } from '@plimsoll/language/practice/extents';

/** A window shows about as many lines. */
const LINES_IN_SIGHT = 120;
/** An editor is given the lenses of so many lines above and below those in sight, so that it may scroll a while… */
const LINES_AROUND = 200;
/** …and is given others before it comes closer than this to the last of them. */
const LINES_LEFT = 80;

const TOP: Extent = { first: 0, last: LINES_IN_SIGHT };
const ALL: Extent = { first: 0, last: Number.POSITIVE_INFINITY };

/**
 * Which lines of each file an editor shows: what it tells, or, of one that tells nothing, what can be seen from the
 * lenses it asks about.
 */
export class Sight {
  /** Whether the editor tells what it shows. Until it does of a file, that is its top. */
  isTold = false;
  readonly #lines = new Map<string, Extent>();
  readonly #given = new Map<string, Extent>();

  /** The editor shows these lines. True, once, where the lenses that it was given do not reach far enough about them. */
  tell(uri: string, lines: Extent): boolean {
    this.#lines.set(uri, lines);
    const given = this.#given.get(uri);
    if (!given) return false;
    const isNearTop = given.first > 0 && lines.first - given.first < LINES_LEFT;
    const isAtEnd = isNearTop || given.last - lines.last < LINES_LEFT;
    if (isAtEnd) this.#given.delete(uri);
    return isAtEnd;
  }

  /** The editor asks about a line. What is in sight grows by it; where it would be too much, the editor was scrolled. */
  note(uri: string, line: number): void {
    if (this.isTold) return;
    const before = this.#lines.get(uri);
    const first = Math.min(line, before?.first ?? line);
    const last = Math.max(line, before?.last ?? line);
    this.#lines.set(uri, last - first < LINES_IN_SIGHT ? { first, last } : { first: line, last: line });
  }

  /** The lines in sight, if any are known. */
  of(uri: string): Extent | undefined {
    return this.#lines.get(uri) ?? (this.isTold ? TOP : undefined);
  }

  /** The lines whose lenses the editor is to be given, which it then has: all, unless it tells what it shows. */
  give(uri: string): Extent {
    const lines = this.isTold ? this.of(uri) : undefined;
    const given = lines ? { first: lines.first - LINES_AROUND, last: lines.last + LINES_AROUND } : ALL;
    this.#given.set(uri, given);
    return given;
  }

  forget(uri: string): void {
    this.#lines.delete(uri);
    this.#given.delete(uri);
  }
}
