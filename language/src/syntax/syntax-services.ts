import {
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  EmptyFileSystem,
  inject,
  type LangiumCoreServices,
  type Module,
  type PartialLangiumCoreServices,
} from 'langium';
import { PlimsollGeneratedModule, PlimsollGeneratedSharedModule } from './generated/module.ts';
import { LineLexer } from './line-lexer.ts';
import { SyntaxMessages } from './syntax-messages.ts';

const syntaxModule: Module<LangiumCoreServices, PartialLangiumCoreServices> = {
  parser: {
    Lexer: (services) => new LineLexer(services),
    ParserErrorMessageProvider: () => new SyntaxMessages(),
  },
};

/**
 * The parsers of the notation (a Langium grammar read line by line) and what they are made of.
 * Names are resolved by the practice's index, not by Langium's linker: see DEVELOPERS.md, "Facts, not trees".
 */
export function createSyntaxServices(): LangiumCoreServices {
  const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), PlimsollGeneratedSharedModule);
  const services = inject(createDefaultCoreModule({ shared }), PlimsollGeneratedModule, syntaxModule);
  shared.ServiceRegistry.register(services);
  return services;
}
