import { rangeBetween } from '../formatting/file-edit.ts';
import { findChunk } from './entry-chunks.ts';
import { appendEntry, findHeader, linesOf } from './find-lines.ts';
import { findLibraryFile } from './library-file.ts';
import type { Rewriter } from './rewrite.ts';

/** Takes an exercise with its comments to the file that holds most exercises. */
export const moveDefinition: Rewriter = (request) => {
  const { practice, uri } = request;
  const placed = findHeader(request, 'exercise');
  const target = findLibraryFile(practice);
  if (!placed?.entry.name || target === undefined || target === uri) return undefined;
  const texts = linesOf(request);
  const { from, to } = findChunk(texts, placed);
  // The blank lines behind it go too, so that the entries around it keep their distance.
  let end = to;
  while (end < texts.length - 1 && texts[end]!.trim() === '') end++;
  const range =
    end < texts.length
      ? rangeBetween(from, 0, end, 0)
      : rangeBetween(from, 0, texts.length - 1, texts.at(-1)!.length);
  return {
    title: `Move ${placed.entry.name.text} to ${nameOf(target)}`,
    kind: 'refactor.move',
    edits: [
      { uri, range, newText: '' },
      { uri: target, ...appendEntry(practice.file(target)!.lines, texts.slice(from, to)) },
    ],
  };
};

function nameOf(uri: string): string {
  const name = uri.slice(uri.lastIndexOf('/') + 1);
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
