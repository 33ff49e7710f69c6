import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import { checkFile, type FileProblem } from '@plimsoll/language/checks/check-file';
import { type FileOutline, outlineFile } from '@plimsoll/language/checks/file-outline';
import { createPractice } from '@plimsoll/language/create-practice';
import type { ReadLog } from './read-paths.ts';

/** A practice into which logs are read when something is asked of them. */
export class PartlyRead {
  readonly #texts = new Map<string, string>();
  readonly #practice = createPractice();

  constructor(logs: readonly Pick<ReadLog, 'uri' | 'text'>[]) {
    for (const { uri, text } of logs) this.#texts.set(uri, text);
  }

  read(uris: readonly string[]): void {
    for (const uri of uris) {
      if (!this.#practice.file(uri)) this.#practice.setFile(uri, this.#texts.get(uri)!);
    }
  }

  outline(uri: string): FileOutline {
    this.read([uri]);
    return outlineFile(this.#practice.file(uri)!.model);
  }

  /** The problems of a log, as far as what was read until now shows them. */
  check(uri: string, today: IsoDate): readonly FileProblem[] {
    this.read([uri]);
    return checkFile(this.#practice, uri, { today });
  }
}
