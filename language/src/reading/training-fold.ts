import type { Block, MovementLine, PlanDay, SessionFacts } from '../model/entry.ts';
import type { Span, Written } from '../model/source.ts';
import { type OpenBlock, openBlock } from './build-block.ts';
import type { PlanFacts } from './build-plan-facts.ts';
import type { EntryReading } from './line-reading.ts';
import { settle } from './settle.ts';

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
 * One line as it was read, by whichever reader. A record (`time`, `done`, `rest`) is said to the block that is open
 * by then, a property to the entry, so that both can tell what stands there twice. The same piece may be taken into
 * many entries: nothing of it is changed.
 */
export type TrainingPiece =
  | { readonly kind: 'note' | 'stray'; readonly text: string; readonly span: Span }
  | { readonly kind: 'movement'; readonly line: MovementLine | undefined }
  | { readonly kind: 'block'; readonly open: () => OpenBlock }
  | {
      readonly kind: 'record';
      readonly span: Span;
      readonly apply: (block: OpenBlock, reading: EntryReading) => void;
    }
  | { readonly kind: 'day'; readonly number?: number; readonly name?: string; readonly span: Span }
  | {
      readonly kind: 'property';
      readonly apply: (
        session: Mutable<SessionFacts>,
        plan: Mutable<PlanFacts>,
        reading: EntryReading,
      ) => void;
    };

/**
 * Folds flat lines into blocks: a block lasts to the next block header or day. Lines before any header make an
 * implicit straight block; `A1`, `A2` before names make an implicit superset of their letter.
 */
export class TrainingFold {
  private readonly reading: EntryReading;
  private readonly days: (Mutable<PlanDay> & { blocks: OpenBlock[]; notes: Written[] })[] = [];
  private readonly blocks: OpenBlock[] = [];
  private readonly notes: Written[] = [];
  private readonly strays: Written[] = [];
  private readonly session: Mutable<SessionFacts> = { pains: settle<SessionFacts['pains'][number]>([]) };
  private readonly plan: Mutable<PlanFacts> = { deloads: [], weekdays: [], athletes: [] };
  private block: OpenBlock | undefined;
  /** What the next note belongs to: a list, or the last line of a block. */
  private noteOwner: Written[] | OpenBlock = this.notes;

  constructor(reading: EntryReading) {
    this.reading = reading;
  }

  finish(): Training {
    const { session, plan } = this;
    return {
      days: settle(
        this.days.map((day) => ({ ...day, blocks: settle(day.blocks.map(close)), notes: settle(day.notes) })),
      ),
      blocks: settle(this.blocks.map(close)),
      session,
      plan,
      notes: settle(this.notes),
      strays: settle(this.strays),
    };
  }

  take(piece: TrainingPiece): void {
    switch (piece.kind) {
      case 'note':
        this.takeNote({ text: piece.text, span: piece.span });
        break;
      case 'stray':
        this.strays.push({ text: piece.text, span: piece.span });
        this.noteOwner = this.block?.notes ?? this.notes;
        break;
      case 'movement':
        this.takeMovement(piece.line);
        break;
      case 'block':
        this.open(piece.open());
        break;
      case 'record':
        this.within(piece.span, piece.apply);
        break;
      case 'day':
        this.openDay(piece.number, piece.name, piece.span);
        break;
      case 'property':
        this.noteOwner = this.notes;
        piece.apply(this.session, this.plan, this.reading);
    }
  }

  private takeNote(note: Written): void {
    const owner = this.noteOwner;
    if (Array.isArray(owner)) {
      owner.push(note);
      return;
    }
    const line = owner.lines.pop()!;
    owner.lines.push({ ...line, notes: [...line.notes, note] });
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
  private within(span: Span, apply: (block: OpenBlock, reading: EntryReading) => void): void {
    const block = this.block ?? this.open(openBlock('straight', span, true));
    apply(block, this.reading);
    block.lastLine = span.line;
    this.noteOwner = block.notes;
  }

  private takeMovement(line: MovementLine | undefined): void {
    if (!line) {
      this.noteOwner = this.block?.notes ?? this.notes;
      return;
    }
    const block = this.findBlock(line);
    block.lines.push(line);
    block.lastLine = line.span.line;
    this.noteOwner = block;
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

function close(open: OpenBlock): Block {
  const block: Mutable<Block> = open;
  block.lines = settle(block.lines);
  block.notes = settle(block.notes);
  return block;
}
