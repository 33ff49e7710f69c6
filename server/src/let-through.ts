/** How long work in the background may go on before requests that wait are answered. */
export const SLICE_IN_MS = 2;

/** How many times as long typing must have paused before files are looked at that nobody has open. */
export const PATIENCE_WITH_CLOSED = 8;

/** Takes steps until a slice that began then is over; says whether those were all. */
export function takeSteps(steps: Iterator<unknown>, since: number): boolean {
  for (;;) {
    if (steps.next().done) return true;
    if (performance.now() - since > SLICE_IN_MS) return false;
  }
}

/** Goes on once whatever waits was dealt with: at once where nothing does. A browser has timers alone. */
export function letRequestsThrough(): Promise<void> {
  return new Promise((resolve) => {
    if (typeof setImmediate === 'function') setImmediate(resolve);
    else setTimeout(resolve, 0);
  });
}
