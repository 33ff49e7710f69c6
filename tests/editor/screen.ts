import type { Page } from 'playwright-core';

export interface Squiggle {
  readonly severity: 'error' | 'warning' | 'info' | 'hint';
  /** The underlined text. */
  readonly text: string;
}

export interface Problem {
  readonly message: string;
  readonly code: string;
  /** As on the screen, from 1. */
  readonly line: number;
}

// The functions given to `evaluate` run in the page: they can use nothing of this module.

/** One text for each lens line, from top to bottom: `3 sets · 420 kg | week 47`. */
export function readLenses(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.codelens-decoration')]
      .filter((lens) => lens.checkVisibility())
      .sort((a, b) => a.getBoundingClientRect().top - b.getBoundingClientRect().top)
      .map((lens) => (lens.textContent ?? '').replaceAll('\u00a0', ' ').trim())
      .filter((text) => text !== ''),
  );
}

/** Hints are drawn as text within the line; their style sheet rule is what tells them from it. */
export function readHints(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const hintRules = [...document.styleSheets]
      .flatMap((sheet) => [...sheet.cssRules])
      .filter((rule) => rule instanceof CSSStyleRule && rule.cssText.includes('--vscode-editorInlayHint'))
      .map((rule) => (rule as CSSStyleRule).selectorText)
      .filter((selector) => selector.includes('dyn-rule'));
    if (hintRules.length === 0) {
      return [];
    }
    return [...document.querySelectorAll('.editor-instance .view-line span span')]
      .filter((span) => span.matches(hintRules.join(',')))
      .sort((a, b) => a.getBoundingClientRect().top - b.getBoundingClientRect().top)
      .map((span) => (span.textContent ?? '').replaceAll('\u00a0', ' ').trim())
      .filter((text) => text !== '');
  });
}

/** An underline is a box of its own: its text is the characters that stand within its sides. */
export function readSquiggles(page: Page): Promise<Squiggle[]> {
  return page.evaluate(() => {
    const lines = [...document.querySelectorAll('.editor-instance .view-line')];
    const textWithin = (box: DOMRect): string => {
      const middle = (box.top + box.bottom) / 2;
      const line = lines.find((candidate) => {
        const { top, bottom } = candidate.getBoundingClientRect();
        return top <= middle && middle <= bottom;
      });
      if (line === undefined) {
        return '';
      }
      let result = '';
      const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
        for (let index = 0; index < (node.nodeValue ?? '').length; index++) {
          const range = document.createRange();
          range.setStart(node, index);
          range.setEnd(node, index + 1);
          const { left, right } = range.getBoundingClientRect();
          const centre = (left + right) / 2;
          result += box.left < centre && centre < box.right ? (node.nodeValue ?? '')[index] : '';
        }
      }
      return result.replaceAll('\u00a0', ' ');
    };
    return [...document.querySelectorAll<HTMLElement>('.editor-instance [class*="squiggly-"]')]
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .sort((a, b) => a.box.top - b.box.top || a.box.left - b.box.left)
      .map(({ element, box }) => ({
        severity: (/squiggly-(error|warning|info|hint)/.exec(element.className)?.[1] ??
          'hint') as Squiggle['severity'],
        text: textWithin(box),
      }));
  });
}

/** What the open hover says, once it says more than that it is loading. */
export async function readHover(page: Page): Promise<string> {
  const text = await page.waitForFunction(() =>
    [...document.querySelectorAll<HTMLElement>('.monaco-resizable-hover .hover-contents')]
      .filter((part) => part.checkVisibility())
      // biome-ignore lint/performance/useDomNodeTextContent: only innerText has the line breaks of the screen.
      .map((part) => part.innerText.replaceAll('\u00a0', ' ').trim())
      .filter((part) => part !== '' && part !== 'Loading...')
      .join('\n'),
  );
  return (await text.jsonValue()) as string;
}

/** The rows of the Problems view that are problems (others name their file): `message code [Ln 3, Col 3]`. */
export function readProblems(page: Page): Promise<Problem[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('.markers-panel .monaco-list-row .marker-message-line')].map((row) => ({
      message: row.querySelector('.marker-message')?.textContent ?? '',
      code: row.querySelector('.marker-code')?.textContent ?? '',
      line: Number(/Ln (\d+)/.exec(row.querySelector('.marker-line')?.textContent ?? '')?.[1]),
    })),
  );
}
