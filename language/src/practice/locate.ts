import type { IsoDate } from '../calendar/iso-date.ts';
import type { Block, Entry, FileModel, MovementLine, PlacedEntry, SessionFacts } from '../model/entry.ts';
import type { Amount, Cell, Load, Modifier, Rating, SetGroup } from '../model/quantity.ts';
import type { Span, Written } from '../model/source.ts';

/** What may stand under a cursor. `word` is a word of the notation, as the table of help names it. */
export type Thing =
  | { readonly kind: 'movement'; readonly name: string }
  | { readonly kind: 'athlete'; readonly name: string }
  | { readonly kind: 'place'; readonly name: string }
  | { readonly kind: 'plan'; readonly name: string }
  | { readonly kind: 'avoided'; readonly name: string }
  | { readonly kind: 'term'; readonly word: string; readonly name: string }
  | { readonly kind: 'date'; readonly date: IsoDate }
  | { readonly kind: 'amount'; readonly amount: Amount }
  | { readonly kind: 'load'; readonly load: Load }
  | { readonly kind: 'rating'; readonly rating: Rating }
  | { readonly kind: 'word'; readonly word: string }
  /** Behind `# ignore`. */
  | { readonly kind: 'check'; readonly code: string };

/** Where in training something stands; nothing of it outside the blocks of a session or a plan. */
export interface TrainingPlace {
  readonly block?: Block;
  readonly line?: MovementLine;
  /** Which of the line's cells: 0 for the first. */
  readonly cell?: number;
}

export type Located = Thing & TrainingPlace & { readonly placed: PlacedEntry; readonly span: Span };

type Found = Thing & TrainingPlace & { readonly span: Span };

/**
 * The thing at a line and UTF-16 column of a file, both from 0: in `Back Squat: 5 @ 8<|>0 kg` the load. Of things that
 * hold one another it is the innermost; right behind a thing still counts as at it.
 */
export function locate(file: FileModel, line: number, column: number): Located | undefined {
  const placed = file.entries.find((candidate) => line < candidate.line + candidate.entry.lineCount);
  if (!placed || line < placed.line) return undefined;
  const entryLine = line - placed.line;
  let best: Found | undefined;
  for (const found of listThings(placed.entry)) {
    const { span } = found;
    if (span.line !== entryLine || column < span.start || column > span.end) continue;
    if (!best || span.end - span.start < best.span.end - best.span.start) best = found;
  }
  return best && { ...best, placed };
}

function* listThings(entry: Entry): Iterable<Found> {
  yield { kind: 'word', word: entry.kind === 'unknown' ? 'unknown entry' : entry.kind, span: entry.header };
  yield* words('note', entry.notes);
  switch (entry.kind) {
    case 'units':
      return;
    case 'exercise':
      yield* named('movement', entry.name);
      yield* terms('pattern', entry.pattern);
      yield* terms('work', entry.work);
      yield* terms('position', entry.position);
      for (const { direction } of entry.trunk) yield* terms('trunk', direction);
      for (const { name } of entry.muscles) yield* terms('muscles', name);
      for (const name of entry.needs) yield* terms('needs', name);
      if (entry.bodyShare) yield { kind: 'word', word: 'exercise bodyweight', span: entry.bodyShare.span };
      for (const name of entry.also) yield* terms('also', name);
      for (const name of entry.easier) yield* namedBehind('easier', 'movement', name);
      for (const name of entry.harder) yield* namedBehind('harder', 'movement', name);
      yield* words('setup', entry.setups.map(fromLineStart));
      yield* words('cue', entry.cues.map(fromLineStart));
      yield* words('caution', entry.cautions.map(fromLineStart));
      return;
    case 'place':
      yield* named('place', entry.name);
      for (const { name } of entry.stacks) yield* terms('stacks', name);
      for (const name of entry.has) yield* terms('has', name);
      return;
    case 'athlete':
      yield* named('athlete', entry.name);
      yield* words('athlete bodyweight', entry.weighIns);
      yield* words('max', entry.maxes);
      yield* words('goal', entry.goals);
      yield* words('retest', entry.retests);
      yield* words('avoid', entry.avoid);
      yield* words('away', entry.away);
      yield* words('screened', entry.screened);
      for (const { movement } of [...entry.maxes, ...entry.goals, ...entry.retests])
        yield* named('movement', movement);
      for (const { what } of entry.avoid) yield { kind: 'avoided', name: what.text, span: what.span };
      for (const { set } of entry.goals) if (set) yield* listOfSet(set, {});
      return;
    case 'plan':
      yield* named('plan', entry.name);
      for (const name of entry.athletes) yield* namedBehind('for', 'athlete', name);
      yield* namedBehind('at', 'place', entry.place);
      if (entry.starts) {
        yield { kind: 'word', word: 'starts', span: fromLineStart(entry.starts).span };
        if (entry.starts.date) yield { kind: 'date', date: entry.starts.date, span: entry.starts.span };
      }
      yield* namedBehind('follows', 'plan', entry.follows);
      if (entry.weeks) yield { kind: 'word', word: 'weeks', span: entry.weeks.span };
      yield* words('deload', entry.deloads);
      yield* words('days', entry.weekdays.map(fromLineStart));
      yield* words('day', entry.days);
      for (const day of entry.days) {
        yield* words('note', day.notes);
        for (const block of day.blocks) yield* listOfBlock(block);
      }
      return;
    case 'session':
      if (entry.date?.date) yield { kind: 'date', date: entry.date.date, span: entry.date.span };
      for (const name of entry.athletes) yield* named('athlete', name);
      yield* named('place', entry.place);
      yield* named('plan', entry.plan?.name);
      yield* listOfFacts(entry);
      for (const block of entry.blocks) yield* listOfBlock(block);
      return;
    case 'unknown':
      yield* listOfFacts(entry);
      for (const block of entry.blocks) yield* listOfBlock(block);
  }
}

