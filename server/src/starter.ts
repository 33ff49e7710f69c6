/**
 * What is started: it runs the program that the build puts beside it, with what V8 compiled of it at an earlier start.
 * Node's own cache keeps what is compiled before a program runs; V8 compiles nearly all of it later, function by
 * function. So the code is kept here, once the program has done daily work, in the folder of Node's cache (where
 * `node:module` says; in none with `NODE_DISABLE_COMPILE_CACHE`). A Node older than 22.8 has none, and does without.
 */
import { lstatSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { enableCompileCache, getCompileCacheDir } from 'node:module';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { Script } from 'node:vm';
import { crc32 } from 'node:zlib';

/** The name of the program's file, put in by the build, for there are two. */
declare const PROGRAM: string;

/** A server that is killed keeps nothing at its end; by now it has compiled what daily work needs. */
const AT_WORK_AFTER_MS = 30_000;

const path = join(__dirname, PROGRAM);
enableCompileCache?.();
const folder = getCompileCacheDir?.();
if (folder === undefined || !isOwn(folder)) require(path);
else run(join(folder, `${PROGRAM}.code`));

function run(kept: string): void {
  // What only the start needs would be thrown away before it is kept; and code counts only under the flags it is kept by.
  setFlagsFromString('--no-flush-bytecode');
  const { size, ctimeMs } = statSync(path);
  const key = `${path} ${size} ${ctimeMs}`;
  const cachedData = readCode(kept, key);
  const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(path, 'utf8')}\n})`;
  const script = new Script(source, { filename: path, ...(cachedData && { cachedData }) });
  const program = { exports: {} };
  script.runInThisContext()(program.exports, require, program, path, __dirname);
  const throwAway = () => setFlagsFromString('--flush-bytecode');
  if (script.cachedDataRejected === false) {
    throwAway();
    return;
  }
  let isKept = false;
  const keep = () => {
    if (!isKept) writeCode(kept, key, script.createCachedData());
    isKept = true;
    throwAway();
  };
  setTimeout(keep, AT_WORK_AFTER_MS).unref();
  process.once('exit', keep);
}

/**
 * Whether nobody else can write there: Node's folder stands in the system's temporary one under a name that anybody may take
 * first, and compiled code is run as it is. Windows gives each user a temporary folder of their own.
 */
function isOwn(place: string): boolean {
  try {
    const { uid, mode } = lstatSync(place);
    return process.getuid === undefined || (uid === process.getuid() && (mode & 0o002) === 0);
  } catch {
    return false;
  }
}

/**
 * What was kept of this very program, as it was written: V8 itself looks only at its own version and at the length of a
 * source, and would run whatever else it is given.
 */
function readCode(kept: string, key: string): Buffer | undefined {
  try {
    if (!isOwn(kept)) return undefined;
    const bytes = readFileSync(kept);
    const end = bytes.indexOf('\n') + 1;
    const code = bytes.subarray(end);
    return bytes.toString('utf8', 0, end) === toHead(key, code) ? code : undefined;
  } catch {
    return undefined;
  }
}

function toHead(key: string, code: Buffer): string {
  return `${key} ${crc32(code)}\n`;
}

/** Whole, or not at all: another process may read it meanwhile, and a machine may stop. */
function writeCode(kept: string, key: string, code: Buffer): void {
  const unfinished = `${kept}.${process.pid}`;
  try {
    writeFileSync(unfinished, Buffer.concat([Buffer.from(toHead(key, code)), code]), { flush: true });
    renameSync(unfinished, kept);
  } catch {
    // Without it the next start takes a little longer, as this one did.
  }
}
