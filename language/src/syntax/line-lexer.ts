import { createTokenInstance, type ILexingError, type IToken, type TokenType } from 'chevrotain';
import type { LangiumCoreServices, Lexer, LexerResult, TokenizeOptions } from 'langium';
import { splitLines } from '../text/lines.ts';
import type { LineContext } from '../vocabulary/keywords.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { scanLine } from './line-scanner.ts';
import type { ScannedToken } from './scanned-token.ts';

/**
 * No line that a coach writes holds as many. The parser takes a step down its stack with each error of a line: without
 * an end, a long enough line of nonsense would break it.
 */
const MOST_TOKENS = 1000;

/** What stands behind the most tokens of a line is one that fits nowhere. */
function shortenLine(tokens: readonly ScannedToken[]): readonly ScannedToken[] {
  const first = tokens[MOST_TOKENS];
  return first
    ? [...tokens.slice(0, MOST_TOKENS), { kind: 'ODD', start: first.start, end: tokens.at(-1)!.end }]
    : tokens;
}

/**
 * Gives the parser one line after another: `BOE` or `BOL`, the line's tokens, `NL`. These three take no room, so that
 * a node ends where its text ends, and blank lines give no token. The words of the grammar become keywords; a
 * character that fits nowhere becomes one `ODD` token, so lexing never fails.
 */
export class LineLexer implements Lexer {
  readonly definition: Record<string, TokenType>;

  constructor(services: LangiumCoreServices) {
    const tokens = services.parser.TokenBuilder.buildTokens(services.Grammar) as TokenType[];
    this.definition = Object.fromEntries(tokens.map((token) => [token.name, token]));
  }

  tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const tokens: IToken[] = [];
    const hidden: IToken[] = [];
    const errors: ILexingError[] = [];
    let context: LineContext = 'unknown';
    const lines = splitLines(text);
    for (const [index, line] of lines.entries()) {
      const { line: recognised, tokens: scanned } = scanLine(line.text, context);
      const opens = recognised.kind === 'header' || recognised.kind === 'title';
      if (recognised.kind === 'header') context = recognised.word;
      if (recognised.kind === 'title') context = 'unknown';
      const blank = recognised.kind === 'blank';
      // A cursor on an empty last line may begin a line of any kind: completion needs the parser to stand there.
      const awaited = options?.mode === 'partial' && index === lines.length - 1;
      if (!blank || awaited) tokens.push(this.mark(opens ? 'BOE' : 'BOL', line.offset, index, 0));
      let previous: IToken | undefined;
      for (const token of shortenLine(scanned)) {
        const instance = this.instantiate(token, line.text, line.offset, index);
        if (token.kind === 'COMMENT') {
          hidden.push(instance);
          continue;
        }
        // A message names the token before the one that did not fit; the parser has long gone on by then.
        instance.payload = previous;
        previous = instance;
        tokens.push(instance);
      }
      const end = scanned.findLast((token) => token.kind !== 'COMMENT')?.end ?? 0;
      if (!blank && !awaited) {
        const mark = this.mark('NL', line.offset + end, index, end);
        mark.payload = previous;
        tokens.push(mark);
      }
    }
    return { tokens, hidden, errors };
  }

  private mark(name: string, offset: number, line: number, column: number): IToken {
    return createTokenInstance(
      this.definition[name]!,
      '',
      offset,
      offset - 1,
      line + 1,
      line + 1,
      column + 1,
      column,
    );
  }

  private instantiate(token: ScannedToken, line: string, offset: number, index: number): IToken {
    const { start, end } = token;
    const type = this.definition[this.findType(token)]!;
    const written = line.slice(start, end);
    // A keyword's image is what the tree says: `RPE` is rpe. Where a node stands comes from the offsets.
    const image =
      type.name === token.keyword && token.keyword.length === written.length ? token.keyword : written;
    return createTokenInstance(
      type,
      image,
      offset + start,
      offset + end - 1,
      index + 1,
      index + 1,
      start + 1,
      end,
    );
  }

  private findType(token: ScannedToken): string {
    if (token.kind !== 'WORD' && token.kind !== 'SYMBOL') return token.kind;
    const keyword = token.keyword!;
    if (Object.hasOwn(this.definition, keyword)) return keyword;
    if (token.kind === 'SYMBOL') return 'ODD';
    return UNIT_WORDS.get(keyword)?.token ?? 'WORD';
  }
}
