import { listRewrites } from '@plimsoll/language/rewrites/list-rewrites';
import { expect, test, vi } from 'vitest';
import { readFolder } from '../checks/workspace.ts';
import { applyFileEdits } from '../support/apply-file-edits.ts';
import { listErrors, openFiles } from '../support/apply-rewrite.ts';
import { PATIENCE } from '../support/generators/runs.ts';

vi.setConfig({ testTimeout: PATIENCE });

test('whatever is offered in the samples can be made, and brings no error', () => {
  const files = Object.fromEntries(readFolder('samples'));
  const practice = openFiles(files);
  const titles = new Set<string>();
  for (const [uri, text] of Object.entries(files)) {
    const before = listErrors(text);
    text
      .split('\n')
      .slice(0, 30)
      .forEach((_line, line) => {
        const range = { start: { line, character: 0 }, end: { line, character: 0 } };
        for (const { title, edits } of listRewrites({ practice, uri, range }, { complete: true })) {
          titles.add(title.replace(/ at .*| that .*/, ''));
          const own = edits.filter((edit) => edit.uri === uri);
          expect(listErrors(applyFileEdits(text, own)), `${uri}:${line + 1} ${title}`).toEqual(before);
        }
      });
  }
  expect([...titles]).toEqual(
    expect.arrayContaining(['Write each set out', 'Convert this line to lb', 'Add a round like the last']),
  );
});

test('a line that is read as it is meant is corrected before anything is made of it', () => {
  const offer = (line: string): string[] => {
    const practice = openFiles({ 'a.plim': `session 2026-11-24\n  ${line}\n` });
    const range = { start: { line: 1, character: 3 }, end: { line: 1, character: 3 } };
    return listRewrites({ practice, uri: 'a.plim', range }, { complete: true }).map(({ title }) => title);
  };
  expect(offer('Back Squat: 5 @ 50, 5 @ 55, 5 @ 60 kg')).toContain('Convert this line to lb');
  expect(offer('Back Squat: 5,5,5 @ 50,55,60 kg')).not.toContain('Convert this line to lb');
});
