import { cpSync, existsSync, mkdirSync, mkdtempSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, afterEach, beforeAll, inject } from 'vitest';
import { EditorWindow } from './editor-window.ts';

declare module 'vitest' {
  interface ProvidedContext {
    readonly editor: {
      readonly url: string;
      /** Temporary; it goes with the editor. */
      readonly folder: string;
      readonly hostSuite: string;
      readonly browser: { readonly executable: string; readonly environment: Record<string, string> };
      readonly samplesFolder: string;
      readonly failuresFolder: string;
    };
  }
}

const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Makes a workspace of its own with a copy of the samples; answers its folder. */
export function copySamples(): string {
  const { folder, samplesFolder } = inject('editor');
  const target = join(mkdtempSync(join(folder, 'workspace-')), 'samples');
  mkdirSync(target);
  if (existsSync(samplesFolder)) {
    cpSync(samplesFolder, target, { recursive: true });
  }
  return target;
}

/** Opens a folder in a browser window of its own. */
export async function openWindow(folder: string): Promise<{ window: EditorWindow; browser: Browser }> {
  const { url, browser } = inject('editor');
  const launched = await chromium.launch({
    executablePath: browser.executable,
    env: { ...process.env, ...browser.environment },
    args: browserFlags,
  });
  try {
    const page = await launched.newPage({ viewport: { width: 1280, height: 1000 } });
    page.setDefaultTimeout(60_000);
    await page.goto(`${url}/?folder=${encodeURIComponent(folder)}`);
    await page.waitForSelector('.monaco-workbench .statusbar-item');
    return { window: new EditorWindow(page, folder), browser: launched };
  } catch (error) {
    await launched.close();
    throw error;
  }
}

/**
 * One window for the tests of a file, on a copy of the samples; `prepare` may add files to it first. A test that
 * fails leaves a screenshot in `tests/editor/failures/`.
 */
export function useEditorWindow(prepare: (folder: string) => void = () => {}): () => EditorWindow {
  let open: Awaited<ReturnType<typeof openWindow>> | undefined;
  beforeAll(async () => {
    const folder = copySamples();
    prepare(folder);
    open = await openWindow(folder);
  });
  afterEach(async ({ task }) => {
    if (task.result?.state === 'fail') {
      const name = task.name.replace(/[^\p{L}\p{N}]+/gu, '-').toLowerCase();
      await open?.window.takeScreenshot(join(inject('editor').failuresFolder, `${name}.png`));
    }
  });
  afterAll(async () => {
    await open?.browser.close();
  });
  return () => {
    if (open === undefined) {
      throw new Error('The window opens before the first test of its file: call this inside a test.');
    }
    return open.window;
  };
}
