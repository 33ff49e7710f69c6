import { readFileSync } from 'node:fs';
import { complainOfSettings, DEFAULT_SETTINGS, readSettings } from '@plimsoll/server/settings';
import { expect, test } from 'vitest';

test('choices are taken as they come', () => {
  const section = {
    lenses: { show: 'blocks' },
    hints: { show: false, plates: true },
    estimatedMax: { formula: 'wathan' },
    display: { unit: 'lb' },
    checks: { severity: { 'load-jump': 'off', 'no-load': 'error' } },
  };
  expect(readSettings(section)).toEqual({
    lenses: 'blocks',
    hints: false,
    plates: true,
    formula: 'wathan',
    unit: 'lb',
    severities: { 'load-jump': 'off', 'no-load': 'error' },
  });
});

test('a mistyped check or severity is told, and the others hold', () => {
  const section = { checks: { severity: { 'lod-jump': 'off', 'no-load': 'loud', 'load-jump': 'hint' } } };
  expect(readSettings(section).severities).toEqual({ 'load-jump': 'hint' });
  expect(complainOfSettings(section)).toEqual([
    'No check is called lod-jump: did you mean load-jump?',
    'no-load is set to error, warning, info, hint or off, not "loud"',
  ]);
  expect(complainOfSettings(undefined)).toEqual([]);
});

test.each([
  [undefined],
  [null],
  ['noise'],
  [{}],
  [{ lenses: null, hints: 7, display: { unit: 'stone' }, checks: ['off'] }],
])('%j counts as not set', (section) => {
  expect(readSettings(section)).toEqual(DEFAULT_SETTINGS);
});

test('the settings page offers the same choices and defaults', () => {
  const manifest = JSON.parse(readFileSync(new URL('../../extension/package.json', import.meta.url), 'utf8'));
  const { properties } = manifest.contributes.configuration;
  const read = (name: string, value: unknown) => {
    const [, group, key] = name.split('.') as [string, string, string];
    return readSettings({ [group]: { [key]: value } });
  };
  const names = Object.keys(properties).filter((name) => !name.startsWith('plimsoll.trace'));
  expect(names).toHaveLength(Object.keys(DEFAULT_SETTINGS).length);
  for (const name of names) {
    expect(read(name, properties[name].default)).toEqual(DEFAULT_SETTINGS);
    if (properties[name].type === 'object') continue;
    const choices: unknown[] = properties[name].enum ?? [true, false];
    expect(new Set(choices.map((choice) => JSON.stringify(read(name, choice)))).size).toBe(choices.length);
  }
});
