import { defineMovement } from '@plimsoll/language/rewrites/define-movement';
import { expect, test } from 'vitest';
import { applyRewrite, listErrors } from '../support/apply-rewrite.ts';

test('stands behind the exercises of the file that holds most of them', () => {
  const log = 'session 2026-11-17\n  Harbour <|>Wobble: 5\n';
  const moves = 'exercise Marsh Pull\n  pattern hinge\n';
  const { title, kind, files } = applyRewrite(defineMovement, { 'log.plim': log, 'moves.plim': moves })!;
  expect([title, kind]).toEqual(['Define Harbour Wobble from a template', 'quickfix']);
  expect(files['log.plim']).toBe(log.replace('<|>', ''));
  expect(files['moves.plim']).toBe(`${moves}
exercise Harbour Wobble
  # pattern squat, hinge, lunge, horizontal push, horizontal pull, vertical push, vertical pull, carry, trunk, jump, isolation, conditioning, mobility
  # muscles glutes, hamstrings 1/2
  # needs barbell, rack
  # cue what you say
`);
  expect(listErrors(files['moves.plim']!)).toEqual([]);
});

test('says what the name itself says, and stands in the same file without another', () => {
  const { files } = applyRewrite(defineMovement, 'session 2026-11-17\n  Marsh Dumbbell Curl: 5<|>')!;
  expect(files['log.plim']).toBe(`session 2026-11-17
  Marsh Dumbbell Curl: 5

exercise Marsh Dumbbell Curl
  pattern isolation
  # muscles glutes, hamstrings 1/2
  needs dumbbell
  # cue what you say
`);
});

test('not offered for a movement that is known', () =>
  expect(applyRewrite(defineMovement, 'session 2026-11-17\n  Push-<|>up: 5\n')).toBeUndefined());

test.each([
  ['a line of an athlete', 'athlete Nell Fenwick\n  max Harbour Wo<|>bble: 40 kg on 2026-09-01\n'],
  ['a movement to go back to', 'exercise Marsh Pull\n  easier Harbour <|>Wobble\n'],
  ['a movement left out', 'session 2026-11-17\n  Push-up: 5, instead of Harbour <|>Wobble\n'],
  ['what is avoided', 'athlete Nell Fenwick\n  avoid Harbour <|>Wobble\n'],
])('is offered for %s', (_name, log) => {
  expect(applyRewrite(defineMovement, log)?.title).toBe('Define Harbour Wobble from a template');
});

test('of two on a line it is the one at the cursor', () => {
  const log = 'session 2026-11-17\n  Marsh Hop: 5, instead of Harbour Wob<|>ble\n';
  expect(applyRewrite(defineMovement, log)?.title).toBe('Define Harbour Wobble from a template');
  expect(applyRewrite(defineMovement, log.replace('<|>', '').replace('Hop', 'Hop<|>'))?.title).toBe(
    'Define Marsh Hop from a template',
  );
});

test('not offered for a pattern', () =>
  expect(applyRewrite(defineMovement, 'athlete Nell Fenwick\n  avoid vertical <|>push\n')).toBeUndefined());