function* listOfFacts(facts: SessionFacts): Iterable<Found> {
  for (const word of ['lasted', 'sleep', 'readiness', 'missed'] as const) {
    const fact = facts[word];
    if (fact) yield { kind: 'word', word, span: fact.span };
  }
  if (facts.efforts) yield { kind: 'word', word: 'effort', span: facts.efforts.span };
  if (facts.bodyweight) yield { kind: 'word', word: 'session bodyweight', span: facts.bodyweight.span };
  yield* words('pain', facts.pains);
}

function* listOfBlock(block: Block): Iterable<Found> {
  const inBlock = function* (things: Iterable<Found>): Iterable<Found> {
    for (const thing of things) yield { ...thing, block };
  };
  if (!block.implicit) yield { kind: 'word', word: block.kind, block, span: block.span };
  if (block.timesSpan) yield { kind: 'word', word: 'time', block, span: block.timesSpan };
  if (block.done) yield { kind: 'word', word: 'done', block, span: block.done.span };
  yield* inBlock(words('rest line', block.restsBetween));
  yield* inBlock(words('step', block.restSteps));
  if (block.roundStep) yield* inBlock(words('step', [block.roundStep]));
  yield* inBlock(words('note', block.notes));
  for (const line of block.lines) yield* inBlock(listOfLine(line));
}

function* listOfLine(line: MovementLine): Iterable<Found> {
  if (line.purpose !== 'work')
    yield { kind: 'word', word: line.purpose, line, span: upTo(line.name, line.span) };
  if (line.week !== undefined) yield { kind: 'word', word: 'week', line, span: upTo(line.name, line.span) };
  if (line.label) yield { kind: 'word', word: 'label', line, span: line.label.span };
  yield { kind: 'movement', name: line.name.text, line, span: line.name.span };
  yield* words('note', line.notes);
  for (const [index, cell] of line.cells.entries()) yield* listOfCell(cell, { line, cell: index });
  for (const modifier of line.modifiers) yield* listOfModifier(modifier, { line });
}

function* listOfCell(cell: Cell, place: TrainingPlace): Iterable<Found> {
  for (const set of cell.sets) yield* listOfSet(set, place);
  for (const modifier of cell.modifiers) yield* listOfModifier(modifier, place);
}

function* listOfSet(set: SetGroup, place: TrainingPlace): Iterable<Found> {
  if (set.amount) yield { kind: 'amount', amount: set.amount, ...place, span: set.amountSpan };
  if (set.load && set.loadSpan) {
    yield { kind: 'load', load: set.load, ...place, span: set.loadSpan };
    // Inside the load, and so the inner one.
    if (set.load.kind === 'percent' && set.load.of) yield* named('movement', set.load.of);
  }
  for (const rating of set.ratings) yield { kind: 'rating', rating, ...place, span: rating.span };
  for (const drop of set.drops) {
    yield drop.load
      ? { kind: 'load', load: drop.load, ...place, span: drop.span }
      : { kind: 'word', word: 'drop', ...place, span: drop.span };
  }
}

function* listOfModifier(modifier: Modifier, place: TrainingPlace): Iterable<Found> {
  const word = modifier.kind === 'step' && modifier.whenFull ? 'step when full' : modifier.kind;
  yield { kind: 'word', word, ...place, span: modifier.span };
  if (modifier.kind === 'instead')
    yield { kind: 'movement', name: modifier.of.text, ...place, span: modifier.of.span };
}

function* words(word: string, written: readonly { readonly span: Span }[]): Iterable<Found> {
  for (const { span } of written) yield { kind: 'word', word, span };
}

type NamedKind = 'movement' | 'athlete' | 'place' | 'plan';

function* named(kind: NamedKind, written: Written | undefined): Iterable<Found> {
  if (written) yield { kind, name: written.text, span: written.span };
}

/** A value and the word before it: `easier Box Squat`. */
function* namedBehind(word: string, kind: NamedKind, written: Written | undefined): Iterable<Found> {
  if (written) yield { kind: 'word', word, span: fromLineStart(written).span };
  yield* named(kind, written);
}

function* terms(word: string, written: Written | undefined): Iterable<Found> {
  if (!written) return;
  yield { kind: 'word', word, span: fromLineStart(written).span };
  yield { kind: 'term', word, name: written.text, span: written.span };
}

/** A property's word stands before its value, and the model keeps the place of the value alone. */
function fromLineStart<T extends { readonly span: Span }>(written: T): { readonly span: Span } {
  return { span: { ...written.span, start: 0 } };
}

function upTo(name: Written, line: Span): Span {
  return { ...line, end: Math.max(line.start, name.span.start - 1) };
}
