import assert from 'node:assert/strict';
import * as vscode from 'vscode';

// The body of the suite that runs inside the extension host. It knows the editor's own interface alone, so that
// any VS Code can run it: the browser's by the driver extension, a desktop one by @vscode/test-electron.

export interface CaseResult {
  readonly name: string;
  /** Missing if the case passed. */
  readonly problem?: string;
}

const file = 'host-suite.plim';
const text = `athlete Quill Harrow

session 2026-11-23 Quill Harrow
  Back Squat: 3x5 @ 80 kg
  Bench Press: 5 @
  Deadlift: 5 @ 100 kg
`;
const sessionLine = 2;
const squatLine = 3;
const brokenLine = 4;

const cases: Readonly<Record<string, () => Promise<void>>> = {
  'a .plim file is plimsoll': async () => {
    const document = await openFile();
    assert.equal(document.languageId, 'plimsoll');
  },

  'a session has a lens with its sums, beside a broken line': async () => {
    const document = await openFile();
    // 3 × 5 × 80 + 5 × 100; the broken line counts five reps and no kilograms.
    await poll(
      () => readLenses(document, sessionLine),
      (lenses) => lenses.some((lens) => /1\s700 kg/.test(lens)),
    );
  },

  'an edit changes the lens': async () => {
    const document = await openFile();
    const edit = new vscode.WorkspaceEdit();
    edit.insert(document.uri, document.lineAt(squatLine).range.end, ', 5 @ 85 kg');
    assert.ok(await vscode.workspace.applyEdit(edit));
    await poll(
      () => readLenses(document, sessionLine),
      (lenses) => lenses.some((lens) => /2\s125 kg/.test(lens)),
    );
  },

  'a line that breaks off is the one with a problem': async () => {
    const document = await openFile();
    const problems = await poll(
      async () => vscode.languages.getDiagnostics(document.uri),
      (found) => found.length > 0,
    );
    assert.deepEqual([...new Set(problems.map((problem) => problem.range.start.line))], [brokenLine]);
    assert.equal(problems[0]?.code, 'missing-load');
  },

  'a movement has a hover': async () => {
    const document = await openFile();
    const position = new vscode.Position(squatLine, document.lineAt(squatLine).text.indexOf('Squat'));
    await poll(
      () => readHover(document, position),
      (hover) => hover.includes('Back Squat'),
    );
  },

  'a rename changes every place, and a built-in movement says why it keeps its name': async () => {
    const document = await openFile();
    const at = (line: number, text: string) =>
      new vscode.Position(line, document.lineAt(line).text.indexOf(text));
    const edit = await poll(
      () => rename(document, at(sessionLine, 'Quill'), 'Petronella Gingham'),
      (answer) => answer instanceof vscode.WorkspaceEdit,
    );
    assert.ok(await vscode.workspace.applyEdit(edit as vscode.WorkspaceEdit));
    assert.equal(document.getText(), text.replaceAll('Quill Harrow', 'Petronella Gingham'));
    assert.match(
      String(await rename(document, at(squatLine, 'Back'), 'High Squat')),
      /Back Squat is built in/,
    );
  },

  'a built-in movement leads to its definition, which can be read': async () => {
    const document = await openFile();
    const position = new vscode.Position(squatLine, document.lineAt(squatLine).text.indexOf('Squat'));
    const [link] = await poll(
      () =>
        vscode.commands.executeCommand<vscode.LocationLink[]>(
          'vscode.executeDefinitionProvider',
          document.uri,
          position,
        ),
      (links) => links.length > 0,
    );
    const library = await vscode.workspace.openTextDocument(link!.targetUri);
    assert.equal(library.languageId, 'plimsoll');
    assert.equal(library.getText(link!.targetSelectionRange), 'Back Squat');
  },

  'behind the colon the sets of the last time are offered, and become the line': async () => {
    const document = await openFile();
    const [line, begun] = ['  Back Squat: ', '\nsession 2026-11-24 Quill Harrow\n  Back Squat: '];
    const edit = new vscode.WorkspaceEdit();
    edit.insert(document.uri, document.lineAt(document.lineCount - 1).range.end, begun);
    assert.ok(await vscode.workspace.applyEdit(edit));
    const position = document.lineAt(document.lineCount - 1).range.end;
    assert.equal(position.character, line.length);
    const { items } = await poll(
      () => readCompletion(document, position, ' '),
      (list) => list.items.length > 0,
    );
    const [first] = items;
    assert.equal(first?.detail, 'as on 23 Nov');
    const accepted = new vscode.WorkspaceEdit();
    accepted.replace(document.uri, toReplaced(first!), String(first!.insertText));
    assert.ok(await vscode.workspace.applyEdit(accepted));
    assert.equal(document.lineAt(position.line).text, '  Back Squat: 3x5 @ 80 kg');
  },

  'a quick fix writes the name that was meant, and the problem goes': async () => {
    const document = await openFile();
    const start = new vscode.Position(squatLine, document.lineAt(squatLine).text.indexOf('Back'));
    const name = new vscode.Range(start, start.translate(0, 'Back Squat'.length));
    const slip = new vscode.WorkspaceEdit();
    slip.replace(document.uri, name, 'Back Sqaut');
    assert.ok(await vscode.workspace.applyEdit(slip));
    const isUnknown = ({ code }: vscode.Diagnostic) => code === 'unknown-movement';
    await poll(
      async () => vscode.languages.getDiagnostics(document.uri),
      (found) => found.some(isUnknown),
    );
    const actions = await poll(
      () => readActions(document, name),
      (found) => found.length > 0,
    );
    const fix = actions.find(({ title }) => title === 'Write Back Squat');
    assert.ok(fix?.edit, `among ${actions.map(({ title }) => title).join(', ')}`);
    assert.ok(await vscode.workspace.applyEdit(fix.edit));
    assert.equal(document.getText(), text);
    await poll(
      async () => vscode.languages.getDiagnostics(document.uri),
      (found) => found.length > 0 && !found.some(isUnknown),
    );
  },

  'formatting spaces and indents a file, and a broken line keeps its text': async () => {
    const document = await openFile();
    const untidy = new vscode.WorkspaceEdit();
    untidy.replace(document.uri, document.lineAt(squatLine).range, 'Back Squat:3x5@80kg');
    assert.ok(await vscode.workspace.applyEdit(untidy));
    const edits = await poll(
      () => readFormatting(document),
      (found) => found.length > 0,
    );
    const tidy = new vscode.WorkspaceEdit();
    tidy.set(document.uri, edits);
    assert.ok(await vscode.workspace.applyEdit(tidy));
    assert.equal(document.getText(), text);
  },

  'the extension adds its commands': async () => {
    const commands = await vscode.commands.getCommands(true);
    const missing = ['plimsoll.newLog', 'plimsoll.showLog', 'plimsoll.restartServer'].filter(
      (command) => !commands.includes(command),
    );
    assert.deepEqual(missing, []);
  },
};

