import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { runCommandLine } from '@plimsoll/server/command-line';

/** A real repository in a temporary folder, untouched by the settings of whoever runs the tests. */
export class GitFolder {
  readonly path = mkdtempSync(join(tmpdir(), 'plimsoll-git-'));

  write(files: Readonly<Record<string, string>>): void {
    for (const [path, content] of Object.entries(files)) {
      mkdirSync(dirname(join(this.path, path)), { recursive: true });
      writeFileSync(join(this.path, path), content);
    }
  }

  git(...args: readonly string[]): string {
    const env = { ...process.env, GIT_CONFIG_GLOBAL: '/dev/null', GIT_CONFIG_NOSYSTEM: '1' };
    const settings = ['-c', 'user.name=Quill Harrow', '-c', 'user.email=quill@example.invalid'];
    return execFileSync('git', [...settings, ...args], {
      cwd: this.path,
      env,
      encoding: 'utf8',
      stdio: 'pipe',
    });
  }

  init(): void {
    this.git('init', '-q', '-b', 'main');
  }

  commit(message = 'Write'): void {
    this.git('add', '-A');
    this.git('commit', '-q', '--allow-empty', '-m', message);
  }

  /** A command as if typed in this folder, or in one below. */
  async run(args: readonly string[], below = '') {
    const [out, error]: [string[], string[]] = [[], []];
    const code = await runCommandLine(args, {
      write: (text) => out.push(text),
      writeError: (text) => error.push(text),
      colour: false,
      folder: join(this.path, below),
      today: '2026-11-24',
    });
    return { code, out: out.join(''), error: error.join('') };
  }

  remove(): void {
    rmSync(this.path, { recursive: true });
  }
}
