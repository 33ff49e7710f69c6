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

  const address = /VS Code with the samples: (http:\/\/127\.0\.0\.1:\d+)\nIts password: (\S+)/;
  await Promise.race([ended, expect.poll(() => output, { timeout: 50_000 }).toMatch(address)]);
  expect(output).toMatch(address);
  const [, url = '', password = ''] = address.exec(output) ?? [];
  // Others on the machine can reach the address; they do not get in.
  expect((await fetch(url)).url).toContain('/login');
  const login = await fetch(`${url}/login`, {
    method: 'POST',
    body: new URLSearchParams({ password }),
    redirect: 'manual',
  });
  const cookie = login.headers
    .getSetCookie()
    .map((each) => each.split(';')[0])
    .join('; ');
  const page = await fetch(url, { headers: { cookie }, redirect: 'manual' });
  expect(page.status).toBe(302);
  expect(decodeURIComponent(page.headers.get('location') ?? '')).toContain(join(root, 'samples'));

  started.kill('SIGINT');
  expect(await ended).toBe(0);
  await expect(fetch(url)).rejects.toThrow();
});
