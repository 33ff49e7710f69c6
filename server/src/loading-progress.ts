import type { WorkDoneProgressServerReporter } from 'vscode-languageserver';

/** Reading that is over sooner shows no progress at all. */
const PATIENCE_IN_MS = 500;

/** Shows how far the first reading of a workspace is, where it takes long enough to be noticed. */
export class LoadingProgress {
  readonly #create: () => Promise<WorkDoneProgressServerReporter> | undefined;
  #start: number | undefined;
  #reporter: Promise<WorkDoneProgressServerReporter | undefined> | undefined;
  #percent = 0;
  #isDone = false;

  constructor(create: () => Promise<WorkDoneProgressServerReporter> | undefined) {
    this.#create = create;
  }

  report(done: number, total: number): void {
    this.#start ??= performance.now();
    if (this.#isDone || performance.now() - this.#start < PATIENCE_IN_MS) return;
    this.#reporter ??= this.#begin();
    const percent = Math.floor((done / total) * 100);
    if (percent === this.#percent) return;
    this.#percent = percent;
    void this.#reporter?.then((reporter) => reporter?.report(percent, `${done} of ${total}`));
  }

  done(): void {
    this.#isDone = true;
    void this.#reporter?.then((reporter) => reporter?.done());
  }

  /** An editor that refuses shows none. */
  async #begin(): Promise<WorkDoneProgressServerReporter | undefined> {
    const reporter = await Promise.resolve(this.#create()).catch(() => undefined);
    reporter?.begin('Plimsoll: reading logs', 0);
    return reporter;
  }
}
