import { provideDiagnostics } from '@plimsoll/server/features/diagnostics';
import { expect, test } from 'vitest';
import { createContext } from '../support/feature-context.ts';

const text =
  'session 2026-11-03 Ann Vell\n\n# below\nsession 2026-11-05 Ann Vell\n  Harbour Hop: 5\n  Back Squat: 5 @\n';
const read = (context: ReturnType<typeof createContext>) =>
  provideDiagnostics(context, 'a.plim').map(
    ({ range: { start, end }, severity, code }) =>
      `${start.line}:${start.character}-${end.line}:${end.character} ${severity} ${code}`,
  );

test('places count from the beginning of the file', () => {
  expect(read(createContext({ 'a.plim': text }))).toEqual([
    '4:2-4:13 2 unknown-movement',
    '5:16-5:17 1 missing-load',
  ]);
});

test('until all files are read a file has its own problems only', () => {
  expect(read(createContext({ 'a.plim': text }, { complete: false }))).toEqual(['5:16-5:17 1 missing-load']);
});

test('a file that could not be read says why, at its beginning', () => {
  const context = createContext({ 'a.plim': '' });
  const workspace = { ...context.workspace, complaintAbout: () => 'The file is no text' };
  expect(provideDiagnostics({ ...context, workspace }, 'a.plim')).toMatchObject([
    { message: 'The file is no text', code: 'unreadable-file', severity: 2, range: { start: { line: 0 } } },
  ]);
});
