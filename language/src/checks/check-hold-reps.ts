import type { SetGroup } from '../model/quantity.ts';
import { workOf } from '../practice/movement.ts';
import { printAmount } from '../printing/print-quantity.ts';
import { toQuantity } from '../reading/build-values.ts';
import { CHECKS } from './catalogue.ts';
import { problem } from './check-context.ts';
import type { LineCheck } from './line-checks.ts';

const { least: LEAST_REPS } = CHECKS['hold-in-reps'].numbers;

/** `Plank: 45`: a bare number counts reps, and what is held is counted in seconds. Told once for a line. */
export const checkHoldReps: LineCheck =
  (_entry, { practice }) =>
  ({ line }) => {
    const movement = practice.findMovement(line.name.text);
    if (!movement || workOf(movement) !== 'hold') return [];
    const written = line.cells.flatMap(({ sets }) => sets.flatMap(readSeconds));
    const [first] = written;
    if (!first) return [];
    const message = `${movement.name} is held, and a bare number counts reps: write ${first.newText} if it was seconds`;
    const fix = { title: `Write ${written.map(({ newText }) => newText).join(', ')}`, edits: written };
    return [problem('hold-in-reps', first.span, message, [fix])];
  };

/** Reps that are too many for a hold, as the seconds that they may have been. */
function readSeconds({ amount, amountSpan: span }: SetGroup) {
  if (amount?.kind !== 'quantity' || amount.quantity.measure !== 'reps') return [];
  const { value } = amount.quantity;
  if (value < LEAST_REPS) return [];
  return [{ span, newText: printAmount({ ...amount, quantity: toQuantity(value, 's') }) }];
}
