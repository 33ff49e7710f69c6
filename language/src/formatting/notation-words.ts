import { AstUtils, GrammarAST } from 'langium';
import { PlimsollGrammar } from '../syntax/generated/grammar.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';

let words: ReadonlySet<string> | undefined;

/** Whether a word, in lower case, is one of the notation: a keyword of the grammar or a unit. */
export function isNotationWord(word: string): boolean {
  words ??= new Set(listKeywords());
  return words.has(word) || UNIT_WORDS.has(word);
}

function* listKeywords(): Iterable<string> {
  for (const node of AstUtils.streamAllContents(PlimsollGrammar())) {
    if (GrammarAST.isKeyword(node)) yield node.value;
  }
}