/** Runs every case to its end, whatever becomes of the others. */
export async function runCases(): Promise<CaseResult[]> {
  const results: CaseResult[] = [];
  for (const [name, run] of Object.entries(cases)) {
    try {
      await run();
      results.push({ name });
    } catch (error) {
      results.push({
        name,
        problem: error instanceof Error ? (error.stack ?? error.message) : String(error),
      });
    }
  }
  return results;
}

/** What @vscode/test-electron calls: throws if a case failed. */
export async function run(): Promise<void> {
  const results = await runCases();
  const failed = results.filter((result) => result.problem !== undefined);
  for (const { name, problem } of results) {
    console.log(problem === undefined ? `ok   ${name}` : `FAIL ${name}\n${problem}`);
  }
  console.log(`${results.length - failed.length} passed, ${failed.length} failed`);
  if (failed.length > 0) {
    throw new Error(`${failed.length} of ${results.length} cases failed in the extension host.`);
  }
}

/** Gives the file its first text again, so that no case sees what another has edited. */
async function openFile(): Promise<vscode.TextDocument> {
  const folder = vscode.workspace.workspaceFolders?.[0];
  assert.ok(folder, 'a folder is open');
  const uri = vscode.Uri.joinPath(folder.uri, file);
  const isThere = await vscode.workspace.fs.stat(uri).then(
    () => true,
    () => false,
  );
  if (!isThere) await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  const document = await vscode.workspace.openTextDocument(uri);
  await vscode.window.showTextDocument(document);
  if (document.getText() !== text) {
    // In the editor, not on the disk: it may be saving by itself what was typed just before.
    const edit = new vscode.WorkspaceEdit();
    edit.replace(uri, new vscode.Range(0, 0, document.lineCount, 0), text);
    assert.ok(await vscode.workspace.applyEdit(edit));
  }
  await poll(
    async () => document.getText(),
    (content) => content === text,
  );
  return document;
}

