import { spawn } from 'node:child_process';
import { rootFolder } from './paths.mjs';

const onWindows = process.platform === 'win32';
const running = new Set();

/** A command that did not end well; `output` holds what it printed if it was run quietly. */
export class CommandError extends Error {
  constructor(message, output) {
    super(output ? `${message}\n${output}` : message);
    this.output = output;
  }
}

/**
 * Runs a command to its end, printing what it prints, or keeping it back under `quiet: true`.
 * Answers what it printed (empty unless quiet). Throws a `CommandError` on a non-zero exit, on a missing program
 * and after `minutes`, when the command and all it started are ended: nothing here waits for ever.
 */
export function runCommand(command, args, options = {}) {
  const { cwd = rootFolder, env = process.env, quiet = false, minutes = 20 } = options;
  return new Promise((resolve, reject) => {
    const line = [command, ...args].join(' ');
    const inShell = onWindows && command.endsWith('.cmd');
    const child = spawn(command, inShell ? args.map((part) => `"${part}"`) : args, {
      cwd,
      env,
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
      detached: !onWindows,
      shell: inShell,
    });
    running.add(child);
    let output = '';
    const keep = (chunk) => {
      output += chunk;
    };
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    let late = false;
    const timer = setTimeout(() => {
      late = true;
      endGroup(child);
    }, minutes * 60_000);
    const settle = (problem) => {
      clearTimeout(timer);
      running.delete(child);
      problem === undefined ? resolve(output) : reject(new CommandError(`${line} ${problem}`, output));
    };
    child.on('error', (error) => settle(`could not be run: ${error.message}`));
    child.on('close', (code, signal) => {
      const how = late ? `was ended after ${minutes} minutes` : `ended with ${signal ?? `exit code ${code}`}`;
      settle(code === 0 ? undefined : how);
    });
  });
}

/**
 * Ends what is still running when this process is told to end, as each command has a process group of its own.
 * Answers a function that gives the signals back.
 */
export function endCommandsOnSignal() {
  const handlers = Object.entries({ SIGINT: 130, SIGTERM: 143, SIGHUP: 129 }).map(([signal, code]) => {
    const handler = () => {
      running.forEach(endGroup);
      process.exit(code);
    };
    process.on(signal, handler);
    return () => process.off(signal, handler);
  });
  return () => {
    for (const release of handlers) {
      release();
    }
  };
}

function endGroup(child) {
  try {
    onWindows ? child.kill() : process.kill(-child.pid, 'SIGKILL');
  } catch {
    // It has ended already.
  }
}
