import { readFileSync } from 'node:fs';
import {
  PlimsollGeneratedModule,
  PlimsollGeneratedSharedModule,
} from '@plimsoll/language/syntax/generated/module';
import { LineLexer } from '@plimsoll/language/syntax/line-lexer';
import { createSyntaxServices } from '@plimsoll/language/syntax/syntax-services';
import { createDefaultCoreModule, createDefaultSharedCoreModule, EmptyFileSystem, inject } from 'langium';
import { expect, test, vi } from 'vitest';
import { entryReader, readWhole } from '../support/read-text.ts';
import { SAMPLES } from '../support/samples.ts';

const services = createSyntaxServices();

test('the parser finds no ambiguity when it looks for one', () => {
  const said = vi.spyOn(console, 'log').mockImplementation(() => undefined);
  const warned = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), PlimsollGeneratedSharedModule);
  const looking = inject(createDefaultCoreModule({ shared }), PlimsollGeneratedModule, {
    LanguageMetaData: () => ({
      languageId: 'plimsoll',
      fileExtensions: ['.plim'],
      caseInsensitive: true,
      mode: 'development' as const,
    }),
    parser: { Lexer: (all: Parameters<typeof createLexer>[0]) => createLexer(all) },
  });
  shared.ServiceRegistry.register(looking);
  // The look for ambiguities goes on while texts are read.
  for (const { text } of SAMPLES) {
    expect(looking.parser.LangiumParser.parse(text).parserErrors).toEqual([]);
  }
  const messages = [...said.mock.calls, ...warned.mock.calls].flat().map(String);
  vi.restoreAllMocks();
  expect(messages).toEqual([]);
});

const createLexer = (services: ConstructorParameters<typeof LineLexer>[0]) => new LineLexer(services);

test.each(SAMPLES)('$name: its entries read one by one are those of the whole file', ({ text }) => {
  const whole = services.parser.LangiumParser.parse(text, { rule: 'Practice' });
  expect(whole.parserErrors).toEqual([]);
  const { model, lines } = readWhole(text);
  const entries = (whole.value as unknown as { entries: { $type: string; $cstNode: { text: string } }[] })
    .entries;
  expect(entries.map(({ $type }) => $type.toLowerCase())).toEqual(
    model.entries.map(({ entry }) => entry.kind),
  );
  for (const [index, { $cstNode }] of entries.entries()) {
    const { entry } = model.entries[index]!;
    const own = $cstNode.text.split('\n');
    expect(
      entryReader.read([...own, ...Array(entry.lineCount - own.length).fill('')], true, model.units),
    ).toEqual(entry);
  }
  expect(lines.join('\n')).toBe(text);
});

test('the grammar in the sources is the one that the parser was generated from', () => {
  const source = readFileSync(
    new URL('../../../language/src/syntax/plimsoll.langium', import.meta.url),
    'utf8',
  );
  const rules = [
    ...source.matchAll(/^(?:entry |fragment |hidden |terminal )*(\w+)(?: returns \w+| infers \w+)?:/gm),
  ].map(([, name]) => name!);
  const generated = services.Grammar.rules.map(({ name }) => name);
  expect(rules.filter((name) => name !== 'terminal').sort()).toEqual([...generated].sort());
});
