import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';

const root = join(import.meta.dirname, '../..');

test('npm start prints the report and serves the samples until it is told to end', async () => {
  const script = join(root, 'extension/scripts/start.mjs');
  const started = spawn(process.execPath, [script, '--browser'], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  onTestFinished(() => void started.kill('SIGTERM'));
  let output = '';
  started.stdout.on('data', (chunk) => {
    output += chunk;
  });
  started.stderr.on('data', (chunk) => {
    output += chunk;
  });
  const ended = new Promise((resolve) => started.on('close', resolve));

  const address = /VS Code with the samples: (http:\/\/127\.0\.0\.1:\d+)/;
  await Promise.race([ended, expect.poll(() => output, { timeout: 50_000 }).toMatch(address)]);
  expect(output).toMatch(address);
  const url = address.exec(output)?.[1] ?? '';
  const page = await fetch(url);
  expect(page.status).toBe(200);
  expect(decodeURIComponent(page.url)).toContain(join(root, 'samples'));

  started.kill('SIGINT');
  expect(await ended).toBe(0);
  await expect(fetch(url)).rejects.toThrow();
});
