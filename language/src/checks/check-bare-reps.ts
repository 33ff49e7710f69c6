import type { QuantityUnit, SetGroup } from '../model/quantity.ts';
import { type Movement, workOf } from '../practice/movement.ts';
import { printAmount } from '../printing/print-quantity.ts';
import { toQuantity } from '../reading/build-values.ts';
import { CHECKS } from './catalogue.ts';
import { joinWords, problem } from './check-context.ts';
import type { LineCheck } from './line-checks.ts';

/** What is not counted in reps: as the message says it, and the units that a bare number may have meant. */
interface Counted {
  readonly code: 'hold-in-reps' | 'distance-in-reps';
  readonly says: string;
  readonly units: readonly QuantityUnit[];
  readonly when: string;
}

const HELD: Counted = { code: 'hold-in-reps', says: 'is held', units: ['s'], when: ' if it was seconds' };
const CARRIED: Counted = {
  code: 'distance-in-reps',
  says: 'goes over a distance',
  units: ['m'],
  when: ' if it was metres',
};
const COVERED: Counted = { ...CARRIED, units: ['m', 's'], when: ', whichever it was' };
const ON_MACHINE: Counted = { ...COVERED, units: ['m', 'cal', 's'] };

/** How a movement of conditioning ends that is measured by its way; others are counted, such as burpees. */
const WAYS = /\b(?:run|walk|sprint|ride|swim)$/;
const MACHINES = /\b(?:rower|row|ergometer|erg|bike|treadmill|elliptical)$/;

function countedBy(movement: Movement): Counted | undefined {
  switch (workOf(movement)) {
    case 'hold':
      return HELD;
    case 'carry':
      return CARRIED;
    case 'conditioning':
      return MACHINES.test(movement.key) ? ON_MACHINE : WAYS.test(movement.key) ? COVERED : undefined;
    default:
      return undefined;
  }
}

/** `Plank: 45`, `Rower: 500`: a bare number counts reps, and these are counted in something else. Told once for a line. */
export const checkBareReps: LineCheck =
  (_entry, { practice }) =>
  ({ line }) => {
    const movement = practice.findMovement(line.name.text);
    const counted = movement && countedBy(movement);
    // Of a line that broke off there is more to say first.
    if (!counted || line.broken) return [];
    const sets = line.cells.flatMap((cell) => cell.sets);
    const bare = sets.filter((set) => isBare(set, counted));
    const [first] = bare;
    // Of a number before others with their unit reading tells, whatever the movement.
    if (!first || sets.some(goesOver)) return [];
    const forms = counted.units.map((unit) => bare.map((set) => writeAs(set, unit)));
    const meant = joinWords(
      forms.map(([text]) => text!),
      'or',
    );
    const message = `${movement.name} ${counted.says}, and a bare number counts reps: write ${meant}${counted.when}`;
    const fixes = forms.map((texts) => ({
      title: `Write ${texts.join(', ')}`,
      edits: bare.map(({ amountSpan: span }, index) => ({ span, newText: texts[index]! })),
    }));
    return [problem(counted.code, first.amountSpan, message, fixes)];
  };

function goesOver({ amount }: SetGroup): boolean {
  return amount?.kind === 'quantity' && ['metres', 'calories'].includes(amount.quantity.measure);
}

/** Reps that are too many to be any. */
function isBare({ amount }: SetGroup, { code }: Counted): boolean {
  return (
    amount?.kind === 'quantity' &&
    amount.quantity.measure === 'reps' &&
    amount.quantity.value >= CHECKS[code].numbers.least
  );
}

function writeAs({ amount }: SetGroup, unit: QuantityUnit): string {
  const written = amount as Extract<SetGroup['amount'], { kind: 'quantity' }>;
  return printAmount({ ...written, quantity: toQuantity(written.quantity.value, unit) });
}
