import type { Block, BlockKind, MovementLine, RestBetween, RoundTime } from '../model/entry.ts';
import type { Step } from '../model/quantity.ts';
import type { Span, Written } from '../model/source.ts';
import { printStep } from '../printing/print-modifiers.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { KEYWORD_SPELLINGS } from '../syntax/line-scanner.ts';
import { shorten } from '../text/shorten.ts';
import { buildDuration } from './build-duration.ts';
import { buildStep } from './build-modifier.ts';
import { reportSpelling } from './build-movement-line.ts';
import { buildQuantity, lastTokenSpan, readClock, readUnit, toQuantity } from './build-values.ts';
import { type EntryReading, type Holed, present, spanOf, textOf, toNumber } from './line-reading.ts';
import { settle } from './settle.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** A block while its lines come in. */
export type OpenBlock = Mutable<Omit<Block, 'lines' | 'notes'>> & {
  lines: MovementLine[];
  notes: Written[];
};

/**
 * A block that says nothing yet. What most blocks have is there from the beginning: objects of one form take less room
 * than those that grow, and are read faster.
 */
export function openBlock(kind: BlockKind, span: Span, implicit: boolean, letter?: string): OpenBlock {
  return {
    kind,
    implicit,
    letter: letter || undefined,
    rounds: undefined,
    passes: 1,
    rest: undefined,
    alternating: false,
    lines: [],
    restsBetween: settle<RestBetween>([]),
    times: settle<readonly RoundTime[]>([]),
    timesSpan: undefined,
    restsTaken: settle<RoundTime>([]),
    restSteps: settle<Step>([]),
    notes: [],
    span,
    lastLine: span.line,
  };
}

/** `B circuit, 4 rounds, rest 1:15` with all its settings. */
export function buildBlockHeader(reading: EntryReading, node: Holed<ast.BlockLine>): OpenBlock {
  const block = openBlock(readKind(node.kind), spanOf(node), false, node.letter?.toUpperCase());
  const kind = present(node.kind);
  if (kind) {
    reportSpelling(reading, kind);
    applyKind(reading, block, kind);
  }
  for (const option of node.options) if (option.$cstNode) applyOption(reading, block, option);
  return block;
}

