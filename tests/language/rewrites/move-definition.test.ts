import { moveDefinition } from '@plimsoll/language/rewrites/move-definition';
import { expect, test } from 'vitest';
import { applyRewrite } from '../support/apply-rewrite.ts';

const LIBRARY = 'exercise Marsh Push\n\nexercise Marsh Hop\n';

test.each([
  [
    'between others',
    'plan A\n\n# mine\nexer<|>cise Marsh Pull\n  # inside\n  cue Go\n\n\n# next\nplan B\n',
    'plan A\n\n# next\nplan B\n',
    '# mine\nexercise Marsh Pull\n  # inside\n  cue Go\n',
  ],
  ['at the end', 'plan A\n\nexer<|>cise Marsh Pull', 'plan A\n\n', 'exercise Marsh Pull\n'],
])('%s', (_name, log, left, moved) => {
  const after = applyRewrite(moveDefinition, { 'log.plim': log, 'lib/my%20moves.plim': LIBRARY })!;
  expect(after.title).toBe('Move Marsh Pull to my moves.plim');
  expect(after.kind).toBe('refactor.move');
  expect(after.files).toEqual({ 'log.plim': left, 'lib/my%20moves.plim': `${LIBRARY}\n${moved}` });
});

test('not offered within the library file, nor without one', () => {
  expect(applyRewrite(moveDefinition, `<|>${LIBRARY}`)).toBeUndefined();
  expect(applyRewrite(moveDefinition, { 'log.plim': '<|>plan A\n', 'moves.plim': LIBRARY })).toBeUndefined();
});
