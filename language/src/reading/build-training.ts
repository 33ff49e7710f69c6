import type { Block, MovementLine, PlanDay, SessionFacts } from '../model/entry.ts';
import type { Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import {
  applyDone,
  applyRest,
  applyTimes,
  buildBlockHeader,
  type OpenBlock,
  openBlock,
} from './build-block.ts';
import { buildMovementLine } from './build-movement-line.ts';
import { buildPlanLine, type PlanFacts } from './build-plan-facts.ts';
import { buildSessionLine } from './build-session-facts.ts';
import { type EntryReading, spanOf, textOf, toNumber } from './line-reading.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What the lines of a session, a plan or an unknown entry say, in order of reading. */
export interface Training {
  readonly blocks: readonly Block[];
  readonly days: readonly PlanDay[];
  readonly session: SessionFacts;
  readonly plan: PlanFacts;
  readonly notes: readonly Written[];
  readonly strays: readonly Written[];
}

/**
 * Folds flat lines into blocks: a block lasts to the next block header or day. Lines before any header make an
 * implicit straight block; `A1`, `A2` before names make an implicit superset of their letter.
 */
export function buildTraining(reading: EntryReading, lines: readonly ast.TrainingLine[]): Training {
  return new TrainingFold(reading).fold(lines);
}

class TrainingFold {
  private readonly reading: EntryReading;
  private readonly days: (Mutable<PlanDay> & { blocks: Block[]; notes: Written[] })[] = [];
  private readonly blocks: Block[] = [];
  private readonly notes: Written[] = [];
  private readonly strays: Written[] = [];
  private readonly session: Mutable<SessionFacts> = { pains: [] };
  private readonly plan: Mutable<PlanFacts> = { deloads: [], weekdays: [], athletes: [] };
  private block: OpenBlock | undefined;
  /** What the next note belongs to. */
  private noteOwner: Written[] = this.notes;

  constructor(reading: EntryReading) {
    this.reading = reading;
  }

  fold(lines: readonly ast.TrainingLine[]): Training {
    for (const line of lines) if (line.$cstNode) this.take(line);
    const { days, blocks, session, plan, notes, strays } = this;
    return { days, blocks, session, plan, notes, strays };
  }

  private take(line: ast.TrainingLine): void {
    const span = spanOf(line);
    switch (line.$type) {
      case 'NoteLine':
        this.noteOwner.push({ text: line.text.replace(/^>\s*/, ''), span });
        break;
      case 'StrayLine':
        this.strays.push({ text: line.text, span });
        this.noteOwner = this.block?.notes ?? this.notes;
        break;
      case 'MovementLine':
        this.takeMovement(buildMovementLine(this.reading, line));
        break;
      case 'BlockLine':
        this.open(buildBlockHeader(this.reading, line));
        break;
      case 'TimeLine':
        this.within(span, (block) => applyTimes(this.reading, block, line));
        break;
      case 'DoneLine':
        this.within(span, (block) => applyDone(this.reading, block, line));
        break;
      case 'RestLine':
        this.within(span, (block) => applyRest(this.reading, block, line));
        break;
      case 'DayLine':
        this.openDay(line, span);
        break;
      default:
        this.noteOwner = this.notes;
        if (!buildSessionLine(this.reading, this.session, line)) buildPlanLine(this.reading, this.plan, line);
    }
  }

  private open(block: OpenBlock): OpenBlock {
    (this.days.at(-1)?.blocks ?? this.blocks).push(block);
    this.block = block;
    this.noteOwner = block.implicit ? (this.days.at(-1)?.notes ?? this.notes) : block.notes;
    return block;
  }

  private openDay(line: ast.DayLine, span: Span): void {
    if (line.number === undefined)
      this.reading.expect('missing-value', span, 'Expected the number of the day, such as day 1');
    const number = line.number === undefined ? this.days.length + 1 : toNumber(line.number);
    const before = this.days.find((day) => day.number === number);
    this.reading.once(before, span, `day ${number}`);
    const name = line.name?.$cstNode ? textOf(line.name) : undefined;
    const day = { number, ...(name && { name }), blocks: [], notes: [], span };
    this.days.push(day);
    this.block = undefined;
    this.noteOwner = day.notes;
  }

  /** `time`, `done` and `rest` belong to the open block; without one they begin an implicit one. */
  private within(span: Span, apply: (block: OpenBlock) => void): void {
    const block = this.block ?? this.open(openBlock('straight', span, true));
    apply(block);
    block.lastLine = span.line;
    this.noteOwner = block.notes;
  }

  private takeMovement(line: MovementLine | undefined): void {
    if (!line) {
      this.noteOwner = this.block?.notes ?? this.notes;
      return;
    }
    const block = this.findBlock(line);
    const notes: Written[] = [];
    block.lines.push({ ...line, notes });
    block.lastLine = line.span.line;
    this.noteOwner = notes;
  }

  private findBlock(line: MovementLine): OpenBlock {
    const { block } = this;
    const letter = line.label?.text.slice(0, 1);
    const elsewhere = letter !== undefined && block?.letter !== undefined && block.letter !== letter;
    if (block && !block.implicit && !elsewhere) return block;
    if (block && (letter ? block.kind === 'superset' && block.letter === letter : block.kind === 'straight'))
      return block;
    return this.open(openBlock(letter ? 'superset' : 'straight', line.span, true, letter));
  }
}
