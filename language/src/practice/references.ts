import type { FileModel } from '../model/entry.ts';
import type { Span } from '../model/source.ts';
import { foldName } from '../text/names.ts';
import type { Athlete, Place, Plan } from './athlete.ts';
import { listMentions, type Mention, type NamedKind } from './mentions.ts';
import type { Movement } from './movement.ts';
import type { Practice } from './practice.ts';

/** A mention and where in all files it stands: `line` counts from the file's first. */
export interface Reference {
  readonly uri: string;
  readonly line: number;
  readonly span: Span;
  readonly mention: Mention;
}

export type Definition = Movement | Athlete | Place | Plan;

const HEADERS = { movement: 'exercise', athlete: 'athlete', place: 'place', plan: 'plan' } as const;

/** What a name stands for: the workspace's definitions, the one that counts first, or else the built-in one. */
export function findDefinitions(practice: Practice, kind: NamedKind, name: string): readonly Definition[] {
  const own = practice.findAllDefined(HEADERS[kind], name);
  if (own.length > 0 || kind !== 'movement') return own;
  const builtIn = practice.findMovement(name);
  return builtIn ? [builtIn] : [];
}

/** Every spelling that stands for the same thing as a name, folded; the name alone where nothing defines it. */
export function listSpellings(practice: Practice, kind: NamedKind, name: string): readonly string[] {
  const movement = kind === 'movement' ? practice.findMovement(name) : undefined;
  if (!movement) return [foldName(name)];
  const spellings = [movement.key, ...movement.entry.also.map(({ text }) => foldName(text))];
  return [...new Set(spellings)].filter((spelling) => practice.findMovement(spelling)?.key === movement.key);
}

/** All places where something is defined or mentioned, under any of its spellings, in order of file and place. */
export function findReferences(practice: Practice, kind: NamedKind, name: string): readonly Reference[] {
  return findSpelt(practice, kind, listSpellings(practice, kind, name));
}

/** All places where a name is written in one of these spellings (folded). */
export function findSpelt(
  practice: Practice,
  kind: NamedKind,
  keys: readonly string[],
): readonly Reference[] {
  const index = indexes.get(practice) ?? new MentionIndex(practice);
  indexes.set(practice, index);
  return index.find(kind, new Set(keys));
}

/** The places of one file alone, for what is asked with every move of the cursor. */
export function findWithin(
  { uri, entries }: FileModel,
  kind: NamedKind,
  keys: readonly string[],
): readonly Reference[] {
  const wanted = new Set(keys);
  const found = entries.flatMap(({ line, entry }) =>
    listMentions(entry)
      .filter((mention) => mention.kind === kind && wanted.has(mention.key))
      .map((mention): Reference => {
        const { span } = mention.written;
        return { uri, line: line + span.line, span, mention };
      }),
  );
  return found.sort((a, b) => a.line - b.line || a.span.start - b.span.start);
}

const indexes = new WeakMap<Practice, MentionIndex>();

/**
 * Knows which files hold which names. It is brought up to date when it is asked: files that were not read anew since
 * are told by the identity of their model, and no search looks into a file that does not hold the name.
 */
class MentionIndex {
  private readonly practice: Practice;
  private readonly files = new Map<string, { model: FileModel; names: ReadonlySet<string> }>();
  private readonly urisByName = new Map<string, Set<string>>();

  constructor(practice: Practice) {
    this.practice = practice;
  }

  find(kind: NamedKind, keys: ReadonlySet<string>): readonly Reference[] {
    this.update();
    const uris = new Set([...keys].flatMap((key) => [...(this.urisByName.get(`${kind} ${key}`) ?? [])]));
    return [...uris].sort().flatMap((uri) => findWithin(this.files.get(uri)!.model, kind, [...keys]));
  }

  private update(): void {
    const present = new Set(this.practice.fileUris());
    for (const uri of [...this.files.keys()]) if (!present.has(uri)) this.forget(uri);
    for (const uri of present) {
      const { model } = this.practice.file(uri)!;
      if (this.files.get(uri)?.model === model) continue;
      this.forget(uri);
      this.learn(uri, model);
    }
  }

  private learn(uri: string, model: FileModel): void {
    const names = new Set<string>();
    for (const { entry } of model.entries)
      for (const { kind, key } of listMentions(entry)) names.add(`${kind} ${key}`);
    this.files.set(uri, { model, names });
    for (const name of names) {
      const uris = this.urisByName.get(name) ?? new Set();
      this.urisByName.set(name, uris.add(uri));
    }
  }

  private forget(uri: string): void {
    for (const name of this.files.get(uri)?.names ?? []) {
      const uris = this.urisByName.get(name)!;
      uris.delete(uri);
      if (uris.size === 0) this.urisByName.delete(name);
    }
    this.files.delete(uri);
  }
}
