export { escapeMarkdown } from '@plimsoll/language/text/markdown';

/** Paragraphs, the empty ones left out. */
export function joinParagraphs(parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join('\n\n');
}

/** Lines of one paragraph; a list where they begin with `- `. */
export function joinLines(lines: readonly (string | undefined)[]): string {
  return lines.filter((line) => line !== undefined && line !== '').join('  \n');
}
