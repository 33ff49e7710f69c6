import type { CompletionItem } from '@plimsoll/language/completion/item';

/** A line with an item in it, as an editor leaves it: of a snippet its examples, with the cursor's stops taken out. */
export function acceptInto(line: string, { insert, isSnippet, replace }: CompletionItem): string {
  const text = isSnippet ? resolveSnippet(insert) : insert;
  return line.slice(0, replace.start) + text + line.slice(replace.end);
}

function resolveSnippet(snippet: string): string {
  const examples = new Map<string, string>();
  return snippet
    .replace(/\$\{(\d+):((?:\\.|[^}\\])*)\}/g, (_all, stop: string, example: string) => {
      examples.set(stop, example);
      return example;
    })
    .replace(/\$(\d+)/g, (_all, stop: string) => examples.get(stop) ?? '')
    .replace(/\\([\\$}])/g, '$1');
}
