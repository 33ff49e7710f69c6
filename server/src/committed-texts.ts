import { createPractice } from '@plimsoll/language/create-practice';
import type { Practice } from '@plimsoll/language/practice/practice';
import type { CommittedTextParams, NoCommittedText } from './messages.ts';

/** A log as it was last committed, read; or why that is not known. */
export type Committed =
  | { readonly practice: Practice; readonly missing?: undefined }
  | { readonly missing: NoCommittedText; readonly practice?: undefined };

/** What an editor told of the logs that are open in it, by URI. */
export class CommittedTexts {
  readonly #texts = new Map<string, string>();
  readonly #known = new Map<string, Committed>();

  /** Answers whether it is something new. */
  set(uri: string, { text, missing }: CommittedTextParams): boolean {
    if (missing !== undefined) {
      const before = this.#known.get(uri);
      this.#texts.delete(uri);
      this.#known.set(uri, { missing });
      return before?.missing !== missing;
    }
    if (this.#texts.get(uri) === text) return false;
    const practice = createPractice();
    practice.setFile(uri, text);
    this.#texts.set(uri, text);
    this.#known.set(uri, { practice });
    return true;
  }

  forget(uri: string): void {
    this.#texts.delete(uri);
    this.#known.delete(uri);
  }

  find(uri: string): Committed | undefined {
    return this.#known.get(uri);
  }
}
