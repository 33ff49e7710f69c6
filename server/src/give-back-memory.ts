import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** How often to look whether there is anything to do, and what share of that time counts as nothing. */
const LOOK_IN_MS = 2_000;
const IDLE_SHARE = 0.05;

/**
 * Gives memory back to the system, once, when the process next has nothing to do. Reading a practice leaves the heap
 * more than twice as large as what is kept of it, and V8 hands nothing back of its own accord in a process that rests.
 * What `first` lets go of is given back too.
 */
export function giveBackMemoryOnceIdle(first: () => void): void {
  let before = performance.eventLoopUtilization();
  const timer = setInterval(() => {
    const now = performance.eventLoopUtilization();
    const { utilization } = performance.eventLoopUtilization(now, before);
    before = now;
    if (utilization > IDLE_SHARE) return;
    clearInterval(timer);
    first();
    collectGarbage();
  }, LOOK_IN_MS);
  timer.unref();
}

type Collector = (options: { type: 'major'; execution: 'sync'; flavor: 'last-resort' }) => void;

function collectGarbage(): void {
  setFlagsFromString('--expose-gc');
  const collect: Collector = runInNewContext('gc');
  // Code that is kept for the next start (see the starter) counts only under the same flags.
  setFlagsFromString('--no-expose-gc');
  // The last resort is the one that also moves what is left together and lets go of the pages.
  collect({ type: 'major', execution: 'sync', flavor: 'last-resort' });
}
