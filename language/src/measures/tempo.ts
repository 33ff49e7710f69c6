/** Time under tension from a tempo such as `3-1-X-0`: down, pause, up, pause, in seconds. */

/** Seconds, or X for as fast as possible. */
export type TempoPhase = number | 'X';

/** What an X counts, in seconds (common practice). */
export const SECONDS_OF_X = 1;

/** `3-1-X-0` → 5 seconds. */
export function computeSecondsPerRep(phases: readonly TempoPhase[]): number {
  return phases.reduce<number>((total, phase) => total + (phase === 'X' ? SECONDS_OF_X : phase), 0);
}

/** 8 reps at `3-1-X-0` → 40 seconds; undefined without a tempo. */
export function computeTimeUnderTension(reps: number, phases: readonly TempoPhase[]): number | undefined {
  return phases.length > 0 ? reps * computeSecondsPerRep(phases) : undefined;
}
