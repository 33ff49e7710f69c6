import type { Entry, FileModel } from '../model/entry.ts';
import type { Problem, Written } from '../model/source.ts';
import { foldName } from '../text/names.ts';
import type { FileProblem } from './check-calendar.ts';
import { type CheckContext, problem } from './check-context.ts';

/** An entry that defines a name. */
export type Definition = Extract<Entry, { readonly kind: 'exercise' | 'athlete' | 'place' | 'plan' }>;

/** Names and other spellings that an earlier definition has. To replace a built-in movement is what `exercise` is for. */
export function* checkDefinedTwice(
  entry: Definition,
  { practice, uri, line }: CheckContext,
): Iterable<Problem> {
  if (!entry.name) return;
  const spellings: readonly Written[] =
    entry.kind === 'exercise' ? [entry.name, ...entry.also] : [entry.name];
  for (const spelling of spellings) {
    const [first] = practice.findAllDefined(entry.kind, spelling.text);
    if (!first || first.entry === entry) continue;
    const place = describePlace(first.uri, first.line, uri);
    const other = foldName(first.name) === foldName(spelling.text) ? '' : ` as ${first.name}`;
    const where = first.uri === uri && first.line < line ? `above, in line ${first.line + 1}` : place;
    yield problem(
      'defined-twice',
      spelling.span,
      `${spelling.text} is defined${other} ${where}, and that definition counts: keep one of them`,
    );
  }
}

/** Units are said once for a whole file, wherever that stands. */
export function checkUnitsTwice({ entries }: FileModel): FileProblem[] {
  const [first, ...others] = entries.filter(({ entry }) => entry.kind === 'units');
  return others.map(({ line, entry }) => {
    const message = `The units of the file stand in line ${first!.line + 1}, and hold for all of it: take this line out`;
    return { entryLine: line, problem: problem('defined-twice', entry.header, message) };
  });
}

/** `in athletes.plim, line 4`; the file is left out where it is the same one. */
export function describePlace(uri: string, line: number, from: string): string {
  if (uri === from) return `in line ${line + 1}`;
  const file = uri.slice(uri.lastIndexOf('/') + 1);
  return `in ${safeDecode(file)}, line ${line + 1}`;
}

function safeDecode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
