// Runs an editor and ends it, with all it started, when our standard input closes: when we are told to stop, and
// also when whoever started us is gone, however it went. Then removes the editor's folder. So no test run leaves
// anything behind. Arguments: the folder, the editor's script and its arguments.
import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';

const [folder, ...command] = process.argv.slice(2);
// A process group of its own holds the editor, its extension hosts and their language servers.
const editor = spawn(process.execPath, command, { detached: true, stdio: ['ignore', 'inherit', 'inherit'] });
const endGroup = () => {
  try {
    process.kill(-editor.pid, 'SIGKILL');
  } catch {
    // It has ended already.
  }
};
process.stdin.on('end', endGroup).on('error', endGroup).resume();
editor.on('exit', (code) => {
  endGroup();
  rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 50 });
  process.exit(code ?? 0);
});
