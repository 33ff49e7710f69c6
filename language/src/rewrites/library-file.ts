import type { Practice } from '../practice/practice.ts';

/** The file that holds most exercises, where more of them belong; the first by name of several, none without any. */
export function findLibraryFile(practice: Practice): string | undefined {
  let best: { readonly uri: string; readonly count: number } | undefined;
  for (const uri of [...practice.fileUris()].sort()) {
    const count = practice.file(uri)!.model.entries.filter(({ entry }) => entry.kind === 'exercise').length;
    if (count > (best?.count ?? 0)) best = { uri, count };
  }
  return best?.uri;
}
