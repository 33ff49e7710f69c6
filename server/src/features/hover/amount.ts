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
  { amount }: LocatedAs<'amount'>,
): string | undefined {
  switch (amount.kind) {
    case 'quantity':
      return amount.perSide
        ? describeSides(amount.quantity, amount.quantity)
        : describeOther(amount.quantity);
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

/** Reps say themselves; a distance in yards and a time in seconds may want another unit. */
function describeOther(quantity: Quantity): string | undefined {
  return quantity.measure === 'reps' ? undefined : print(quantity);
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
