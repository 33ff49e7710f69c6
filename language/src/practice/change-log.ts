/** How many changes are told apart; older ones are taken together, so that more may count as changed than was. */
const MOST = 64;

/** Keys of movements; undefined for all that there is. */
export type Movements = ReadonlySet<string> | undefined;

interface Change {
  readonly edition: number;
  readonly day: number;
  readonly movements: Movements;
}

/**
 * Remembers from which day on sessions changed, when, and of which movements: an edit of one day takes nothing from what
 * rests on the days before it, and one set nothing from what rests on other movements.
 */
export class ChangeLog {
  /** In order of editions. */
  private readonly changes: Change[] = [];

  /** Something of a day is another since that edition, which is the highest so far. */
  note(edition: number, day: number, movements?: Movements): void {
    const { changes } = this;
    // An earlier change of a later day says nothing more than the newer one.
    while (changes.length > 0 && changes.at(-1)!.day >= day && covers(movements, changes.at(-1)!.movements))
      changes.pop();
    changes.push({ edition, day, movements });
    if (changes.length > MOST) changes.splice(0, 2, join(changes[0]!, changes[1]!));
  }

  /** Whether anything of some movements changed after an edition, up to and including a day. */
  hasChanged(edition: number, lastDay: number, movements?: Movements): boolean {
    const { changes } = this;
    for (let at = changes.length - 1; at >= 0 && changes[at]!.edition > edition; at--) {
      const change = changes[at]!;
      if (change.day <= lastDay && meets(change.movements, movements)) return true;
    }
    return false;
  }
}

function covers(all: Movements, some: Movements): boolean {
  return all === undefined || (some !== undefined && [...some].every((key) => all.has(key)));
}

function meets(some: Movements, others: Movements): boolean {
  if (some === undefined || others === undefined) return true;
  // Asked of each session of a history after each edit: nothing is made for it.
  for (const key of some) if (others.has(key)) return true;
  return false;
}

function join(first: Change, second: Change): Change {
  const movements = first.movements && second.movements && new Set([...first.movements, ...second.movements]);
  return { edition: second.edition, day: Math.min(first.day, second.day), movements };
}
