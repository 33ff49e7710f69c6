import { rangeBetween } from '../formatting/file-edit.ts';
import type { SessionEntry } from '../model/entry.ts';
import { findChunk } from './entry-chunks.ts';
import { linesOf } from './find-lines.ts';
import { type Rewriter, rewriteFile } from './rewrite.ts';

/** The sessions of the file by date and time of day, each with its comments; everything else keeps its place. */
export const sortSessions: Rewriter = (request) => {
  const texts = linesOf(request);
  const sessions = (request.practice.file(request.uri)?.model.entries ?? []).flatMap((placed) =>
    placed.entry.kind === 'session' && placed.entry.date?.date
      ? [{ key: keyOf(placed.entry), ...findChunk(texts, placed) }]
      : [],
  );
  // The order of equals stays.
  const sorted = sessions.toSorted((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  const moved = sessions.findIndex((session, index) => session !== sorted[index]);
  const last = sessions.findLastIndex((session, index) => session !== sorted[index]);
  if (moved < 0) return undefined;
  const lines: string[] = [];
  let next = sessions[moved]!.from;
  for (let index = moved; index <= last; index++) {
    const [place, session] = [sessions[index]!, sorted[index]!];
    // What stands between stays between.
    lines.push(...texts.slice(next, place.from), ...texts.slice(session.from, session.to));
    next = place.to;
  }
  const end = sessions[last]!.to - 1;
  const range = rangeBetween(sessions[moved]!.from, 0, end, texts[end]!.length);
  return rewriteFile(
    request,
    'Sort the sessions of this file by date',
    [{ range, newText: lines.join('\n') }],
    'source.sortSessions',
  );
};

function keyOf({ date, clock = '' }: SessionEntry): string {
  return `${date!.date} ${clock.padStart(5, '0')}`;
}
