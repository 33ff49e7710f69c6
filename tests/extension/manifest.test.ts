import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { CHECKS } from '@plimsoll/language/checks/catalogue';
import { SEVERITY_CHOICES } from '@plimsoll/language/checks/severities';
import { describe, expect, test } from 'vitest';

const extension = new URL('../../extension/', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, extension), 'utf8');
const manifest = JSON.parse(read('package.json'));
const strings: Record<string, string> = JSON.parse(read('package.nls.json'));
const settings = Object.entries<Record<string, unknown>>(manifest.contributes.configuration.properties);
const sources = readdirSync(new URL('src/', extension)).map((file) => read(`src/${file}`));

test('every command is registered, and every registered one is in the manifest', () => {
  const registered = [...sources.join('\n').matchAll(/registerCommand\(\s*'([^']+)'/g)].map(
    (match) => match[1],
  );
  const contributed = manifest.contributes.commands.map(({ command }: { command: string }) => command);
  expect(registered.sort()).toEqual(contributed.sort());
});

test('every command says its category and a title, and the one behind a lens stays out of the palette', () => {
  for (const command of manifest.contributes.commands) {
    expect(command).toMatchObject({ category: 'Plimsoll', title: expect.stringMatching(/^%.+%$/) });
  }
  expect(manifest.contributes.menus.commandPalette).toEqual([{ command: 'plimsoll.explain', when: 'false' }]);
});

test('every %string% exists, and every string is used', () => {
  const used = [...read('package.json').matchAll(/"%([^%"]+)%"/g)].map((match) => match[1]!);
  expect([...new Set(used)].sort()).toEqual(Object.keys(strings).sort());
});

describe('settings', () => {
  test('are at most ten', () => {
    expect(settings.length).toBeLessThanOrEqual(10);
  });

  test.each(settings)('%s says what it is, its default and its scope', (name, setting) => {
    expect(name).toMatch(/^plimsoll\.[a-zA-Z]+\.[a-zA-Z]+$/);
    expect(String(setting.description ?? setting.markdownDescription)).toMatch(/^%.+%$/);
    expect(setting).toMatchObject({ default: expect.anything(), order: expect.any(Number) });
    expect(['window', 'resource']).toContain(setting.scope);
  });

  test.each(settings.filter(([, { enum: choices }]) => choices))(
    '%s explains each choice',
    (_name, setting) => {
      const choices = setting.enum as string[];
      const explained = [setting.enumDescriptions, setting.enumItemLabels].filter(Boolean) as string[][];
      expect(choices).toContain(setting.default);
      expect(explained.length).toBeGreaterThan(0);
      for (const texts of explained) {
        expect(texts).toHaveLength(choices.length);
      }
    },
  );

  test.each(settings)('%s is in the README', (name) => {
    expect(read('README.md')).toContain(`\`${name}\``);
  });
});

test('the settings page knows every check and every severity', () => {
  const { propertyNames, additionalProperties } =
    manifest.contributes.configuration.properties['plimsoll.checks.severity'];
  expect(propertyNames.enum).toEqual(Object.keys(CHECKS).sort());
  expect(additionalProperties.enum).toEqual(SEVERITY_CHOICES);
});

test('Enter formats the line that it ends', () => {
  expect(manifest.contributes.configurationDefaults['[plimsoll]']).toMatchObject({
    'editor.formatOnType': true,
  });
});

test('defaults are set for our own language only', () => {
  expect(Object.keys(manifest.contributes.configurationDefaults)).toEqual(['[plimsoll]']);
});

test('nothing starts the extension but a log or a command, and no key is taken', () => {
  expect(manifest.activationEvents).toBeUndefined();
  expect(manifest.contributes.keybindings).toBeUndefined();
});

test('every file that the manifest names exists', () => {
  const named = [...read('package.json').matchAll(/"((?:\.\/|images\/)[^"]+)"/g)].map((match) => match[1]!);
  const committed = named.filter((path) => !path.startsWith('./out/'));
  expect(committed.length).toBeGreaterThan(5);
  expect(committed.filter((path) => !existsSync(new URL(path, extension)))).toEqual([]);
});

test('the icon is a PNG of 256 pixels', () => {
  const png = readFileSync(new URL(manifest.icon, extension));
  expect(png.toString('latin1', 1, 4)).toBe('PNG');
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([256, 256]);
});

test('the types are those of the oldest editor that is promised', () => {
  expect(manifest.engines.vscode).toBe(`^${manifest.devDependencies['@types/vscode']}`);
});

describe('the problem matcher reads what check prints', () => {
  const [matcher] = manifest.contributes.problemMatchers;
  const pattern = new RegExp(matcher.pattern.regexp);
  const readLine = (line: string) => {
    const found = pattern.exec(line);
    const part = (name: string) => found?.[matcher.pattern[name]];
    return found && ['file', 'line', 'column', 'severity', 'message', 'code'].map(part).join(' ¦ ');
  };

  test.each([
    [
      'logs/ada/2026-03.plim:12:7: error: Write a unit, such as 40 kg [missing-unit]',
      'logs/ada/2026-03.plim ¦ 12 ¦ 7 ¦ error ¦ Write a unit, such as 40 kg ¦ missing-unit',
    ],
    [
      'C:\\logs\\first day.plim:1:1: warning: No movement "Skwat"; did you mean Squat? [unknown-movement]',
      'C:\\logs\\first day.plim ¦ 1 ¦ 1 ¦ warning ¦ No movement "Skwat"; did you mean Squat? ¦ unknown-movement',
    ],
    [
      'a.plim:3:5: info: 2:05 [best 2:01] is a record [record]',
      'a.plim ¦ 3 ¦ 5 ¦ info ¦ 2:05 [best 2:01] is a record ¦ record',
    ],
  ])('%s', (line, expected) => {
    expect(readLine(line)).toBe(expected);
  });

  test.each(['    Back Squat: 5 @ 40', '                   ^^', '2 errors, 1 warning in 3 files'])(
    'not %s',
    (line) => {
      expect(readLine(line)).toBeNull();
    },
  );
});