function readKind(kind: Holed<ast.BlockKind> | undefined): BlockKind {
  switch (kind?.$type) {
    case 'PlainKind':
      // The word of a `warm-up` is as it was written.
      return (KEYWORD_SPELLINGS.get(kind.word?.toLowerCase() ?? '') ?? kind.word ?? 'straight') as BlockKind;
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

function applyKind(reading: EntryReading, block: OpenBlock, kind: Holed<ast.BlockKind>): void {
  const span = spanOf(kind);
  switch (kind.$type) {
    case 'EveryKind': {
      if (!kind.interval || (kind.isLimited && !kind.total)) {
        reading.expect('missing-value', span, 'Expected times such as every 1:00 for 10:00');
      }
      const interval = buildDuration(reading, kind.interval);
      const total = buildDuration(reading, kind.total);
      if (interval === 0)
        reading.report('out-of-range', span, 'The time from one start to the next is above 0');
      if (interval) block.every = { interval, ...(total !== undefined && { total }) };
      break;
    }
    case 'AmrapKind': {
      if (!kind.window)
        reading.expect('missing-value', span, 'Expected how long it goes on, such as amrap 12:00');
      const window = buildDuration(reading, kind.window);
      if (window !== undefined) block.window = window;
      break;
    }
    case 'IntervalsKind':
      applyIntervals(reading, block, kind);
      break;
    default:
      if (present(kind.rounds)) applyRounds(reading, block, kind.rounds!);
  }
}

function applyIntervals(reading: EntryReading, block: OpenBlock, kind: Holed<ast.IntervalsKind>): void {
  const span = spanOf(kind);
  const intervals: Mutable<NonNullable<Block['intervals']>> = {};
  if (kind.on !== undefined) {
    const on = readClock(reading, kind.on, span);
    if (on !== undefined) intervals.on = on;
  } else if (kind.unit !== undefined && kind.count !== undefined) {
    const unit = readUnit(reading, kind.unit, lastTokenSpan(kind));
    intervals.on = toQuantity(toNumber(kind.count), unit as 's').value;
  } else if (kind.count === undefined || !kind.work) {
    reading.expect('missing-value', span, 'Expected intervals 0:40 on, 0:20 off, or intervals 6 x 500 m');
  }
  if (kind.times !== undefined && kind.count !== undefined) {
    const count = toNumber(kind.count);
    if (reading.acceptWhole('rounds', count, span, `${kind.count} intervals`)) {
      intervals.count = count;
      block.rounds = count;
    }
    const work = present(kind.work) && buildQuantity(reading, kind.work!);
    if (work) intervals.work = work;
  }
  block.intervals = intervals;
}

function applyOption(reading: EntryReading, block: OpenBlock, option: Holed<ast.BlockOption>): void {
  const span = spanOf(option);
  switch (option.$type) {
    case 'RoundsOption':
      if (present(option.rounds)) applyRounds(reading, block, option.rounds!);
      break;
    case 'RestOption': {
      if (present(option.step)) {
        const step = buildStep(reading, option.step!, span, { onRest: true });
        if (step) block.restSteps = [...block.restSteps, step];
        break;
      }
      if (!option.low) reading.expect('missing-value', span, 'Expected a time after rest, such as 1:15');
      const low = buildDuration(reading, option.low);
      const high = buildDuration(reading, option.high);
      if (low === undefined || !reading.acceptOrder(low, high, span, 'a shorter to a longer rest')) break;
      block.rest = { low, ...(high !== undefined && { high }) };
      break;
    }
    case 'StepOption': {
      const step = present(option.step) && buildStep(reading, option.step!, span, {});
      if (!step) break;
      if (step.unit !== 'round') {
        const message = `A block's header has steps of rounds alone, such as +1 round each week: write ${printStep(step)} behind the sets of a line`;
        reading.report('unknown-item', span, message);
      } else if (reading.once(block.roundStep, span, 'a step of rounds')) block.roundStep = step;
      break;
    }
    case 'CapOption': {
      if (!option.cap) reading.expect('missing-value', span, 'Expected a time after cap, such as 12:00');
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
      reading.report(
        'unknown-item',
        span,
        `A block knows no "${shorten(textOf(option))}": it takes rounds, rest, cap and alternating`,
      );
  }
}

function applyRounds(reading: EntryReading, block: OpenBlock, node: Holed<ast.Rounds>): void {
  const span = spanOf(node);
  if (node.rounds === undefined) return;
  const rounds = toNumber(node.rounds);
  if (reading.acceptWhole('rounds', rounds, span, `${node.rounds} rounds`)) block.rounds = rounds;
  if (node.passes === undefined) return;
  const passes = toNumber(node.passes);
  if (reading.acceptWhole('passes', passes, span, `${node.passes} passes`)) block.passes = passes;
}

/** `time 2:55, 3:02, ?`: one list, or one for each athlete between bars. */
export function applyTimes(reading: EntryReading, block: OpenBlock, node: Holed<ast.TimeLine>): void {
  const span = spanOf(node);
  if (!reading.once(block.timesSpan, span, 'time')) return;
  const cells = node.cells.filter(present);
  if (cells.length === 0) {
    reading.expect('missing-value', span, 'Expected times after time, such as 2:55, 3:02, ?');
    return;
  }
  block.times = cells.map((cell) => cell.times.filter(present).map((entry) => readTime(reading, entry)));
  block.timesSpan = span;
}

function readTime(reading: EntryReading, entry: Holed<ast.TimeEntry>): RoundTime {
  return entry.unrecorded ? undefined : buildDuration(reading, entry.time);
}

export function applyDone(reading: EntryReading, block: OpenBlock, node: Holed<ast.DoneLine>): void {
  const span = spanOf(node);
  const result = present(node.result);
  if (!result) {
    reading.expect(
      'missing-value',
      span,
      'Expected how it ended, such as done in 9:48 or done 2 of 4 rounds',
    );
    return;
  }
  if (!reading.once(block.done, span, 'done')) return;
  const seconds = buildDuration(reading, result.time);
  const rounds = readRounds(reading, result.rounds, span);
  const of = readRounds(reading, result.of, span);
  const plus = result.plus
    .filter(present)
    .map((quantity) => buildQuantity(reading, quantity))
    .filter((quantity) => quantity !== undefined);
  // What stands behind a number that is no result may say what it counts.
  if (reading.broken.has(span.line) || (seconds === undefined && rounds === undefined)) return;
  block.done = {
    ...(seconds !== undefined && { seconds }),
    ...(rounds !== undefined && { rounds }),
    ...(of !== undefined && { of }),
    plus,
    span,
  };
}

/** Rounds that were done: none is fine, a part of one is written behind a plus. */
function readRounds(reading: EntryReading, text: string | undefined, span: Span): number | undefined {
  if (text === undefined) return undefined;
  const rounds = toNumber(text);
  if (Number.isInteger(rounds))
    return reading.accept('roundsDone', rounds, span, `${text} rounds`) ? rounds : undefined;
  const message = `${text} rounds: write whole rounds and what was added, such as done 4 rounds + 5`;
  reading.report('out-of-range', span, message);
  return undefined;
}

/** One value is the rest at that place, several are the rests taken round by round, a step is a plan's. */
export function applyRest(reading: EntryReading, block: OpenBlock, node: Holed<ast.RestLine>): void {
  const span = spanOf(node);
  const step = present(node.step);
  if (step) {
    const built = buildStep(reading, step, span, { onRest: true });
    if (built) block.restSteps = [...block.restSteps, built];
    return;
  }
  const written = node.rests.filter(present);
  const rests = written.map((entry) => readTime(reading, entry));
  if (written.length === 0) {
    reading.expect('missing-value', span, 'Expected a time after rest, such as 1:15');
  } else if (written.length > 1 || written[0]!.unrecorded) {
    block.restsTaken = rests;
  } else if (rests[0] !== undefined) {
    const high = buildDuration(reading, node.high);
    if (!reading.acceptOrder(rests[0], high, span, 'a shorter to a longer rest')) return;
    const after = block.lines.length - 1;
    const rest = { after, seconds: rests[0], ...(high !== undefined && { high }), span };
    block.restsBetween = [...block.restsBetween, rest];
  }
}
