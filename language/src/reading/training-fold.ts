import type { Block, MovementLine, PlanDay, SessionFacts } from '../model/entry.ts';
import type { Span, Written } from '../model/source.ts';
import { type OpenBlock, openBlock } from './build-block.ts';
import type { PlanFacts } from './build-plan-facts.ts';
import type { EntryReading } from './line-reading.ts';

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

/** A movement's line that takes the notes below it. */
export type OpenLine = Omit<MovementLine, 'notes'> & { readonly notes: Written[] };

/**
 * One line as it was read, by whichever reader. A record (`time`, `done`, `rest`) is said to the block that is open
 * by then, a property to the entry, so that both can tell what stands there twice.
 */
export type TrainingPiece =
  | { readonly kind: 'note' | 'stray'; readonly text: string; readonly span: Span }
  | { readonly kind: 'movement'; readonly line: OpenLine | undefined }
  | { readonly kind: 'block'; readonly block: OpenBlock }
  | { readonly kind: 'record'; readonly span: Span; readonly apply: (block: OpenBlock) => void }
  | { readonly kind: 'day'; readonly number?: number; readonly name?: string; readonly span: Span }
  | {
      readonly kind: 'property';
      readonly apply: (session: Mutable<SessionFacts>, plan: Mutable<PlanFacts>) => void;
    };

/**
 * Folds flat lines into blocks: a block lasts to the next block header or day. Lines before any header make an
 * implicit straight block; `A1`, `A2` before names make an implicit superset of their letter.
 */
export class TrainingFold {
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

  finish(): Training {
    const { days, blocks, session, plan, notes, strays } = this;
    return { days, blocks, session, plan, notes, strays };
  }

  take(piece: TrainingPiece): void {
    switch (piece.kind) {
      case 'note':
        this.noteOwner.push({ text: piece.text, span: piece.span });
        break;
      case 'stray':
        this.strays.push({ text: piece.text, span: piece.span });
        this.noteOwner = this.block?.notes ?? this.notes;
        break;
      case 'movement':
        this.takeMovement(piece.line);
        break;
      case 'block':
        this.open(piece.block);
        break;
      case 'record':
        this.within(piece.span, piece.apply);
        break;
      case 'day':
        this.openDay(piece.number, piece.name, piece.span);
        break;
      case 'property':
        this.noteOwner = this.notes;
        piece.apply(this.session, this.plan);
    }
  }

  private open(block: OpenBlock): OpenBlock {
    (this.days.at(-1)?.blocks ?? this.blocks).push(block);
    this.block = block;
    this.noteOwner = block.implicit ? (this.days.at(-1)?.notes ?? this.notes) : block.notes;
    return block;
  }

  private openDay(written: number | undefined, name: string | undefined, span: Span): void {
    const number = written ?? this.days.length + 1;
    const before = this.days.find((day) => day.number === number);
    this.reading.once(before, span, `day ${number}`);
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

  private takeMovement(line: OpenLine | undefined): void {
    if (!line) {
      this.noteOwner = this.block?.notes ?? this.notes;
      return;
    }
    const block = this.findBlock(line);
    block.lines.push(line);
    block.lastLine = line.span.line;
    this.noteOwner = line.notes;
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
