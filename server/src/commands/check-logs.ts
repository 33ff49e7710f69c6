import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import type { FileProblem } from '@plimsoll/language/checks/check-file';
import { listRests } from '@plimsoll/language/checks/file-outline';
import { type CheckCache, hash } from './check-cache.ts';
import { PartlyRead } from './partly-read.ts';
import type { ReadLog } from './read-paths.ts';

type Found = ReadonlyMap<string, readonly FileProblem[]>;

/** The problems of each log, by URI. */
export function checkLogs(logs: readonly ReadLog[], today: IsoDate): Found {
  const read = new PartlyRead(logs);
  const uris = logs.map(({ uri }) => uri);
  read.read(uris);
  return new Map(uris.map((uri) => [uri, read.check(uri, today)]));
}

/**
 * The same with what earlier runs left. What the cache knows of contents like these is not looked for again; a log is
 * read into facts only if its own content is new, or if that of something that rests on it is.
 */
export function checkWithCache(logs: readonly ReadLog[], today: IsoDate, cache: CheckCache): Found {
  const read = new PartlyRead(logs);
  const hashes = new Map(logs.map(({ uri, text }) => [uri, hash(text)] as const));
  const outlines = new Map(
    logs.map(({ uri }) => [uri, cache.outline(hashes.get(uri)!, () => read.outline(uri))] as const),
  );
  const rests = listRests(outlines);
  const digests = new Map<readonly string[], string>();
  const digest = (uris: readonly string[]): string => {
    const known = digests.get(uris) ?? hash(...uris.flatMap((uri) => [uri, hashes.get(uri)!]));
    digests.set(uris, known);
    return known;
  };
  return new Map(
    logs.map(({ uri }) => {
      const rest = rests.get(uri)!;
      const find = (): readonly FileProblem[] => {
        read.read(rest);
        return read.check(uri, today);
      };
      return [uri, cache.problems(hash(today, uri, digest(rest)), find)];
    }),
  );
}
