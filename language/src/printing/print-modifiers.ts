import type { Modifier, Step, StepUnit } from '../model/quantity.ts';
import { printPlain, printQuantity, printTime } from './print-quantity.ts';

/** What follows the sets behind a comma: `tempo 3-1-X-0`, `rest 2:30`, `+1 rep each week to 16`. */
export function printModifier(modifier: Modifier): string {
  switch (modifier.kind) {
    case 'tempo':
      return `tempo ${modifier.phases.join('-')}`;
    case 'rest':
      return `rest ${printQuantity(modifier.low)}${modifier.high ? `-${printQuantity(modifier.high)}` : ''}`;
    case 'setting':
      return `setting ${modifier.text}`;
    case 'pain':
      return `pain ${printPlain(modifier.score)}${modifier.where === undefined ? '' : ` ${modifier.where}`}`;
    case 'instead':
      return `instead of ${modifier.of.text}`;
    case 'stall':
      return `after ${printCounted(modifier.misses, 'miss', 'misses')} ${printStep(modifier.step)}`;
    case 'step':
      return printStep(modifier);
  }
}

/** `then +2 kg from 8`, `rest -10 s each round`, `+2.5 kg each week to 100 kg`. */
export function printStep(step: Step): string {
  return [
    ...(step.onRest ? ['rest'] : step.whenFull ? ['then'] : []),
    `${step.sign === 1 ? '+' : '-'}${printInUnit(step.amount, step.unit)}`,
    ...(step.each ? [`each ${step.each}`] : []),
    ...(step.bound === undefined ? [] : [`to ${printBound(step, step.bound)}`]),
    ...(step.from === undefined ? [] : [`from ${printPlain(step.from)}`]),
  ].join(' ');
}

/** A rest is read from a clock: `rest -15 s each week to 1:15`. */
function printBound({ onRest, boundUnit }: Step, bound: number): string {
  const isClock = onRest && boundUnit === 's' && bound >= 60 && Number.isInteger(bound);
  return isClock ? printTime(bound) : printInUnit(bound, boundUnit);
}

/** `1 round`, `4 rounds`. */
export function printCounted(count: number, one: string, several: string): string {
  return `${printPlain(count)} ${count === 1 ? one : several}`;
}

function printInUnit(amount: number, unit: StepUnit | undefined): string {
  if (unit === undefined) return printPlain(amount);
  if (unit === '%') return `${printPlain(amount)}%`;
  return unit === 'rep' || unit === 'set' || unit === 'round'
    ? printCounted(amount, unit, `${unit}s`)
    : `${printPlain(amount)} ${unit}`;
}
