import { CHECKS } from '@plimsoll/language/checks/catalogue';
import { checkFile } from '@plimsoll/language/checks/check-file';
import { applySeverities, readSeverities } from '@plimsoll/language/checks/severities';
import { expect, test } from 'vitest';
import { lines, openPractice, TODAY, toUri } from './workspace.ts';

test('every check can be set to every severity, and turned off', () => {
  for (const code of Object.keys(CHECKS)) {
    for (const choice of ['error', 'warning', 'info', 'hint', 'off']) {
      expect(readSeverities({ [code]: choice })).toEqual({ severities: { [code]: choice }, complaints: [] });
    }
  }
});

test.each([
  [{ 'lod-jump': 'off' }, 'No check is called lod-jump: did you mean load-jump?'],
  [{ weather: 'off' }, 'No check is called weather'],
  [{ toString: 'off' }, 'No check is called toString'],
  [{ 'load-jump': 'silent' }, 'load-jump is set to error, warning, info, hint or off, not "silent"'],
  [{ 'load-jump': null }, 'load-jump is set to error, warning, info, hint or off, not null'],
  [{ 'load-jump': undefined }, 'load-jump is set to error, warning, info, hint or off, not nothing'],
])('%j is told, and the rest holds', (chosen, complaint) => {
  expect(readSeverities({ ...chosen, 'no-load': 'error' })).toEqual({
    severities: { 'no-load': 'error' },
    complaints: [complaint],
  });
});

test.each([[undefined], [null], ['off'], [7], [['off']]])('%j sets nothing', (chosen) => {
  expect(readSeverities(chosen)).toEqual({ severities: {}, complaints: [] });
});

test('problems have the severity that was chosen, and are gone where it is off', () => {
  const log = lines('session 2026-11-17', '  Back Squat: 5', '  Bench Press: 5 @', '  Harbour Hop: 5');
  const practice = openPractice(log);
  const found = checkFile(practice, toUri('log.plim'), { today: TODAY });
  const told = (chosen: Record<string, string>) =>
    applySeverities(found, readSeverities(chosen).severities).map(
      ({ problem: { code, severity } }) => `${code} ${severity}`,
    );
  expect(told({})).toEqual(['no-load warning', 'missing-load error', 'unknown-movement warning']);
  expect(told({ 'no-load': 'error', 'missing-load': 'hint', 'unknown-movement': 'off' })).toEqual([
    'no-load error',
    'missing-load hint',
  ]);
  expect(told({ 'no-load': 'info' })[0]).toBe('no-load info');
  // What was found is kept as it was found: another choice may follow.
  expect(told({})).toHaveLength(3);
});
