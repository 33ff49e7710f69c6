/** Where a definition stands. */
interface Defined {
  readonly uri: string;
  readonly line: number;
}

/** Finds what is defined under a folded name. Everything is defined once; where it is not, the first by file counts. */
export class NameIndex<T extends Defined> {
  private readonly byKey = new Map<string, { uri: string; value: T }[]>();
  private readonly keysByFile = new Map<string, Set<string>>();

  private all: readonly T[] | undefined;

  add(uri: string, value: T, keys: readonly string[]): void {
    this.all = undefined;
    const fileKeys = this.keysByFile.get(uri) ?? new Set();
    this.keysByFile.set(uri, fileKeys);
    for (const key of new Set(keys)) {
      fileKeys.add(key);
      const found = this.byKey.get(key) ?? [];
      this.byKey.set(key, found);
      found.push({ uri, value });
      // Stable whatever order the files were read in; within a file the order of definition stays.
      found.sort((a, b) => (a.uri < b.uri ? -1 : a.uri > b.uri ? 1 : 0));
    }
  }

  removeFile(uri: string): void {
    this.all = undefined;
    for (const key of this.keysByFile.get(uri) ?? []) {
      const left = this.byKey.get(key)!.filter((found) => found.uri !== uri);
      if (left.length > 0) this.byKey.set(key, left);
      else this.byKey.delete(key);
    }
    this.keysByFile.delete(uri);
  }

  /** The files that define something. */
  uris(): Iterable<string> {
    return this.keysByFile.keys();
  }

  find(key: string): T | undefined {
    return this.byKey.get(key)?.[0]?.value;
  }

  findAll(key: string): readonly T[] {
    return (this.byKey.get(key) ?? []).map(({ value }) => value);
  }

  spellings(): Iterable<string> {
    return this.byKey.keys();
  }

  /** Each definition once, whatever number of spellings it has, in order of file and line: whatever was edited last. */
  values(): readonly T[] {
    this.all ??= [
      ...new Set([...this.byKey.values()].flatMap((found) => found.map(({ value }) => value))),
    ].sort((a, b) => (a.uri === b.uri ? a.line - b.line : a.uri < b.uri ? -1 : 1));
    return this.all;
  }
}
