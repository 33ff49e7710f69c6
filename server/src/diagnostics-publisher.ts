import type { Diagnostic } from 'vscode-languageserver';
import { SLICE_IN_MS } from './let-through.ts';

export interface PublisherPorts {
  readonly compute: (uri: string) => Diagnostic[];
  readonly send: (uri: string, diagnostics: Diagnostic[]) => void;
  /** Whether a file is open: those go first. */
  readonly isOpen: (uri: string) => boolean;
  /** How long nothing must have changed before anything is computed, so that nothing flickers while she types. */
  readonly quietMs: number;
}

/**
 * Tells the editor what is wrong, file by file: soon after a change, open files first, in slices that let requests
 * through, and only what is not as it was told before.
 */
export class DiagnosticsPublisher {
  readonly #ports: PublisherPorts;
  readonly #due = new Set<string>();
  readonly #told = new Map<string, string>();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(ports: PublisherPorts) {
    this.#ports = ports;
  }

  schedule(uris: Iterable<string>): void {
    for (const uri of uris) this.#due.add(uri);
    if (this.#due.size > 0) this.#wait(this.#ports.quietMs);
  }

  dispose(): void {
    clearTimeout(this.#timer);
    this.#due.clear();
  }

  #wait(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#publish(), ms);
  }

  #publish(): void {
    const start = performance.now();
    const { compute, isOpen } = this.#ports;
    const openFirst = [...this.#due].sort((a, b) => Number(isOpen(b)) - Number(isOpen(a)));
    for (const uri of openFirst) {
      this.#due.delete(uri);
      this.#tell(uri, compute(uri));
      if (performance.now() - start > SLICE_IN_MS && this.#due.size > 0) {
        this.#wait(0);
        return;
      }
    }
  }

  #tell(uri: string, diagnostics: Diagnostic[]): void {
    const text = JSON.stringify(diagnostics);
    if ((this.#told.get(uri) ?? '[]') === text) return;
    if (diagnostics.length > 0) this.#told.set(uri, text);
    else this.#told.delete(uri);
    this.#ports.send(uri, diagnostics);
  }
}
