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
const text = `session 2026-11-17 Quill Harrow
  Back Squat: 3x5 @ 80 kg
`;

const cases: Readonly<Record<string, () => Promise<void>>> = {
  'opens a file as plimsoll': async () => {
    const document = await openSample();
    assert.equal(document.languageId, 'plimsoll');
  },

  'puts a lens over a session': async () => {
    const document = await openSample();
    const lenses = await poll(
      () =>
        vscode.commands.executeCommand<vscode.CodeLens[]>(
          'vscode.executeCodeLensProvider',
          document.uri,
          100,
        ),
      (found) => found.some((lens) => lens.command !== undefined),
    );
    assert.equal(lenses[0]?.range.start.line, 0);
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

async function openSample(): Promise<vscode.TextDocument> {
  const folder = vscode.workspace.workspaceFolders?.[0];
  assert.ok(folder, 'a folder is open');
  const uri = vscode.Uri.joinPath(folder.uri, file);
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  const document = await vscode.workspace.openTextDocument(uri);
  await vscode.window.showTextDocument(document);
  return document;
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
