import type { Amount, Quantity } from '@plimsoll/language/model/quantity';
import { printDistance } from '@plimsoll/language/units/distance';
import { printClock } from '@plimsoll/language/units/duration';
import { printNumber } from '@plimsoll/language/units/number';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';

/** What an amount means where that is not plain: `4 of 5`, `10/side`, `(2+2+2 rest 20 s)`. */
export function hoverAmount(
  _context: FeatureContext,
  _uri: string,
  located: LocatedAs<'amount'>,
): string | undefined {
  const { amount } = located;
  switch (amount.kind) {
    case 'quantity':
      return amount.perSide
        ? describeSides(amount.quantity, amount.quantity)
        : describeSets(located, amount.quantity);
    case 'sides':
      return describeSides(amount.left, amount.right);
    case 'range':
      return `From ${print(amount.low)} to ${print(amount.high)}${side(amount)}: a plan's range`;
    case 'at-least':
      return `${print(amount.quantity)}${side(amount)} or more: as many as are good`;
    case 'amrap':
      return `As many reps as possible${side(amount)}`;
    case 'attempt':
      return describeAttempt(amount);
    case 'cluster': {
      const total = amount.parts.reduce((sum, { value }) => sum + value, 0);
      const rest = amount.rest ? `, ${printClock(amount.rest.value)} rest between them` : '';
      const parts = `${amount.parts.length} parts${rest}`;
      return `One set in ${parts}: ${print({ ...amount.parts[0]!, value: total })}${side(amount)} in all`;
    }
    case 'unrecorded':
      return 'Not recorded: totals with it are "at least"';
    case 'skipped':
      return 'Planned, not done: counts as nothing done';
  }
}

function describeAttempt({ made, tried, perSide }: Extract<Amount, { kind: 'attempt' }>): string {
  const failed = tried - made;
  return `${made} made${side({ perSide })}, ${failed === 1 ? 'one more' : `${failed} more`} tried and failed; the reps made count`;
}

function describeSides(left: Quantity, right: Quantity): string {
  const total = { ...left, value: left.value + right.value };
  return `${print(total)} in all, both sides counted; one set`;
}

/** `3x5` → 3 sets of 5 reps, 15 reps in all; one number in a circuit is that of each round. */
function describeSets({ line, cell = 0, block, span }: LocatedAs<'amount'>, quantity: Quantity): string {
  const sets = line?.cells[cell]?.sets ?? [];
  const count = sets.find(({ amountSpan }) => amountSpan.start === span.start)?.count ?? 1;
  const each = print(quantity);
  if (count > 1)
    return `${count} sets of ${each}, ${print({ ...quantity, value: count * quantity.value })} in all`;
  const rounds = sets.length === 1 ? (block?.rounds ?? 0) * (block?.passes ?? 1) : 0;
  return rounds > 1 ? `${each} in each of ${rounds} ${block!.passes > 1 ? 'passes' : 'rounds'}` : each;
}

function side({ perSide }: { readonly perSide: boolean }): string {
  return perSide ? ' a side' : '';
}

function print({ measure, value }: Quantity): string {
  switch (measure) {
    case 'reps':
      return `${printNumber(value)} rep${value === 1 ? '' : 's'}`;
    case 'seconds':
      return value < 60 ? `${printNumber(value, 1)} s` : `${printClock(value)} min`;
    case 'metres':
      return printDistance(value);
    case 'calories':
      return `${printNumber(value, 1)} cal`;
  }
}
