import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';

export interface ColouredToken {
  readonly start: number;
  readonly end: number;
  /** Innermost scope, without the language's own suffix: `constant.numeric.date`. Empty where nothing colours. */
  readonly scope: string;
}

/** Colours lines one after another with our grammar, on the very engine that the editor uses. */
export async function tokeniseLines(lines: readonly string[]): Promise<ColouredToken[][]> {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
  await oniguruma.loadWASM(new Uint8Array(wasm).buffer);
  const path = new URL('../../extension/syntaxes/plimsoll.tmLanguage.json', import.meta.url);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(readFileSync(path, 'utf8'), 'plimsoll.json'),
  });
  const grammar = await registry.loadGrammar('source.plimsoll');
  let state = textmate.INITIAL;
  return lines.map((line) => {
    const { tokens, ruleStack } = grammar!.tokenizeLine(line, state);
    state = ruleStack;
    return tokens.map(({ startIndex, endIndex, scopes }) => ({
      start: startIndex,
      end: Math.min(endIndex, line.length),
      scope: scopes.length > 1 ? scopes.at(-1)!.replace(/\.plimsoll$/, '') : '',
    }));
  });
}
