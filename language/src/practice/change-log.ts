/** How many changes are told apart; older ones are taken together, so that more may count as changed than was. */
const MOST = 64;

/**
 * Remembers from which day on sessions changed, and when: an edit of one day takes nothing from what rests on the days
 * before it.
 */
export class ChangeLog {
  /** Later ones concern later days: an earlier change of a later day says nothing more than the newer one. */
  private readonly changes: { edition: number; readonly day: number }[] = [];

  /** Something of a day is another since that edition, which is the highest so far. */
  note(edition: number, day: number): void {
    const { changes } = this;
    while (changes.length > 0 && changes.at(-1)!.day >= day) changes.pop();
    changes.push({ edition, day });
    if (changes.length <= MOST) return;
    const [, second] = changes;
    changes[0]!.edition = second!.edition;
    changes.splice(1, 1);
  }

  /** Whether anything up to and including a day changed after an edition. */
  hasChanged(edition: number, lastDay: number): boolean {
    const first = this.changes.find((change) => change.edition > edition);
    return first !== undefined && first.day <= lastDay;
  }
}
