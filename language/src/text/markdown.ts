/** What would make a link of an address, a heading of the line above, a list or a rule; the rest marks up wherever it stands. */
const AT_THE_BEGINNING: readonly (readonly [RegExp, string])[] = [
  [/^([-+](?=\s|$)|--|=)/, '\\$1'],
  [/^(\d+)([.)])(?=\s|$)/, '$1\\$2'],
];
const ADDRESSES: readonly (readonly [RegExp, string])[] = [
  [/:(?=\/\/)/g, '\\:'],
  [/\b(www)\./gi, '$1\\.'],
  [/@(?=\w)/g, '\\@'],
];

/** A coach's own words, so that they are shown as written and mark nothing up. */
export function escapeMarkdown(text: string): string {
  const escaped = text.replace(/\s+/g, ' ').replace(/[\\`*_{}[\]<>|~#&$!]/g, '\\$&');
  return [...ADDRESSES, ...AT_THE_BEGINNING].reduce(
    (written, [pattern, instead]) => written.replace(pattern, instead),
    escaped,
  );
}
