import { splitTexts } from '../text/lines.ts';

/** A text, or its lines, or both. */
export type KnownText =
  | { readonly text: string; readonly lines?: readonly string[] }
  | { readonly text?: undefined; readonly lines: readonly string[] };

/**
 * A file's text and its lines, each made from the other when somebody asks for it. Of most files nobody asks for lines
 * after they were read, and those take more memory than a text: they are kept only as long as memory allows. Of a file
 * that is edited line by line nobody asks for the text.
 */
export class FileText {
  private knownText: string | undefined;
  private readonly ownLines: readonly string[] | undefined;
  private knownLines: WeakRef<readonly string[]> | undefined;

  constructor({ text, lines }: KnownText) {
    this.knownText = text;
    if (text === undefined) this.ownLines = lines;
    else if (lines) this.knownLines = new WeakRef(lines);
  }

  get text(): string {
    this.knownText ??= this.ownLines!.join('\n');
    return this.knownText;
  }

  /** The lines, where they are cut already. */
  get cut(): readonly string[] | undefined {
    return this.ownLines ?? this.knownLines?.deref();
  }

  get lines(): readonly string[] {
    const { cut } = this;
    if (cut) return cut;
    const lines = splitTexts(this.text);
    this.knownLines = new WeakRef(lines);
    return lines;
  }
}
