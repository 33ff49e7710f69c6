import type { Diagnostic } from 'vscode-languageserver';
import { PATIENCE_WITH_CLOSED, SLICE_IN_MS, takeSteps } from './let-through.ts';

export interface PublisherPorts {
  readonly compute: (uri: string) => Diagnostic[];
  /** After all of these steps there is little left to compute, unless something changed meanwhile. */
  readonly prepare: (uri: string) => Iterable<unknown>;
  readonly send: (uri: string, diagnostics: Diagnostic[]) => void;
  /** The files that are open: those go first, and the others, of which there may be thousands, wait for a longer pause. */
  readonly listOpen: () => readonly string[];
  /** How long nothing must have changed before anything is computed, so that nothing flickers while she types. */
  readonly quietMs: number;
}

/**
 * Tells the editor what is wrong, file by file: of open files soon after a change, of the others once typing has paused
 * for longer; in slices that let requests through, and only what is not as it was told before.
 */
export class DiagnosticsPublisher {
  readonly #ports: PublisherPorts;
  readonly #due = new Set<string>();
  readonly #told = new Map<string, string>();
  #preparing: { readonly uri: string; readonly steps: Iterator<unknown> } | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(ports: PublisherPorts) {
    this.#ports = ports;
  }

  schedule(uris: Iterable<string>): void {
    for (const uri of uris) this.#due.add(uri);
    this.#preparing = undefined;
    if (this.#due.size > 0) this.#wait(this.#ports.quietMs, this.#publishOpen);
  }

  dispose(): void {
    clearTimeout(this.#timer);
    this.#due.clear();
  }

  #wait(ms: number, then: () => void): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(then, ms);
  }

  readonly #publishOpen = (): void => {
    const { listOpen, quietMs } = this.#ports;
    if (!this.#publish(listOpen().filter((uri) => this.#due.has(uri)))) this.#wait(0, this.#publishOpen);
    else if (this.#due.size > 0) this.#wait((PATIENCE_WITH_CLOSED - 1) * quietMs, this.#publishAll);
  };

  readonly #publishAll = (): void => {
    if (!this.#publish([...this.#due])) this.#wait(0, this.#publishAll);
  };

  /** For the length of a slice; false where some are left. */
  #publish(uris: readonly string[]): boolean {
    const start = performance.now();
    for (const [index, uri] of uris.entries()) {
      if (!this.#isPrepared(uri, start)) return false;
      this.#due.delete(uri);
      this.#tell(uri, this.#ports.compute(uri));
      if (performance.now() - start > SLICE_IN_MS && index < uris.length - 1) return false;
    }
    return true;
  }

  /** Of a large file it takes several slices. */
  #isPrepared(uri: string, since: number): boolean {
    if (this.#preparing?.uri !== uri)
      this.#preparing = { uri, steps: this.#ports.prepare(uri)[Symbol.iterator]() };
    if (!takeSteps(this.#preparing.steps, since)) return false;
    this.#preparing = undefined;
    return true;
  }

  #tell(uri: string, diagnostics: Diagnostic[]): void {
    const text = JSON.stringify(diagnostics);
    if ((this.#told.get(uri) ?? '[]') === text) return;
    if (diagnostics.length > 0) this.#told.set(uri, text);
    else this.#told.delete(uri);
    this.#ports.send(uri, diagnostics);
  }
}