async function readLenses(document: vscode.TextDocument, line: number): Promise<string[]> {
  const command = 'vscode.executeCodeLensProvider';
  const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>(command, document.uri, 100);
  return lenses.filter((lens) => lens.range.start.line === line).map((lens) => lens.command?.title ?? '');
}

/** The edits, or why there are none. */
async function rename(
  document: vscode.TextDocument,
  position: vscode.Position,
  newName: string,
): Promise<vscode.WorkspaceEdit | string> {
  const command = 'vscode.executeDocumentRenameProvider';
  try {
    return await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
      command,
      document.uri,
      position,
      newName,
    );
  } catch (reason) {
    return String(reason);
  }
}

async function readCompletion(
  document: vscode.TextDocument,
  position: vscode.Position,
  trigger: string,
): Promise<vscode.CompletionList> {
  const command = 'vscode.executeCompletionItemProvider';
  return vscode.commands.executeCommand<vscode.CompletionList>(command, document.uri, position, trigger);
}

async function readActions(document: vscode.TextDocument, range: vscode.Range): Promise<vscode.CodeAction[]> {
  const command = 'vscode.executeCodeActionProvider';
  return vscode.commands.executeCommand<vscode.CodeAction[]>(command, document.uri, range, 'quickfix');
}

async function readFormatting(document: vscode.TextDocument): Promise<vscode.TextEdit[]> {
  const command = 'vscode.executeFormatDocumentProvider';
  const options = { tabSize: 2, insertSpaces: true };
  return (await vscode.commands.executeCommand<vscode.TextEdit[]>(command, document.uri, options)) ?? [];
}

/** What an item of a completion list replaces. */
function toReplaced({ range }: vscode.CompletionItem): vscode.Range {
  assert.ok(range);
  return range instanceof vscode.Range ? range : range.replacing;
}

async function readHover(document: vscode.TextDocument, position: vscode.Position): Promise<string> {
  const command = 'vscode.executeHoverProvider';
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(command, document.uri, position);
  return hovers
    .flatMap((hover) => hover.contents)
    .map((content) => (typeof content === 'string' ? content : content.value))
    .join('\n');
}

/** Asks until the answer is good, and answers it; the last answer is shown when it never is. */
async function poll<T>(ask: () => Thenable<T>, isGood: (answer: T) => boolean, seconds = 20): Promise<T> {
  const deadline = Date.now() + seconds * 1000;
  let answer = await ask();
  while (!isGood(answer)) {
    assert.ok(
      Date.now() < deadline,
      `not within ${seconds} s; the last answer was ${JSON.stringify(answer)}`,
    );
    await new Promise((resolve) => setTimeout(resolve, 50));
    answer = await ask();
  }
  return answer;
}
