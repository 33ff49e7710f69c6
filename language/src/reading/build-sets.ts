import type { Amount, Cell, Drop, Modifier, Quantity, Rating, SetGroup, Step, StepUnit } from '../model/quantity.ts';
import type { Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { LIMITS } from '../vocabulary/limits.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { buildLoad } from './build-load.ts';
import { buildDuration, buildName, buildQuantity, type LineUnits, toQuantity } from './build-values.ts';
import { addAfter, type EntryReading, replaceBy, spanBetween, spanOf, textOf, toNumber } from './line-reading.ts';

/** The sets and modifiers between two `|`. Sets before the first load share it; after that each writes its own. */
export function buildCell(reading: EntryReading, line: LineUnits, node: ast.Cell, mayLackLoad: boolean): Cell {
  const sets: SetGroup[] = [];
  const modifiers: Modifier[] = [];
  for (const item of node.items) {
    if (!item.$cstNode) continue;
    if (item.$type === 'SetGroup') sets.push(buildSet(reading, line, item));
    else if (item.$type === 'UnknownItem') reportUnknownItem(reading, item);
    else {
      const modifier = buildModifier(reading, item);
      if (modifier) modifiers.push(modifier);
    }
  }
  return { sets: shareLoads(reading, sets, mayLackLoad), modifiers, span: spanOf(node) };
}

function reportUnknownItem(reading: EntryReading, node: ast.UnknownItem): void {
  const span = spanOf(node);
  const text = textOf(node);
  reading.report('unknown-item', span, `Nothing is known by "${text}" here: write a set, tempo, rest, setting, pain, or a note on a line with >`, [
    replaceBy(span, `setting ${text}`),
  ]);
}

function shareLoads(reading: EntryReading, sets: readonly SetGroup[], mayLackLoad: boolean): SetGroup[] {
  const first = sets.findIndex((set) => set.ownLoad && set.load);
  if (first < 0) return [...sets];
  return sets.map((set, index) => {
    if (set.ownLoad || set.loadSpan) return set;
    if (index < first) return { ...set, load: sets[first]!.load! };
    if (!mayLackLoad && set.amount && set.amount.kind !== 'skipped') reportMissingLoad(reading, sets, index);
    return set;
  });
}

function reportMissingLoad(reading: EntryReading, sets: readonly SetGroup[], index: number): void {
  const set = sets[index]!;
  const before = sets.slice(0, index).findLast((other) => other.loadText !== undefined)?.loadText;
  const after = sets.slice(index + 1).find((other) => other.loadText !== undefined)?.loadText;
  const previous = sets.slice(0, index).findLast((other) => other.ownLoad);
  const value = set.amount?.kind === 'quantity' && set.amount.quantity.measure === 'reps' ? set.amount.quantity.value : undefined;
  if (previous?.ratings.length && value !== undefined && value >= 5 && value <= 10 && !set.counted) {
    reading.report('rating-list', set.span, `Is ${value} a set or a rating? A rating stands behind its own set: 5 @ 100 kg rpe ${value}`);
    return;
  }
  const fixes = [before, after]
    .filter((text): text is string => text !== undefined)
    .filter((text, at, all) => all.indexOf(text) === at)
    .map((text) => addAfter(set.amountSpan, ` @ ${text}`, `Add @ ${text}`));
  reading.report('set-without-load', set.span, 'After the first load every set writes its own: this one has none', fixes);
}

export function buildSet(reading: EntryReading, line: LineUnits, node: ast.SetGroup): SetGroup {
  const span = spanOf(node);
  const amountSpan = node.amount?.$cstNode ? spanOf(node.amount) : span;
  const written = node.count === undefined ? 1 : toNumber(node.count);
  const at = node.at?.$cstNode ? node.at : undefined;
  const pressed = node.count !== undefined && isLoadByReps(reading, node, written);
  const countFits = !pressed && reading.accept('sets', written, spanBetween(span, amountSpan), `${node.count ?? 1} sets`);
  const amount = countFits && node.amount?.$cstNode ? buildAmount(reading, node.amount) : undefined;
  const within = buildDuration(reading, node.within);
  const load = at?.load ? buildLoad(reading, line, at.load) : undefined;
  if (at && !at.load?.$cstNode && !reading.broken.has(span.line)) {
    reading.report('missing-load', spanOf(at), 'Expected a load such as 100 kg after @');
  }
  const ratings = [...node.ratings, ...(at?.ratings ?? [])].flatMap((rating) => buildRating(reading, rating));
  return {
    count: countFits ? written : 1,
    counted: node.count !== undefined,
    ...(amount && { amount }),
    ...(within !== undefined && { within: toQuantity(within, 'clock') }),
    ...(load && { load }),
    ownLoad: load !== undefined,
    ...(at && { loadSpan: spanOf(at.load?.$cstNode ? at.load : at) }),
    ...(at?.load?.$cstNode && { loadText: textOf(at.load) }),
    ratings,
    drops: node.drops.filter((drop) => drop.$cstNode).map((drop) => buildDrop(reading, line, drop)),
    span,
    amountSpan,
  };
}

/** `225x5` without a load: more sets than anybody does, so the load stands first. */
function isLoadByReps(reading: EntryReading, node: ast.SetGroup, count: number): boolean {
  if (count <= LIMITS.sets.high || node.at?.load || node.amount?.$type !== 'Reps') return false;
  const span = spanBetween(spanOf(node), spanOf(node.amount));
  const reps = textOf(node.amount);
  reading.report('reps-first', span, `Write ${reps} @ ${node.count}: reps come before the load`, [
    replaceBy(span, `${reps} @ ${node.count}`),
  ]);
  return true;
}

function buildDrop(reading: EntryReading, line: LineUnits, node: ast.Drop): Drop {
  const amount: Amount = (node.amount?.$cstNode && buildAmount(reading, node.amount)) || { kind: 'unrecorded' };
  const load = node.load?.$cstNode ? buildLoad(reading, line, node.load) : undefined;
  if (!load && !reading.broken.has(spanOf(node).line)) {
    reading.report('missing-load', spanOf(node), 'A drop writes its own load: drop 8 @ 14 kg');
  }
  return { amount, ...(load && { load }), span: spanOf(node) };
}

export function buildAmount(reading: EntryReading, node: ast.Amount): Amount | undefined {
  const span = spanOf(node);
  switch (node.$type) {
    case 'Attempt': {
      const [made, tried] = [toNumber(node.made), toNumber(node.tried)];
      if (![made, tried].every((value) => reading.accept('reps', value, span, textOf(node)))) return undefined;
      if (made > tried) {
        reading.report('range-order', span, `${made} of ${tried}: the reps made come first and cannot be more`);
        return undefined;
      }
      return { kind: 'attempt', made, tried, perSide: readPerSide(reading, node.side) };
    }
    case 'Cluster':
      return buildCluster(reading, node);
    case 'Unrecorded':
      return { kind: 'unrecorded' };
    case 'Skipped':
      return { kind: 'skipped' };
    case 'Amrap':
      return { kind: 'amrap', perSide: readPerSide(reading, node.side) };
    case 'Reps':
      return buildReps(reading, node, span);
    case 'LoadFirst': {
      const reps = node.reps ?? '5';
      const written = `${reps} @ ${node.load} ${node.unit}`;
      reading.report('reps-first', span, `Write ${written}: reps come before the load`, node.reps ? [replaceBy(span, written)] : []);
      return undefined;
    }
    case 'Ladder': {
      const written = node.ladder.replace(/[^\d]+/g, ', ');
      reading.report('sets-spelled-apart', span, `Write ${written} for ${node.ladder}`, [replaceBy(span, written)]);
      return undefined;
    }
  }
}

function buildReps(reading: EntryReading, node: ast.Reps, span: Span): Amount | undefined {
  const slip = findSideSlip(node);
  if (slip !== undefined) {
    reading.report('side-slip', span, `Write ${slip} for ${textOf(node)}`, [replaceBy(span, slip)]);
    return undefined;
  }
  const low = node.low?.$cstNode ? buildQuantity(reading, node.low) : undefined;
  if (!low) return undefined;
  const perSide = readPerSide(reading, node.side);
  if (node.right) {
    const right = node.right.quantity?.$cstNode ? buildQuantity(reading, node.right.quantity) : undefined;
    return right && { kind: 'sides', left: alignUnit(low, node.low, right), right };
  }
  if (node.high) {
    const high = node.high.$cstNode ? buildQuantity(reading, node.high) : undefined;
    if (!high) return undefined;
    const aligned = alignUnit(low, node.low, high);
    if (aligned.measure !== high.measure || aligned.value >= high.value) {
      reading.report('range-order', span, `${textOf(node)}: a range goes from the lower to the higher number of one kind`);
      return undefined;
    }
    return { kind: 'range', low: aligned, high, perSide };
  }
  return node.open ? { kind: 'at-least', quantity: low, perSide } : { kind: 'quantity', quantity: low, perSide };
}

/** In `30-45 s` and `30 left 45 s right` the first number takes the unit of the second. */
function alignUnit(low: Quantity, node: ast.Quantity, high: Quantity): Quantity {
  const bare = node.clock === undefined && node.unit === undefined;
  return bare && high.unit !== 'clock' ? toQuantity(low.written, high.unit) : low;
}

/** `10/10`, `8/7`, `10 each`: what is meant is 10/side, or 8 left 7 right. */
function findSideSlip(node: ast.Reps): string | undefined {
  const { side } = node;
  if (!side?.$cstNode) return undefined;
  const first = textOf(node.low);
  if (side.each) return `${first}/side`;
  if (side.other === undefined) return undefined;
  return side.other === node.low.value ? `${first}/side` : `${first} left ${side.other} right`;
}

function readPerSide(_reading: EntryReading, node: ast.PerSide | undefined): boolean {
  return node?.$cstNode !== undefined && node.other === undefined;
}

function buildCluster(reading: EntryReading, node: ast.Cluster): Amount | undefined {
  const parts: Quantity[] = [];
  let perSide = readPerSide(reading, node.side);
  for (const part of node.parts) {
    if (!part.quantity?.$cstNode) return undefined;
    const quantity = buildQuantity(reading, part.quantity);
    const count = part.count === undefined ? 1 : toNumber(part.count);
    if (!quantity || !reading.accept('sets', count, spanOf(part), textOf(part))) return undefined;
    perSide ||= readPerSide(reading, part.side);
    for (let index = 0; index < count; index++) parts.push(quantity);
  }
  const rest = buildDuration(reading, node.rest);
  return { kind: 'cluster', parts, perSide, ...(rest !== undefined && { rest: toQuantity(rest, 'clock') }) };
}

function buildRating(reading: EntryReading, node: ast.Rating): Rating[] {
  if (!node.$cstNode) return [];
  const span = spanOf(node);
  if (node.value === undefined) {
    if (!reading.broken.has(span.line)) reading.report('missing-value', span, `Expected a number after ${node.scale}`);
    return [];
  }
  const value = toNumber(node.value);
  const high = node.high === undefined ? undefined : toNumber(node.high);
  for (const number of high === undefined ? [value] : [value, high]) {
    if (!reading.accept(node.scale, number, span, textOf(node))) return [];
    if (node.scale === 'rpe' && !Number.isInteger(number * 2)) {
      reading.report('out-of-range', span, `${textOf(node)}: RPE goes in half points`);
      return [];
    }
  }
  return [{ scale: node.scale, value, ...(high !== undefined && { high }), span }];
}

export function buildModifier(reading: EntryReading, node: ast.Modifier): Modifier | undefined {
  const span = spanOf(node);
  const missing = (message: string): undefined => {
    if (!reading.broken.has(span.line)) reading.report('missing-value', span, message);
    return undefined;
  };
  switch (node.$type) {
    case 'TempoModifier': {
      if (node.tempo === undefined) {
        if (!reading.broken.has(span.line)) reading.report('tempo-form', span, 'Expected a tempo such as 3-1-X-0 after tempo');
        return undefined;
      }
      const phases = node.tempo.toUpperCase().split(/[^0-9X]/).map((phase) => (phase === 'X' ? 'X' : Number(phase)));
      return { kind: 'tempo', phases, span };
    }
    case 'RestModifier': {
      if (node.step) return buildStep(reading, node.step, span, { onRest: true });
      const low = buildDuration(reading, node.low);
      if (low === undefined) return node.low ? undefined : missing('Expected a time after rest, such as 1:30');
      const high = buildDuration(reading, node.high);
      return { kind: 'rest', low: toQuantity(low, 'clock'), ...(high !== undefined && { high: toQuantity(high, 'clock') }), span };
    }
    case 'SettingModifier':
      return node.text ? { kind: 'setting', text: buildName(node.text).text, span } : missing('Expected a setting, such as box 40 cm');
    case 'PainModifier': {
      if (node.score === undefined) return missing('Expected a number from 0 to 10 after pain, and where it hurts');
      const score = toNumber(node.score);
      if (!reading.accept('pain', score, span, node.score)) return undefined;
      return { kind: 'pain', score, ...(node.where && { where: buildName(node.where).text }), span };
    }
    case 'InsteadModifier':
      return node.name ? { kind: 'instead', of: buildName(node.name), span } : missing('Expected a movement after instead of');
    case 'StallModifier': {
      const step = node.step && buildStep(reading, node.step, spanOf(node.step), {});
      return step && { kind: 'stall', misses: toNumber(node.misses), step, span };
    }
    case 'StepModifier':
      return node.step && buildStep(reading, node.step, span, { then: node.then });
  }
}

const STEP_UNITS: ReadonlyMap<string, StepUnit> = new Map<string, StepUnit>([
  ['rep', 'rep'],
  ['reps', 'rep'],
  ['set', 'set'],
  ['sets', 'set'],
  ['%', '%'],
  ['rpe', 'rpe'],
  ['rir', 'rir'],
]);

export function buildStep(
  reading: EntryReading,
  node: ast.Step | ast.RestStep,
  span: Span,
  options: { onRest?: boolean; then?: boolean },
): Step | undefined {
  const unit = readStepUnit(node.unit);
  if (node.amount === undefined) return undefined;
  if (unit === undefined) {
    reading.report('missing-unit', span, `A step needs its unit: +1 rep, +2.5 kg, +5 s`);
    return undefined;
  }
  const boundUnit = readStepUnit(node.boundUnit);
  return {
    kind: 'step',
    sign: node.sign === '-' ? -1 : 1,
    amount: toNumber(node.amount),
    unit,
    onRest: options.onRest ?? false,
    ...(node.each && { each: node.each }),
    ...(node.bound !== undefined && { bound: toNumber(node.bound) }),
    ...(boundUnit && { boundUnit }),
    then: options.then ?? false,
    ...(node.from !== undefined && { from: toNumber(node.from) }),
    span,
  };
}

function readStepUnit(text: string | undefined): StepUnit | undefined {
  if (text === undefined) return undefined;
  const lower = text.toLowerCase();
  return STEP_UNITS.get(lower) ?? (UNIT_WORDS.get(lower)?.unit as StepUnit | undefined);
}


