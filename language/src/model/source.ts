/**
 * Where something stands in its entry: a line counted from the entry's header (0), and UTF-16 columns in it.
 * Counting from the entry keeps an entry's model valid when text above it changes.
 */
export interface Span {
  readonly line: number;
  readonly start: number;
  readonly end: number;
}

/** A piece of text as it was written, and where: a name, a note, a reason. */
export interface Written {
  readonly text: string;
  readonly span: Span;
}

export type Severity = 'error' | 'warning' | 'info' | 'hint';

/** Something to tell the coach about one place in an entry. `code` is stable and in kebab-case. */
export interface Problem {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly span: Span;
  readonly fixes?: readonly Fix[];
}

/** A change offered for a problem: `title` says what it does, `edits` replace spans of the same entry. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

export interface Edit {
  readonly span: Span;
  readonly newText: string;
}
