import { execFileSync } from 'node:child_process';

/** In a real repository, untouched by the settings of whoever runs the tests. */
export function git(folder: string, ...args: readonly string[]): void {
  const settings = ['-c', 'user.name=Quill Harrow', '-c', 'user.email=quill@example.invalid'];
  const env = { ...process.env, GIT_CONFIG_GLOBAL: '/dev/null', GIT_CONFIG_NOSYSTEM: '1' };
  execFileSync('git', [...settings, ...args], { cwd: folder, env });
}

/** Makes a folder a repository, all of it committed. */
export function commitAll(folder: string): void {
  git(folder, 'init', '-q', '-b', 'main');
  git(folder, 'add', '-A');
  git(folder, 'commit', '-q', '-m', 'Begin');
}
