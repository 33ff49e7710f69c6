import type { Block, BlockKind, Done, MovementLine, RestBetween, RoundTime } from '../model/entry.ts';
import type { Quantity, Step } from '../model/quantity.ts';
import type { Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { buildStep } from './build-sets.ts';
import { buildDuration, buildQuantity, toQuantity } from './build-values.ts';
import { reportSpelling } from './build-movement-line.ts';
import { type EntryReading, spanOf, textOf, toNumber } from './line-reading.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** A block while its lines come in. */
export type OpenBlock = Mutable<Omit<Block, 'lines' | 'restsBetween' | 'notes' | 'restSteps'>> & {
  lines: MovementLine[];
  restsBetween: RestBetween[];
  notes: Written[];
  restSteps: Step[];
};

export function openBlock(kind: BlockKind, span: Span, implicit: boolean, letter?: string): OpenBlock {
  return {
    kind,
    implicit,
    ...(letter && { letter }),
    passes: 1,
    alternating: false,
    lines: [],
    restsBetween: [],
    times: [],
    restsTaken: [],
    restSteps: [],
    notes: [],
    span,
    lastLine: span.line,
  };
}

/** `B circuit, 4 rounds, rest 1:15` with all its settings. */
export function buildBlockHeader(reading: EntryReading, node: ast.BlockLine): OpenBlock {
  const span = spanOf(node);
  const block = openBlock(readKind(node.kind), span, false, node.letter?.toUpperCase());
  if (node.kind?.$cstNode) {
    reportSpelling(reading, node.kind);
    applyKind(reading, block, node.kind);
  }
  for (const option of node.options) if (option.$cstNode) applyOption(reading, block, option);
  return block;
}

function readKind(kind: ast.BlockKind | undefined): BlockKind {
  switch (kind?.$type) {
    case 'PlainKind':
      return kind.word;
    case 'GiantKind':
      return 'giant set';
    case 'EveryKind':
      return 'every';
    case 'AmrapKind':
      return 'amrap';
    case 'ForTimeKind':
      return 'for time';
    case 'IntervalsKind':
      return 'intervals';
    default:
      return 'straight';
  }
}

function applyKind(reading: EntryReading, block: OpenBlock, kind: ast.BlockKind): void {
  const missing = (message: string): void => {
    if (!reading.broken.has(block.span.line)) reading.report('missing-value', spanOf(kind), message);
  };
  switch (kind.$type) {
    case 'EveryKind': {
      const interval = buildDuration(reading, kind.interval);
      const total = buildDuration(reading, kind.total);
      if (interval !== undefined && interval > 0) block.every = { interval, ...(total !== undefined && { total }) };
      else if (!kind.interval) missing('Expected times such as every 1:00 for 10:00');
      break;
    }
    case 'AmrapKind': {
      const window = buildDuration(reading, kind.window);
      if (window !== undefined) block.window = window;
      else if (!kind.window) missing('Expected how long: amrap 12:00');
      break;
    }
    case 'IntervalsKind':
      applyIntervals(reading, block, kind);
      break;
    default:
      if (kind.rounds?.$cstNode) applyRounds(reading, block, kind.rounds);
  }
}

function applyIntervals(reading: EntryReading, block: OpenBlock, kind: ast.IntervalsKind): void {
  const intervals: Mutable<NonNullable<Block['intervals']>> = {};
  if (kind.on !== undefined) {
    const [minutes, seconds] = kind.on.split(':').map(Number) as [number, number];
    intervals.on = minutes * 60 + seconds;
  } else if (kind.unit !== undefined && kind.count !== undefined) {
    intervals.on = toQuantity(toNumber(kind.count), kind.unit as 's').value;
  } else if (kind.count !== undefined) {
    const span = spanOf(kind);
    const count = toNumber(kind.count);
    if (reading.accept('rounds', count, span, textOf(kind))) {
      intervals.count = count;
      block.rounds = count;
    }
    const work = kind.work?.$cstNode ? buildQuantity(reading, kind.work) : undefined;
    if (work) intervals.work = work;
  } else if (!reading.broken.has(block.span.line)) {
    reading.report('missing-value', spanOf(kind), 'Expected intervals 0:40 on, 0:20 off or intervals 6 x 500 m');
  }
  block.intervals = intervals;
}

function applyOption(reading: EntryReading, block: OpenBlock, option: ast.BlockOption): void {
  const span = spanOf(option);
  switch (option.$type) {
    case 'RoundsOption':
      if (option.rounds?.$cstNode) applyRounds(reading, block, option.rounds);
      break;
    case 'RestOption': {
      const low = buildDuration(reading, option.low);
      const high = buildDuration(reading, option.high);
      if (low !== undefined) block.rest = { low, ...(high !== undefined && { high }) };
      else if (!option.low && !reading.broken.has(span.line)) {
        reading.report('missing-value', span, 'Expected a time after rest, such as 1:15');
      }
      break;
    }
    case 'CapOption': {
      const cap = buildDuration(reading, option.cap);
      if (cap !== undefined) block.cap = cap;
      break;
    }
    case 'AlternatingOption':
      block.alternating = true;
      break;
    case 'OffOption': {
      const off = buildDuration(reading, option.off);
      if (off !== undefined) block.intervals = { ...block.intervals, off };
      break;
    }
    case 'UnknownOption':
      reading.report('unknown-item', span, `A block knows no "${textOf(option)}": it takes rounds, rest, cap and alternating`);
  }
}

function applyRounds(reading: EntryReading, block: OpenBlock, node: ast.Rounds): void {
  const span = spanOf(node);
  const rounds = toNumber(node.rounds);
  if (reading.accept('rounds', rounds, span, textOf(node))) block.rounds = rounds;
  if (node.passes === undefined) return;
  const passes = toNumber(node.passes);
  if (reading.accept('passes', passes, span, textOf(node))) block.passes = passes;
}

/** `time 2:55, 3:02, ?`: one list, or one for each athlete between bars. */
export function applyTimes(reading: EntryReading, block: OpenBlock, node: ast.TimeLine): void {
  const span = spanOf(node);
  const cells = node.cells.filter((cell) => cell.$cstNode);
  if (cells.length === 0 && !reading.broken.has(span.line)) {
    reading.report('missing-value', span, 'Expected times after time, such as 2:55, 3:02, ?');
  }
  if (block.timesSpan) reading.report('repeated-property', span, 'This block has its times already: the last line counts');
  block.times = cells.map((cell) => cell.times.filter((entry) => entry.$cstNode).map((entry) => readTime(reading, entry)));
  block.timesSpan = span;
}

function readTime(reading: EntryReading, entry: ast.TimeEntry): RoundTime {
  return entry.unrecorded ? undefined : buildDuration(reading, entry.time);
}

export function applyDone(reading: EntryReading, block: OpenBlock, node: ast.DoneLine): void {
  const span = spanOf(node);
  const result = node.results.find((candidate) => candidate.$cstNode);
  if (!result) {
    if (!reading.broken.has(span.line)) reading.report('missing-value', span, 'Expected how it ended: done in 9:48, or done 2 of 4 rounds');
    return;
  }
  if (block.done) reading.report('repeated-property', span, 'This block has its end already: the last line counts');
  const seconds = buildDuration(reading, result.time);
  const rounds = result.rounds === undefined ? undefined : toNumber(result.rounds);
  const of = result.of === undefined ? undefined : toNumber(result.of);
  if (rounds !== undefined && !Number.isInteger(rounds)) {
    reading.report('out-of-range', span, `${result.rounds} rounds: write whole rounds and what was added, such as 4 rounds + 5`);
    return;
  }
  const plus = result.plus
    .filter((quantity) => quantity.$cstNode)
    .map((quantity) => buildQuantity(reading, quantity))
    .filter((quantity): quantity is Quantity => quantity !== undefined);
  const done: Done = {
    ...(seconds !== undefined && { seconds }),
    ...(rounds !== undefined && { rounds }),
    ...(of !== undefined && { of }),
    plus,
    span,
  };
  block.done = done;
}

/** One value is the rest at that place, several are the rests taken round by round, a step is a plan's. */
export function applyRest(reading: EntryReading, block: OpenBlock, node: ast.RestLine): void {
  const span = spanOf(node);
  if (node.step?.$cstNode) {
    const step = buildStep(reading, node.step, span, { onRest: true });
    if (step) block.restSteps.push(step);
    return;
  }
  const rests = node.rests.filter((entry) => entry.$cstNode).map((entry) => readTime(reading, entry));
  if (rests.length === 0 && !reading.broken.has(span.line)) {
    reading.report('missing-value', span, 'Expected a time after rest, such as 1:15');
  } else if (rests.length === 1 && rests[0] !== undefined) {
    block.restsBetween.push({ after: block.lines.length - 1, seconds: rests[0], span });
  } else if (rests.length > 1) {
    block.restsTaken = rests;
  }
}


