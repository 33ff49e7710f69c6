import { runCommandLine } from './command-line.ts';
import { systemClock } from './today.ts';

// A reader that has seen enough, such as `head`, is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const { NO_COLOR } = process.env;
runCommandLine(process.argv.slice(2), {
  write: (text) => process.stdout.write(text),
  writeError: (text) => process.stderr.write(text),
  colour: process.stdout.isTTY === true && (NO_COLOR === undefined || NO_COLOR === ''),
  folder: process.cwd(),
  today: systemClock(process.env).today(),
}).then(
  (code) => {
    process.exitCode = code;
  },
  (error: NodeJS.ErrnoException) => {
    // What a disk refuses is said in a sentence; all else is a mistake of ours, whose place matters.
    process.stderr.write(`${error.code === undefined ? error.stack : error.message}\n`);
    process.exitCode = 2;
  },
);
