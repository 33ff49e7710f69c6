import { complete } from '@plimsoll/language/completion/complete';
import type { CompletionKind, CompletionItem as Item } from '@plimsoll/language/completion/item';
import {
  type CompletionContext,
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  type CompletionOptions,
  CompletionTriggerKind,
  InsertTextFormat,
  InsertTextMode,
  MarkupKind,
  type Position,
} from 'vscode-languageserver';
import { escapeMarkdown, joinParagraphs } from '../markdown.ts';
import type { FeatureContext } from './context.ts';

/**
 * A letter asks by itself. Beside that: a space goes on to the next word of a line, `:` to the sets, `@` to the load,
 * `/` to the side. Enter ends a line and asks for nothing.
 */
export const COMPLETION_OPTIONS: CompletionOptions = { triggerCharacters: [' ', ':', '@', '/'] };

const KINDS: Readonly<Record<CompletionKind, CompletionItemKind>> = {
  template: CompletionItemKind.Snippet,
  header: CompletionItemKind.Keyword,
  block: CompletionItemKind.Struct,
  property: CompletionItemKind.Property,
  keyword: CompletionItemKind.Keyword,
  movement: CompletionItemKind.Function,
  athlete: CompletionItemKind.Interface,
  place: CompletionItemKind.Module,
  plan: CompletionItemKind.Class,
  sets: CompletionItemKind.Value,
  load: CompletionItemKind.Value,
  value: CompletionItemKind.EnumMember,
  unit: CompletionItemKind.Unit,
  date: CompletionItemKind.Event,
};

/** What may stand at the cursor, the likeliest first. Complete, unless history is still being read. */
export function provideCompletion(
  { works, workspace, settings, today, practice }: FeatureContext,
  uri: string,
  { line, character }: Position,
  context?: CompletionContext,
): CompletionList | undefined {
  const before = practice.file(uri)?.lines[line]?.slice(0, character) ?? '';
  // Indenting a line is no question.
  if (context?.triggerKind === CompletionTriggerKind.TriggerCharacter && before.trim() === '')
    return undefined;
  const items = complete(works, uri, line, character, { today, formula: settings.formula });
  return {
    isIncomplete: !workspace.complete,
    items: items.map((item) => toCompletionItem(line, item)),
  };
}

function toCompletionItem(line: number, item: Item): CompletionItem {
  const { label, detail, insert, isSnippet, replace, sortKey, filterText, continues } = item;
  const documentation = joinParagraphs([item.help, item.words && escapeLines(item.words)]);
  return {
    label,
    kind: KINDS[item.kind],
    ...(detail && { detail, labelDetails: { description: detail } }),
    ...(documentation && { documentation: { kind: MarkupKind.Markdown, value: documentation } }),
    sortText: sortKey,
    ...(filterText !== label && { filterText }),
    textEdit: {
      range: { start: { line, character: replace.start }, end: { line, character: replace.end } },
      newText: insert,
    },
    ...(isSnippet && { insertTextFormat: InsertTextFormat.Snippet, insertTextMode: InsertTextMode.asIs }),
    ...(continues && { command: { title: '', command: 'editor.action.triggerSuggest' } }),
  };
}

function escapeLines(text: string): string {
  return text.split('\n').map(escapeMarkdown).join('  \n');
}
