import { classifyTokens, TOKEN_MODIFIERS, TOKEN_TYPES } from '@plimsoll/language/practice/classify-tokens';
import {
  type Range,
  type SemanticTokens,
  SemanticTokensBuilder,
  type SemanticTokensDelta,
  type SemanticTokensLegend,
} from 'vscode-languageserver';
import type { FeatureContext } from './context.ts';

export const SEMANTIC_TOKENS_LEGEND: SemanticTokensLegend = {
  tokenTypes: [...TOKEN_TYPES],
  tokenModifiers: [...TOKEN_MODIFIERS],
};

/** The words of a file by what they are. Remembers what it told of each file, so that next time the change will do. */
export class SemanticTokensProvider {
  readonly #told = new Map<string, SemanticTokensBuilder>();

  provideAll(context: FeatureContext, uri: string): SemanticTokens {
    const builder = new SemanticTokensBuilder();
    this.#told.set(uri, builder);
    fill(builder, context, uri);
    return builder.build();
  }

  provideChange(
    context: FeatureContext,
    uri: string,
    previousId: string,
  ): SemanticTokens | SemanticTokensDelta {
    const builder = this.#told.get(uri);
    if (!builder) return this.provideAll(context, uri);
    builder.previousResult(previousId);
    fill(builder, context, uri);
    return builder.buildEdits();
  }

  /** The words of whole lines, those at the ends of the range included. */
  provideRange(context: FeatureContext, uri: string, { start, end }: Range): SemanticTokens {
    const builder = new SemanticTokensBuilder();
    fill(builder, context, uri, start.line, end.line);
    return builder.build();
  }

  forget(uri: string): void {
    this.#told.delete(uri);
  }
}

function fill(
  builder: SemanticTokensBuilder,
  { practice }: FeatureContext,
  uri: string,
  from?: number,
  to?: number,
): void {
  const file = practice.file(uri);
  if (!file) return;
  for (const { line, start, end, type, modifiers } of classifyTokens(practice, file, from, to)) {
    const bits = modifiers.reduce((sum, modifier) => sum | (1 << TOKEN_MODIFIERS.indexOf(modifier)), 0);
    builder.push(line, start, end - start, TOKEN_TYPES.indexOf(type), bits);
  }
}
