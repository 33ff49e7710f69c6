/**
 * A language as Langium makes it, without anything of ours but the grammar and its lexer: whole files are parsed at
 * every change, and names are cross-references. Run as a process of its own, since it needs about 100 MB of memory
 * for each MB of text; it tells its parent what it measured.
 */
import { fork } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LineLexer } from '@plimsoll/language/syntax/line-lexer';
import { type LangiumDocument, URI } from 'langium';
import { createServicesForGrammar } from 'langium/grammar';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Practice } from './generate-practice.ts';
import { listKeystrokes } from './keystrokes.ts';
import { rootFolder } from './paths.ts';
import { createRandom } from './random.ts';

export interface PlainRequest {
  readonly practice: Practice;
  /** The file that is typed in. */
  readonly path: string;
  readonly keystrokes: number;
}

export interface PlainTimes {
  /** First build of the whole workspace, reading the files from the disk not counted. */
  readonly build: number;
  /** From each change to the end of the document builder's work on it. */
  readonly keystrokes: readonly number[];
  readonly references: number;
}

const language = join(rootFolder, 'language');

/** Measures in another process. */
export async function measurePlainLangium(request: PlainRequest): Promise<PlainTimes> {
  const child = fork(import.meta.filename, { execArgv: ['--max-old-space-size=12000'] });
  child.send(request);
  return new Promise((resolve, reject) => {
    child.once('message', (times) => {
      child.kill();
      resolve(times as PlainTimes);
    });
    child.once('exit', (code) => reject(new Error(`Plain Langium ended with ${code}`)));
  });
}

/**
 * Our grammar keeps names as text, for the practice's index resolves them. Written the usual way, a definition has a
 * name and what uses it a cross-reference.
 */
function linkNames(grammar: string): string {
  let linked = grammar;
  const replace = (from: string | RegExp, to: string) => {
    const next = linked.replace(from, to);
    if (next === linked) throw new Error(`The grammar has no ${from}`);
    linked = next;
  };
  for (const kind of ['Exercise', 'Place', 'Athlete', 'Plan']) {
    replace(`${kind}: header=${kind}Header`, `${kind}: ${kind}Header`);
    replace(
      new RegExp(`^${kind}Header: (.*)\\(name=Name\\)\\?`, 'm'),
      `fragment ${kind}Header: $1(name=NAME)?`,
    );
  }
  replace("(name=Name)? ':' (cells", "(name=[Exercise:NAME])? ':' (cells");
  replace(
    "(athletes+=Name ('|' athletes+=Name)*)?",
    "(athletes+=[Athlete:NAME] ('|' athletes+=[Athlete:NAME])*)?",
  );
  replace("(isAt?='at' (place=Name)?)?", "(isAt?='at' (place=[Place:NAME])?)?");
  replace('PlanReference: plan=Name', 'PlanReference: plan=[Plan:NAME]');
  return linked;
}

async function measure({ practice, path, keystrokes }: PlainRequest): Promise<PlainTimes> {
  const open = new Map<string, TextDocument>();
  const { shared } = await createServicesForGrammar({
    grammar: linkNames(readFileSync(join(language, 'src/syntax/plimsoll.langium'), 'utf8')),
    module: {
      parser: { Lexer: (services: ConstructorParameters<typeof LineLexer>[0]) => new LineLexer(services) },
    },
    sharedModule: {
      workspace: { TextDocuments: () => ({ get: (uri: URI | string) => open.get(uri.toString()) }) },
    },
    languageMetaData: {
      caseInsensitive: false,
      fileExtensions: ['.plim'],
      languageId: 'plimsoll',
      mode: 'production',
    },
  } as unknown as Parameters<typeof createServicesForGrammar>[0]);
  const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder } = shared.workspace;
  const paths = [...listFiles(join(language, 'library')), ...listFiles(practice.folder)];
  const texts = paths.map((name) => [URI.file(name), readFileSync(name, 'utf8')] as const);

  const start = performance.now();
  const documents = texts.map(([uri, text]) => LangiumDocumentFactory.fromString(text, uri));
  for (const document of documents) LangiumDocuments.addDocument(document);
  await DocumentBuilder.build(documents, { validation: true });
  const build = performance.now() - start;
  const references = requireLinked(documents);

  const uri = URI.file(path);
  let text = readFileSync(path, 'utf8');
  let version = 1;
  const times: number[] = [];
  for (const { offset, removed, typed } of listKeystrokes(text, keystrokes, createRandom(3))) {
    text = text.slice(0, offset) + typed + text.slice(offset + removed);
    const before = performance.now();
    open.set(uri.toString(), TextDocument.create(uri.toString(), 'plimsoll', ++version, text));
    await DocumentBuilder.update([uri], []);
    times.push(performance.now() - before);
    if (LangiumDocuments.getDocument(uri)?.textDocument.getText() !== text)
      throw new Error('It kept the old text');
  }
  return { build, keystrokes: times, references };
}

/** A comparison with a language that parses nothing or links nothing would be worth nothing. */
function requireLinked(documents: readonly LangiumDocument[]): number {
  const wrong = documents.flatMap(({ parseResult }) => parseResult.parserErrors);
  const references = documents.flatMap((document) => document.references);
  const broken = references.filter(({ error }) => error !== undefined);
  if (wrong.length > 0)
    throw new Error(`Plain Langium: ${wrong.length} parser errors, as ${wrong[0]!.message}`);
  if (broken.length > 0 || references.length === 0) {
    throw new Error(
      `Plain Langium: ${broken.length} of ${references.length} references broken, as ${broken[0]?.$refText}`,
    );
  }
  return references.length;
}

function listFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.plim'))
    .map((name) => join(folder, name));
}

if (process.argv[1] === import.meta.filename) {
  process.once('message', (request: PlainRequest) => {
    void measure(request).then((times) => process.send!(times));
  });
}
