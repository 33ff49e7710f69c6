import type { Modifier, Step, StepUnit } from '../model/quantity.ts';
import type { Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { buildDuration } from './build-duration.ts';
import { buildName, readClock, toQuantity } from './build-values.ts';
import { type EntryReading, type Holed, present, replaceBy, spanOf, toNumber } from './line-reading.ts';

/** `tempo 3-1-X-0`, `rest 2:30`, `pain 3 left knee` and the other items that are no set. */
export function buildModifier(reading: EntryReading, node: Holed<ast.Modifier>): Modifier | undefined {
  const span = spanOf(node);
  const missing = (message: string): undefined => reading.expect('missing-value', span, message);
  switch (node.$type) {
    case 'TempoModifier':
      return buildTempo(reading, node, span);
    case 'RestModifier': {
      if (present(node.step)) return buildStep(reading, node.step!, span, { onRest: true });
      const low = buildDuration(reading, node.low);
      if (low === undefined)
        return node.low ? undefined : missing('Expected a time after rest, such as 1:30');
      const high = buildDuration(reading, node.high);
      if (!reading.acceptOrder(low, high, span, 'a shorter to a longer rest')) return undefined;
      const range = high !== undefined && { high: toQuantity(high, 'clock') };
      return { kind: 'rest', low: toQuantity(low, 'clock'), ...range, span };
    }
    case 'SettingModifier':
      if (!present(node.text)) return missing('Expected what is set after setting, such as box 40 cm');
      return { kind: 'setting', text: buildName(node.text!).text, span };
    case 'PainModifier': {
      if (node.score === undefined)
        return missing('Expected a number from 0 to 10 after pain, and where it hurts');
      const score = toNumber(node.score);
      if (!reading.accept('pain', score, span, `pain ${node.score}`)) return undefined;
      return {
        kind: 'pain',
        score,
        ...(present(node.where) && { where: buildName(node.where!).text }),
        span,
      };
    }
    case 'InsteadModifier':
      if (!present(node.name)) return missing('Expected a movement after instead of');
      return { kind: 'instead', of: buildName(node.name!), span };
    case 'StallModifier': {
      const step = present(node.step) && buildStep(reading, node.step!, spanOf(node.step!), {});
      if (!step || node.misses === undefined) return undefined;
      const misses = toNumber(node.misses);
      if (!reading.acceptWhole('misses', misses, span, `${node.misses} misses`)) return undefined;
      return { kind: 'stall', misses, step, span };
    }
    case 'StepModifier':
      return present(node.step) && buildStep(reading, node.step!, span, { whenFull: node.whenFull ?? false });
  }
}

/** Three or four phases, each a number of seconds or X: `3-1-X-0`, `3-1-1`; without dashes it is a slip. */
function buildTempo(reading: EntryReading, node: Holed<ast.TempoModifier>, span: Span): Modifier | undefined {
  if (node.tempo === undefined) {
    return reading.expect('tempo-form', span, 'Expected a tempo such as 3-1-X-0 after tempo');
  }
  const phases = node.tempo.toUpperCase().split(/[-\u2010-\u2015\u2212]/);
  if (
    (phases.length === 3 || phases.length === 4) &&
    phases.every((phase) => /^(?:\d{1,2}|X)$/.test(phase))
  ) {
    return { kind: 'tempo', phases: phases.map((phase) => (phase === 'X' ? 'X' : Number(phase))), span };
  }
  const joined = /^[\dX]{3,4}$/.test(phases.join('')) ? [...phases.join('')].join('-') : undefined;
  const place = { ...span, start: span.end - node.tempo.length };
  reading.report(
    'tempo-form',
    place,
    'A tempo has three or four phases with dashes between them, such as 3-1-X-0: down, pause, up, pause',
    joined === undefined ? [] : [replaceBy(place, joined)],
  );
  return undefined;
}

const STEP_UNITS: ReadonlyMap<string, StepUnit> = new Map<string, StepUnit>([
  ['rep', 'rep'],
  ['reps', 'rep'],
  ['set', 'set'],
  ['sets', 'set'],
  ['round', 'round'],
  ['rounds', 'round'],
  ['%', '%'],
  ['rpe', 'rpe'],
  ['rir', 'rir'],
]);

export function buildStep(
  reading: EntryReading,
  node: Holed<ast.Step> | Holed<ast.RestStep>,
  span: Span,
  options: { onRest?: boolean; whenFull?: boolean },
): Step | undefined {
  const clock = node.clock === undefined ? undefined : readClock(reading, node.clock, span);
  const unit = clock === undefined ? readStepUnit(node.unit) : 's';
  const amount = clock ?? (node.amount === undefined ? undefined : toNumber(node.amount));
  if (amount === undefined) return undefined;
  if (unit === undefined) {
    return reading.expect('missing-unit', span, 'A step needs its unit, such as +1 rep, +2.5 kg or +5 s');
  }
  const boundClock = node.boundClock === undefined ? undefined : readClock(reading, node.boundClock, span);
  const boundUnit = boundClock === undefined ? readStepUnit(node.boundUnit) : 's';
  const bound = boundClock ?? (node.bound === undefined ? undefined : toNumber(node.bound));
  return {
    kind: 'step',
    sign: node.sign === '-' ? -1 : 1,
    amount,
    unit,
    onRest: options.onRest ?? false,
    ...(node.each && { each: node.each }),
    ...(bound !== undefined && { bound }),
    ...(boundUnit && { boundUnit }),
    whenFull: options.whenFull ?? false,
    ...(node.from !== undefined && { from: toNumber(node.from) }),
    span,
  };
}

function readStepUnit(text: string | undefined): StepUnit | undefined {
  if (text === undefined) return undefined;
  const lower = text.toLowerCase();
  return STEP_UNITS.get(lower) ?? (UNIT_WORDS.get(lower)?.unit as StepUnit | undefined);
}
