import type { BlockKind } from '../model/entry.ts';
import { type ScannedLine, scanLine } from '../syntax/line-scanner.ts';
import type { LineContext } from '../vocabulary/keywords.ts';

/** Where a line stands: the kind of entry, and how many steps it is indented. */
export interface PlacedLine {
  readonly text: string;
  readonly context: LineContext;
  readonly kind: ScannedLine['line']['kind'];
  /** Whether nothing but a comment stands on it. */
  readonly isComment: boolean;
  readonly depth: number;
}

interface OpenBlock {
  readonly kind: BlockKind | 'other';
  readonly implicit: boolean;
  readonly letter: string | undefined;
}

const BLOCK_LINES = new Set(['time', 'done', 'rest']);

/** Finds the place of each line of a file, as reading folds lines into blocks and days. */
export function placeLines(lines: readonly string[]): PlacedLine[] {
  const outline = new Outline();
  const placed = lines.map((text) => outline.take(text));
  return placed.map((line, at) => (line.isComment ? { ...line, depth: placeComment(placed, at) } : line));
}

/** A comment stands like the line that it is about: the next one of its entry, else the one before. */
function placeComment(placed: readonly PlacedLine[], at: number): number {
  const next = placed.slice(at + 1).find(({ kind }) => kind !== 'blank');
  if (next && !opens(next)) return next.depth;
  // At the margin it is about the next entry, or about the file.
  if (!/^\s/.test(placed[at]!.text)) return 0;
  const previous = placed.slice(0, at).findLast(({ kind }) => kind !== 'blank');
  return previous ? Math.max(1, previous.depth) : 0;
}

export function opens({ kind }: Pick<PlacedLine, 'kind'>): boolean {
  return kind === 'header' || kind === 'title';
}

class Outline {
  private context: LineContext = 'unknown';
  private inDay = false;
  private block: OpenBlock | undefined;
  /** Steps of a note that follows. */
  private noteDepth = 1;

  take(text: string): PlacedLine {
    const scanned = scanLine(text, this.context);
    const { line, tokens } = scanned;
    const { kind } = line;
    const isComment = kind === 'blank' && tokens.length > 0;
    const depth = this.findDepth(text, scanned);
    return { text, context: this.context, kind, isComment, depth };
  }

  private findDepth(text: string, scanned: ScannedLine): number {
    const { line } = scanned;
    switch (line.kind) {
      case 'blank':
        return 0;
      case 'header':
      case 'title':
        this.context = line.kind === 'header' ? line.word : 'unknown';
        this.inDay = false;
        this.block = undefined;
        this.noteDepth = 1;
        return 0;
      case 'note':
        return this.noteDepth;
      case 'block': {
        const word = scanned.tokens.find((token) => token.kind === 'WORD')?.keyword;
        this.block = {
          kind: word === 'superset' ? 'superset' : 'other',
          implicit: false,
          letter: this.readLetter(text, scanned, 'LETTER'),
        };
        this.noteDepth = this.base + 1;
        return this.base;
      }
      case 'movement':
        this.findBlock(this.readLetter(text, scanned, 'LABEL'));
        break;
      case 'property':
        if (line.word === 'day') {
          this.inDay = true;
          this.block = undefined;
          this.noteDepth = 2;
          return 1;
        }
        if (!BLOCK_LINES.has(line.word)) {
          this.noteDepth = 1;
          return 1;
        }
        this.block ??= { kind: 'straight', implicit: true, letter: undefined };
        break;
      case 'stray':
        break;
    }
    this.noteDepth = this.contentDepth;
    return this.contentDepth;
  }

  /** Steps of a block's header: days stand between a plan and its blocks. */
  private get base(): number {
    return this.inDay ? 2 : 1;
  }

  private get contentDepth(): number {
    return this.base + (this.block && !this.block.implicit ? 1 : 0);
  }

  /** Labels of another letter begin a block without a header, and so does the end of labels. */
  private findBlock(letter: string | undefined): void {
    const { block } = this;
    const elsewhere = letter !== undefined && block?.letter !== undefined && block.letter !== letter;
    if (block && !block.implicit && !elsewhere) return;
    const goesOn = letter
      ? block?.kind === 'superset' && block.letter === letter
      : block?.kind === 'straight';
    if (block && goesOn) return;
    this.block = { kind: letter ? 'superset' : 'straight', implicit: true, letter };
  }

  private readLetter(text: string, { tokens }: ScannedLine, kind: 'LETTER' | 'LABEL'): string | undefined {
    const token = tokens.find((candidate) => candidate.kind === kind);
    return token && text.slice(token.start, token.start + 1).toUpperCase();
  }
}
