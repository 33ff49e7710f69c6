import { splitTexts } from '../text/lines.ts';

/**
 * A file's text, cut into lines when somebody asks for them. Of most files nobody does after they were read, and the
 * lines of a file take more memory than its text: they are kept only as long as memory allows.
 */
export class FileText {
  readonly text: string;
  private known: WeakRef<readonly string[]> | undefined;

  /** `lines` are those of the text, where they will soon be asked for. */
  constructor(text: string, lines?: readonly string[]) {
    this.text = text;
    if (lines) this.known = new WeakRef(lines);
  }

  get lines(): readonly string[] {
    const known = this.known?.deref();
    if (known) return known;
    const lines = splitTexts(this.text);
    this.known = new WeakRef(lines);
    return lines;
  }
}
