/**
 * Number of insertions, deletions, replacements and swaps of neighbours that turn `a` into `b`
 * (optimal string alignment): `sesion`, `session` → 1. Gives up above `limit` and answers `limit + 1`.
 */
export function measureEditDistance(a: string, b: string, limit = 3): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    let best = row;
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + (same ? 0 : 1));
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        cost = Math.min(cost, beforeLast[column - 2]! + 1);
      }
      current.push(cost);
      best = Math.min(best, cost);
    }
    if (best > limit) return limit + 1;
    beforeLast = last;
    last = current;
  }
  return last[b.length]!;
}

/** The candidates nearest to a mistyped word, best first: at most `count`, none further than a third of its length. */
export function findNearest(word: string, candidates: Iterable<string>, count = 3): string[] {
  const limit = Math.max(1, Math.min(3, Math.floor(word.length / 3)));
  const found: { candidate: string; distance: number }[] = [];
  for (const candidate of candidates) {
    const distance = measureEditDistance(word, candidate, limit);
    if (distance <= limit) found.push({ candidate, distance });
  }
  return found
    .sort((a, b) => a.distance - b.distance || a.candidate.localeCompare(b.candidate))
    .slice(0, count)
    .map(({ candidate }) => candidate);
}
