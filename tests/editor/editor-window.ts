import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import {
  type Problem,
  readHints,
  readHover,
  readLenses,
  readProblems,
  readSquiggles,
  type Squiggle,
} from './screen.ts';

/** A place in the open file: the first `text` in it, or the first after the first `after`. */
export interface Place {
  readonly text: string;
  readonly after?: string;
}

/**
 * A window of the real editor, used as a person uses it: by the keyboard, and by looking at the screen.
 * Everything waits for what it needs to see, nothing for a length of time.
 */
export class EditorWindow {
  readonly page: Page;
  readonly folder: string;

  constructor(page: Page, folder: string) {
    this.page = page;
    this.folder = folder;
  }

  /** Opens a file of the workspace through Quick Open, by its path: `first-day.plim`, `practice/plans.plim`. */
  async openFile(path: string): Promise<void> {
    const parts = path.split('/');
    const shown = [parts.at(-1), parts.slice(0, -1).join('/')].join(' ').trim();
    await this.page.keyboard.press('Control+P');
    await this.pickInQuickInput(path, `.monaco-list-row[aria-label^="${shown}"]`);
    await this.page.waitForSelector(`.tab.active [aria-label^="${this.folder}/${path}"]`);
    await this.page.waitForSelector('.editor-instance .monaco-editor.focused .view-line');
  }

  /** Runs a command by its title in the Command Palette, such as "File: Revert File". */
  async runCommand(title: string): Promise<void> {
    await this.page.keyboard.press('F1');
    await this.pickInQuickInput(`>${title}`, `.monaco-list-row[aria-label^="${title}"]`);
  }

  /** Selects a text by the find widget and answers when it is selected; throws if the file does not hold it. */
  async select(place: Place): Promise<void> {
    await this.focusText();
    await this.page.keyboard.press('Control+Home');
    if (place.after !== undefined) {
      await this.find(place.after);
      await this.page.keyboard.press('ArrowRight');
    }
    await this.find(place.text);
  }

  /** Types right after a text; a line break is typed as Enter. */
  async typeAfter(place: Place, text: string): Promise<void> {
    await this.select(place);
    await this.page.keyboard.press('ArrowRight');
    await this.type(text);
  }

  /** Types over a text. */
  async typeOver(place: Place, text: string): Promise<void> {
    await this.select(place);
    await this.type(text);
  }

  /** Types at the cursor; an open suggestion is dismissed before Enter, or Enter would accept it. */
  async type(text: string): Promise<void> {
    const [first = '', ...rest] = text.split('\n');
    await this.page.keyboard.type(first);
    for (const line of rest) {
      await this.page.keyboard.press('Escape');
      await this.page.keyboard.press('Enter');
      await this.page.keyboard.type(line);
    }
  }

  /** Points at a text and answers what the hover says, a line for each line on the screen. */
  async hover(place: Place): Promise<string> {
    await this.select(place);
    await this.page.keyboard.press('ArrowLeft');
    await this.page.keyboard.press('Control+K');
    await this.page.keyboard.press('Control+I');
    const text = await readHover(this.page);
    await this.page.keyboard.press('Escape');
    await this.page.waitForSelector('.monaco-resizable-hover', { state: 'hidden' });
    return text;
  }

  /** Puts the cursor on a text, opens the menu of fixes and rewrites, and takes the one of that title. */
  async pickAction(place: Place, title: string): Promise<void> {
    await this.select(place);
    await this.page.keyboard.press('ArrowLeft');
    await this.runCommand('Quick Fix...');
    const row = `.action-widget .monaco-list-row:has-text("${title}")`;
    await this.page.click(row);
    await this.page.waitForSelector(row, { state: 'hidden' });
  }

  /** A file of the workspace as it is on the disk: the browser's editor saves by itself soon after typing. */
  readSaved(path: string): string {
    return readFileSync(join(this.folder, path), 'utf8');
  }

  /** What the lenses on the screen say, from top to bottom. */
  readLenses(): Promise<string[]> {
    return readLenses(this.page);
  }

  /** The inlay hints on the screen, from top to bottom. */
  readHints(): Promise<string[]> {
    return readHints(this.page);
  }

  /** The underlined texts on the screen, from top to bottom. */
  readSquiggles(): Promise<Squiggle[]> {
    return readSquiggles(this.page);
  }

  /** What the Problems view lists for all files, opening it if need be. */
  async readProblems(): Promise<Problem[]> {
    if (!(await this.page.isVisible('.markers-panel'))) {
      await this.page.keyboard.press('Control+Shift+M');
      await this.page.waitForSelector('.markers-panel');
      // Back to the text, once the view has taken the focus: what is typed next belongs there.
      const isTaken = () => document.activeElement?.closest('.part.panel') != null;
      await this.page.waitForFunction(isTaken, undefined, { timeout: 5_000 }).catch(() => undefined);
      await this.focusText();
    }
    return readProblems(this.page);
  }

  async takeScreenshot(file: string): Promise<void> {
    await this.page.screenshot({ path: file });
  }

  private async pickInQuickInput(text: string, row: string): Promise<void> {
    await this.page.waitForSelector('.quick-input-widget:not([style*="display: none"]) input');
    await this.page.fill('.quick-input-widget input', text);
    await this.page.waitForSelector(`.quick-input-widget ${row}`);
    await this.page.click(`.quick-input-widget ${row}`);
    await this.page.waitForSelector('.quick-input-widget', { state: 'hidden' });
  }

  /** Keys go where the focus is, and a view that was opened may take it a moment after it is there. */
  private async focusText(): Promise<void> {
    const isFocused = () =>
      document.activeElement?.matches(
        '.monaco-editor .native-edit-context, .monaco-editor textarea.inputarea',
      ) ?? false;
    for (let tried = 0; tried < 5 && !(await this.page.evaluate(isFocused)); tried++) {
      await this.page.keyboard.press('Control+1');
      await this.page.waitForFunction(isFocused, undefined, { timeout: 5_000 }).catch(() => undefined);
    }
    await this.page.waitForFunction(isFocused);
  }

  /**
   * A field that lost the focus is told so by a timer, and a busy page runs timers last: until then Enter would
   * still mean the next match. Timers of one length run in the order they were set.
   */
  private async letTimersRun(): Promise<void> {
    await this.page.evaluate(() => new Promise((resolve) => setTimeout(resolve)));
  }

  private async find(text: string): Promise<void> {
    const widget = '.find-widget.visible';
    await this.focusText();
    const field = `${widget} .find-part textarea`;
    for (let tried = 0; tried < 3; tried++) {
      await this.page.keyboard.press('Control+F');
      const isShown = await this.page.waitForSelector(field, { timeout: 10_000 }).catch(() => undefined);
      if (isShown) break;
      await this.focusText();
    }
    await this.page.waitForSelector(field);
    const isSame = (await this.page.inputValue(`${widget} .find-part textarea`)) === text;
    await this.page.fill(`${widget} .find-part textarea`, text);
    // Only another text is looked for as it is typed.
    if (isSame) await this.page.keyboard.press('Enter');
    await this.page.waitForFunction(() =>
      /\d+ of \d+|No results/.test(document.querySelector('.find-widget .matchesCount')?.textContent ?? ''),
    );
    const count = (await this.page.textContent(`${widget} .matchesCount`)) ?? '';
    await this.page.keyboard.press('Escape');
    await this.page.waitForSelector(widget, { state: 'hidden' });
    await this.focusText();
    await this.letTimersRun();
    if (count.startsWith('No')) {
      throw new Error(`The open file does not hold ${JSON.stringify(text)}.`);
    }
  }
}
