/** Text that a message can hold: not longer than a few words, and nothing that cannot be seen. */
export function shorten(text: string): string {
  const seen = text.replace(/[\p{C}\p{Zl}\p{Zp}]/gu, (char) => {
    const point = char.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
    return `U+${point}`;
  });
  return seen.length > 40 ? `${seen.slice(0, 39)}…` : seen;
}
