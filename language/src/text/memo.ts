/** More spellings than a practice has movements, athletes and places. */
const MOST = 20_000;

/** What was made of strings, so that it is made once; all of it goes where there is too much, as after years of typing. */
export class Memo<T> {
  private readonly known = new Map<string, T>();
  private readonly make: (text: string) => T;
  private readonly most: number;

  constructor(make: (text: string) => T, most = MOST) {
    this.make = make;
    this.most = most;
  }

  of(text: string): T {
    const { known } = this;
    const found = known.get(text);
    // What is known may be that there is none.
    if (found !== undefined || known.has(text)) return found as T;
    if (known.size >= this.most) known.clear();
    const made = this.make(text);
    known.set(text, made);
    return made;
  }

  forget(): void {
    this.known.clear();
  }
}
