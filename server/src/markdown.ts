/** A coach's own words, so that they are shown as written and mark nothing up. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .replace(/[\\`*_{}[\]<>|~#&$!]/g, '\\$&')
    .replace(/^([-+])(?=\s)/, '\\$1')
    .replace(/^(\d+)([.)])(?=\s)/, '$1\\$2');
}

/** Paragraphs, the empty ones left out. */
export function joinParagraphs(parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join('\n\n');
}

/** Lines of one paragraph; a list where they begin with `- `. */
export function joinLines(lines: readonly (string | undefined)[]): string {
  return lines.filter((line) => line !== undefined && line !== '').join('  \n');
}
