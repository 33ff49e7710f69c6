/** Numbers that look random and are the same on every machine for the same seed. */
export interface Random {
  /** A whole number, both ends included. */
  integer(low: number, high: number): number;
  pick<T>(choices: readonly T[]): T;
  /** True in that share of calls. */
  chance(share: number): boolean;
}

/** A linear congruential generator of 32 bits whose high bits are used; good enough to vary text. */
export function createRandom(seed: number): Random {
  let state = (seed * 2654435761 + 1) >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return ((state ^ (state >>> 15)) >>> 4) / 2 ** 28;
  };
  const integer = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  return {
    integer,
    pick: (choices) => choices[integer(0, choices.length - 1)]!,
    chance: (share) => next() < share,
  };
}
