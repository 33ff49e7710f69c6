import type { Written } from '../model/source.ts';

/** Moves lines in by one step. */
export function indent(lines: readonly string[]): string[] {
  return lines.map((line) => `  ${line}`);
}

/** The line of a property, or none where it is not said. */
export function printProperty(word: string, value: string | undefined): string[] {
  return value === undefined ? [] : [`${word} ${value}`.trimEnd()];
}

/** `needs dumbbell, bench`: one line for several values, none for no value. */
export function printList(word: string, values: readonly string[]): string[] {
  return printProperty(word, values.length > 0 ? values.join(', ') : undefined);
}

/** `, travelling`: free text behind a comma. */
export function printReason(reason: string | undefined): string {
  return reason === undefined ? '' : `, ${reason}`;
}

export function printNotes(notes: readonly Written[]): string[] {
  return notes.map((note) => `> ${note.text}`.trimEnd());
}

export function textsOf(list: readonly Written[]): string[] {
  return list.map((written) => written.text);
}
