import {
  type CancellationToken,
  type Diagnostic,
  type DocumentDiagnosticReport,
  DocumentDiagnosticReportKind,
  LSPErrorCodes,
  ResponseError,
  type WorkspaceDiagnosticReport,
} from 'vscode-languageserver';
import { letRequestsThrough, PATIENCE_WITH_CLOSED, SLICE_IN_MS, takeSteps } from './let-through.ts';

export interface ReportPorts {
  readonly compute: (uri: string) => Diagnostic[];
  /** After all of these steps there is little left to compute, unless something changed meanwhile. */
  readonly prepare: (uri: string) => Iterable<unknown>;
  readonly versionOf: (uri: string) => number | undefined;
  readonly toClientUri: (uri: string) => string;
  /** How long nothing must have changed before anything is told, so that nothing flickers while she types. */
  readonly quietMs: number;
}

interface Told {
  readonly id: string;
  readonly text: string;
  readonly items: Diagnostic[];
}

/**
 * Answers an editor that asks what is wrong. Every state of a file's problems has an id, so that what the editor has
 * already is not sent again. What is asked about all files is answered when there is something new to say.
 */
export class DiagnosticReports {
  readonly #ports: ReportPorts;
  readonly #told = new Map<string, Told>();
  readonly #stale = new Set<string>();
  #lastId = 0;
  #changedAt = Number.NEGATIVE_INFINITY;
  #isDisposed = false;
  readonly #waiting = new Set<() => void>();

  constructor(ports: ReportPorts) {
    this.#ports = ports;
  }

  /** These files' problems may be others now. */
  schedule(uris: Iterable<string>): void {
    for (const uri of uris) this.#stale.add(uri);
    this.#changedAt = performance.now();
    this.#wake();
  }

  dispose(): void {
    this.#isDisposed = true;
    this.#wake();
  }

  /** One file's problems, once typing has paused. */
  async report(
    uri: string,
    previousId: string | undefined,
    token: CancellationToken,
  ): Promise<DocumentDiagnosticReport> {
    do {
      await this.#untilQuiet(token, this.#ports.quietMs);
    } while (!(await this.#lookAt([uri], token)));
    const { id, items } = this.#look(uri);
    if (id === previousId) return { kind: DocumentDiagnosticReportKind.Unchanged, resultId: id };
    return { kind: DocumentDiagnosticReportKind.Full, resultId: id, items };
  }

  /** What is new in all files since the editor was told; waits until there is something, or it asks no longer. */
  async reportAll(
    previousIds: ReadonlyMap<string, string>,
    token: CancellationToken,
  ): Promise<WorkspaceDiagnosticReport> {
    for (;;) {
      await this.#untilQuiet(token, PATIENCE_WITH_CLOSED * this.#ports.quietMs);
      if (!(await this.#lookAt(this.#stale, token))) continue;
      const items = [...this.#told].flatMap(([uri, { id, items }]) => {
        const previous = previousIds.get(uri);
        // Nothing was told of this file, and nothing is wrong with it.
        if (previous === id || (previous === undefined && items.length === 0)) return [];
        const version = this.#ports.versionOf(uri) ?? null;
        const kind = DocumentDiagnosticReportKind.Full;
        return [{ kind, uri: this.#ports.toClientUri(uri), version, resultId: id, items } as const];
      });
      if (items.length > 0 || this.#isDisposed) return { items };
      await this.#untilChanged(token);
    }
  }

  #look(uri: string): Told {
    const known = this.#told.get(uri);
    const isStale = this.#stale.delete(uri);
    if (known && !isStale) return known;
    const items = this.#ports.compute(uri);
    const text = JSON.stringify(items);
    const told = known?.text === text ? known : { id: String(++this.#lastId), text, items };
    this.#told.set(uri, told);
    return told;
  }

  /** In slices that let requests through; stops where something changes meanwhile, and then gives false. */
  async #lookAt(uris: Iterable<string>, token: CancellationToken): Promise<boolean> {
    const since = this.#changedAt;
    let sliceStart = performance.now();
    for (const uri of [...uris]) {
      if (this.#told.has(uri) && !this.#stale.has(uri)) continue;
      const steps = this.#ports.prepare(uri)[Symbol.iterator]();
      for (let isReady = false; !isReady; ) {
        isReady = takeSteps(steps, sliceStart);
        if (isReady) this.#look(uri);
        if (performance.now() - sliceStart < SLICE_IN_MS) continue;
        await letRequestsThrough();
        giveUpIfCancelled(token);
        if (this.#changedAt !== since) return false;
        sliceStart = performance.now();
      }
    }
    return true;
  }

  #wake(): void {
    for (const resolve of this.#waiting) resolve();
    this.#waiting.clear();
  }

  async #untilChanged(token: CancellationToken): Promise<void> {
    let listening: { dispose(): void } | undefined;
    await new Promise<void>((resolve) => {
      this.#waiting.add(resolve);
      listening = token.onCancellationRequested(() => resolve());
    });
    listening?.dispose();
  }

  async #untilQuiet(token: CancellationToken, quietMs: number): Promise<void> {
    for (;;) {
      giveUpIfCancelled(token);
      const left = this.#changedAt + quietMs - performance.now();
      if (left <= 0) return;
      await new Promise((resolve) => setTimeout(resolve, left));
    }
  }
}

function giveUpIfCancelled(token: CancellationToken): void {
  if (token.isCancellationRequested)
    throw new ResponseError(LSPErrorCodes.RequestCancelled, 'The editor asks no longer');
}
