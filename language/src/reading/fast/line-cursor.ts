import type { Span } from '../../model/source.ts';
import { parseClock } from '../../units/duration.ts';

/** What is thrown where a line is not regular. A plain constant: no trace of the stack is wanted, nor paid for. */
export const IRREGULAR = Symbol('irregular');

/** The whole entry is left to the generated parser. */
export function giveUp(): never {
  throw IRREGULAR;
}

const SPACE = 32;
const QUOTE = 39;

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isLetter = (code: number): boolean => (code >= 97 && code <= 122) || (code >= 65 && code <= 90);

/**
 * Goes over one line of plain ASCII from left to right. Whatever is read moves it on, so that no loop can stand still;
 * whatever it cannot read with certainty gives up. Behind each item, spaces are skipped.
 */
export class LineCursor {
  readonly text: string;
  readonly line: number;
  at: number;
  /** End of the last item, without the spaces behind it. */
  end: number;

  constructor(text: string, line: number, at: number) {
    this.text = text;
    this.line = line;
    this.at = at;
    this.end = at;
    this.skipSpaces();
  }

  get isDone(): boolean {
    return this.at >= this.text.length;
  }

  /** The character here, or NaN behind the end. */
  get code(): number {
    return this.text.charCodeAt(this.at);
  }

  spanFrom(start: number): Span {
    return { line: this.line, start, end: this.end };
  }

  private skipSpaces(): void {
    while (this.text.charCodeAt(this.at) === SPACE) this.at++;
  }

  private moveTo(end: number): void {
    this.at = end;
    this.end = end;
    this.skipSpaces();
  }

  /** Takes a symbol of one character if it stands here. */
  takes(symbol: string): boolean {
    if (this.text[this.at] !== symbol) return false;
    this.moveTo(this.at + 1);
    return true;
  }

  /** Whether a word begins here. */
  get atWord(): boolean {
    return isLetter(this.code);
  }

  get atDigit(): boolean {
    return isDigit(this.code);
  }

  /** Where the letters end that begin here. */
  private findWordEnd(): number {
    let end = this.at;
    while (isLetter(this.text.charCodeAt(end))) end++;
    // An apostrophe may belong to the word: nothing of the notation has one.
    return this.text.charCodeAt(end) === QUOTE ? giveUp() : end;
  }

  /** The word here without taking it; empty where none stands. */
  peekWord(): string {
    return this.atWord ? this.text.slice(this.at, this.findWordEnd()) : '';
  }

  /** Takes the word if it is just this one. */
  takesWord(word: string): boolean {
    if (!this.text.startsWith(word, this.at)) return false;
    const end = this.at + word.length;
    const next = this.text.charCodeAt(end);
    if (isLetter(next) || next === QUOTE) return false;
    this.moveTo(end);
    return true;
  }

  /** Takes the word here if the table has it, and gives what it says there. */
  takeFrom<T>(table: ReadonlyMap<string, T>): T | undefined {
    const word = this.peekWord();
    const found = word === '' ? undefined : table.get(word);
    if (found !== undefined) this.moveTo(this.at + word.length);
    return found;
  }

  /** `8`, `82.5`. A clock time, a date, a ladder and a range are no number: they give up. */
  takeNumber(): number {
    const start = this.at;
    let end = this.skipDigits(start);
    if (end === start) giveUp();
    if (this.text[end] === '.') {
      const decimals = end + 1;
      end = this.skipDigits(decimals);
      if (end === decimals) giveUp();
    }
    if (':.-'.includes(this.text[end] ?? ' ')) giveUp();
    this.moveTo(end);
    return Number(this.text.slice(start, end));
  }

  takeWhole(low: number, high: number): number {
    const value = this.takeNumber();
    return Number.isInteger(value) && value >= low && value <= high ? value : giveUp();
  }

  /** Whether `4:05` or `1:02:03` stands here. */
  get atClock(): boolean {
    return this.atDigit && this.text[this.skipDigits(this.at)] === ':';
  }

  /** The text of a clock time. */
  takeClock(): string {
    const start = this.at;
    let end = this.skipDigits(start);
    if (this.text[end] !== ':') giveUp();
    while (this.text[end] === ':') {
      const next = this.skipDigits(end + 1);
      if (next !== end + 3) giveUp();
      end = next;
    }
    if (this.text[end] === '.' || this.text[end] === '-') giveUp();
    this.moveTo(end);
    return this.text.slice(start, end);
  }

  takeSeconds(): number {
    return parseClock(this.takeClock()) ?? giveUp();
  }

  /** Free text up to a comma or a bar; empty where none stands. */
  takeText(): string {
    const start = this.at;
    let end = start;
    while (end < this.text.length && this.text[end] !== ',' && this.text[end] !== '|') end++;
    while (end > start && this.text.charCodeAt(end - 1) === SPACE) end--;
    if (end > start) this.moveTo(end);
    return this.text.slice(start, end);
  }

  /** Free text up to the end of the line; empty where none stands. */
  takeRest(): string {
    const text = this.text.slice(this.at).trimEnd();
    if (text !== '') this.moveTo(this.at + text.length);
    return text;
  }

  /** What the pattern (sticky) finds here. */
  takeMatch(pattern: RegExp): string {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    if (!found) return giveUp();
    this.moveTo(this.at + found.length);
    return found;
  }

  private skipDigits(from: number): number {
    let at = from;
    while (isDigit(this.text.charCodeAt(at))) at++;
    return at;
  }
}
