import type { Amount, Quantity } from '../model/quantity.ts';
import type { Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { buildDuration } from './build-duration.ts';
import { buildQuantity, toQuantity } from './build-values.ts';
import {
  type EntryReading,
  type Holed,
  present,
  replaceBy,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';

/** What a set counts: reps, time, distance or calories; undefined where a slip or a limit was reported. */
export function buildAmount(reading: EntryReading, node: Holed<ast.Amount>): Amount | undefined {
  const span = spanOf(node);
  switch (node.$type) {
    case 'Attempt':
      return buildAttempt(reading, node, span);
    case 'Cluster':
      return buildCluster(reading, node);
    case 'Unrecorded':
      return { kind: 'unrecorded' };
    case 'Skipped':
      return { kind: 'skipped' };
    case 'Amrap':
      return { kind: 'amrap', perSide: readPerSide(node.side) };
    case 'Reps':
      return buildReps(reading, node, span);
    case 'LoadFirst':
      reportLoadFirst(reading, node, span);
      return undefined;
    case 'Ladder': {
      const written = textOf(node).replace(/[^\d]+/g, ', ');
      const message = `${textOf(node)} is several sets: write ${written}`;
      // One digit a phase: a tempo without its word.
      const isTempo = /^\d(?:-\d){3}$/.test(textOf(node));
      reading.report('sets-spelled-apart', span, message, [
        replaceBy(span, written),
        ...(isTempo ? [replaceBy(span, `tempo ${textOf(node)}`)] : []),
      ]);
      return undefined;
    }
  }
}

function buildAttempt(reading: EntryReading, node: Holed<ast.Attempt>, span: Span): Amount | undefined {
  if (node.made === undefined || node.tried === undefined) return undefined;
  const [made, tried] = [toNumber(node.made), toNumber(node.tried)];
  if (![made, tried].every((value) => reading.acceptWhole('reps', value, span, textOf(node))))
    return undefined;
  if (made > tried) {
    const turned = `${node.tried} of ${node.made}`;
    reading.report(
      'range-order',
      span,
      `${textOf(node)}: the reps that were made come first, then those tried`,
      [replaceBy(span, turned)],
    );
    return undefined;
  }
  return { kind: 'attempt', made, tried, perSide: readPerSide(node.side) };
}

/** `100 kg x 5`, `100 kg`. */
function reportLoadFirst(reading: EntryReading, node: Holed<ast.LoadFirst>, span: Span): void {
  const load = `${node.load ?? '?'} ${node.unit ?? ''}`.trim();
  if (node.reps === undefined) {
    reading.report(
      'reps-first',
      span,
      `${textOf(node)} is a load: write the reps before it, such as 5 @ ${load}`,
      [replaceBy(span, `? @ ${load}`)],
    );
    return;
  }
  const written = `${node.reps} @ ${load}`;
  reading.report('reps-first', span, `Write ${written}: reps come before the load`, [
    replaceBy(span, written),
  ]);
}

function buildReps(reading: EntryReading, node: Holed<ast.Reps>, span: Span): Amount | undefined {
  if (node.low?.clock !== undefined && present(node.side)?.other !== undefined) {
    const message = `${textOf(node)} is a pace: write it behind @ with its unit, such as 500 m @ 2:05/500 m`;
    reading.report('syntax', span, message);
    return undefined;
  }
  const slip = findSideSlip(node);
  if (slip !== undefined) {
    const { low, side } = node;
    // `4/5` may be what was made of what was tried too.
    const isTry =
      low!.value !== undefined &&
      low!.unit === undefined &&
      toNumber(low!.value) < toNumber(side!.other ?? '');
    reading.report('side-slip', span, `Write ${slip} for ${textOf(node)}`, [
      replaceBy(span, slip),
      ...(isTry ? [replaceBy(span, `${low!.value} of ${side!.other}`)] : []),
    ]);
    return undefined;
  }
  const perSide = readPerSide(node.side);
  if (node.right) return buildSides(reading, node);
  if (node.high) return buildRange(reading, node, span, perSide);
  const low = present(node.low) && buildQuantity(reading, node.low!);
  if (!low) return undefined;
  return node.open
    ? { kind: 'at-least', quantity: low, perSide }
    : { kind: 'quantity', quantity: low, perSide };
}

function buildSides(reading: EntryReading, node: Holed<ast.Reps>): Amount | undefined {
  const right = present(node.right?.quantity) && buildQuantity(reading, node.right!.quantity);
  const left = present(node.low) && buildQuantity(reading, node.low!, right);
  if (!left || !right) return undefined;
  if (left.measure !== right.measure) {
    reading.report('range-order', spanOf(node), `${textOf(node)}: both sides are counted in the same unit`);
    return undefined;
  }
  return { kind: 'sides', left, right };
}

function buildRange(
  reading: EntryReading,
  node: Holed<ast.Reps>,
  span: Span,
  perSide: boolean,
): Amount | undefined {
  const high = present(node.high) && buildQuantity(reading, node.high!);
  const low = present(node.low) && high && buildQuantity(reading, node.low!, high);
  if (!low || !high) return undefined;
  if (low.measure === high.measure && low.value < high.value) return { kind: 'range', low, high, perSide };
  const [first, second] = [textOf(node.low!), textOf(node.high!)];
  const turned = node.low!.value !== undefined && node.high!.unit === undefined;
  reading.report(
    'range-order',
    span,
    `${textOf(node)}: a range goes from the lower to the higher number, and both count the same`,
    turned && low.measure === 'reps' && low.value > high.value
      ? [
          replaceBy(span, `${second}-${first}`),
          replaceBy(span, `${first}, ${second}`, `Write ${first}, ${second} as two sets`),
        ]
      : [],
  );
  return undefined;
}

/** `10/10`, `8/7`, `10 each`, `10/leg`: what is meant is 10/side, or 8 left 7 right. */
function findSideSlip(node: Holed<ast.Reps>): string | undefined {
  const side = present(node.side);
  const low = present(node.low);
  if (!side || !low) return undefined;
  if (side.each || side.word !== undefined) return `${textOf(low)}/side`;
  if (side.other === undefined) return undefined;
  return side.other === low.value ? `${textOf(low)}/side` : `${textOf(low)} left ${side.other} right`;
}

function readPerSide(node: Holed<ast.PerSide> | undefined): boolean {
  return present(node) !== undefined;
}

function buildCluster(reading: EntryReading, node: Holed<ast.Cluster>): Amount | undefined {
  const parts: Quantity[] = [];
  let perSide = readPerSide(node.side);
  for (const part of node.parts) {
    if (!present(part.quantity)) return undefined;
    const quantity = buildQuantity(reading, part.quantity);
    const count = part.count === undefined ? 1 : toNumber(part.count);
    if (!quantity || !reading.acceptWhole('sets', count, spanOf(part), `${part.count ?? 1} mini-sets`))
      return undefined;
    perSide ||= readPerSide(part.side);
    for (let index = 0; index < count; index++) parts.push(quantity);
  }
  if (parts.length === 0) return undefined;
  const rest = buildDuration(reading, node.rest);
  return { kind: 'cluster', parts, perSide, ...(rest !== undefined && { rest: toQuantity(rest, 'clock') }) };
}
