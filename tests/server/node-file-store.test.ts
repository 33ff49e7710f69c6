import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { decode, nodeFileStore, readContentNow } from '@plimsoll/server/node-file-store';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { URI } from 'vscode-uri';

let folder: string;
const uriOf = (path: string) => URI.file(join(folder, path)).toString();

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plimsoll-files-'));
  for (const path of ['at [home] & away', 'logs/deep', 'node_modules/other', '.git', 'dir.plim'])
    mkdirSync(join(folder, path), { recursive: true });
  for (const path of [
    'a.plim',
    'at [home] & away/x_1.plim',
    'logs/b c.plim',
    'logs/deep/ü.PLIM',
    'notes.txt',
    'node_modules/other/n.plim',
    '.git/g.plim',
  ]) {
    writeFileSync(join(folder, path), 'session\n');
  }
  symlinkSync(folder, join(folder, 'logs/loop'));
  symlinkSync(join(folder, 'gone'), join(folder, 'logs/broken.plim'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('listing', () => {
  test('finds logs at any depth, and follows no link to a folder', async () => {
    const found = await nodeFileStore.list([URI.file(folder).toString()]);
    expect(found).toEqual(
      ['a.plim', 'at [home] & away/x_1.plim', 'logs/b c.plim', 'logs/broken.plim', 'logs/deep/ü.PLIM'].map(
        uriOf,
      ),
    );
  });

  test('of nothing that is there is empty', async () => {
    expect(await nodeFileStore.list([uriOf('gone'), 'vscode-vfs://host/folder'])).toEqual([]);
  });
});

describe('reading', () => {
  test.each(['gone.plim', 'dir.plim', 'logs/broken.plim'])('%s is nothing', async (path) => {
    expect(await nodeFileStore.read(uriOf(path))).toBeUndefined();
    expect(readContentNow(join(folder, path))).toBeUndefined();
  });

  test('a log that is named is read wherever it stands', () => {
    expect(readContentNow(join(folder, 'node_modules/other/n.plim'))).toEqual({ text: 'session\n' });
  });

  test('a file is its text, whether it is waited for or not', async () => {
    expect(await nodeFileStore.read(uriOf('a.plim'))).toEqual({ text: 'session\n' });
    expect(readContentNow(join(folder, 'a.plim'))).toEqual({ text: 'session\n' });
  });

  test('anything but a file of the disk is nothing', async () => {
    expect(await nodeFileStore.read('untitled:Untitled-1')).toBeUndefined();
  });

  test('a file over 20 MB is not read, and says so', async () => {
    const path = join(folder, 'huge.plim');
    writeFileSync(path, '');
    truncateSync(path, 20_000_001);
    const contents = [await nodeFileStore.read(uriOf('huge.plim')), readContentNow(path)];
    rmSync(path);
    const said = { text: '', complaint: expect.stringContaining('larger than 20 MB') };
    expect(contents).toEqual([said, said]);
  });
});

describe('what the bytes say', () => {
  const utf16 = (text: string) => Buffer.from(`\ufeff${text}`, 'utf16le');
  test.each([
    ['plain text', Buffer.from('Bär 5'), 'Bär 5', undefined],
    ['a byte-order mark', Buffer.from('\ufeffBär'), 'Bär', undefined],
    ['UTF-16', utf16('Bär'), 'Bär', undefined],
    ['UTF-16, big end first', utf16('Bär').swap16(), 'Bär', undefined],
    ['another encoding', Buffer.from('Bär 5', 'latin1'), 'B\ufffdr 5', 'save the file in the encoding UTF-8'],
    ['a replacement character that was written', Buffer.from('B\ufffdr'), 'B\ufffdr', undefined],
    ['something else than text', Buffer.from([0x50, 0x4b, 0x00, 0x03]), '', 'something else than text'],
    ['nothing', Buffer.from(''), '', undefined],
  ])('%s', (_name, bytes, text, complaint) => {
    const content = decode(bytes);
    expect(content.text).toBe(text);
    if (complaint === undefined) expect(content.complaint).toBeUndefined();
    else expect(content.complaint).toContain(complaint);
  });
});
