/**
 * What is started: it runs the program that the build puts beside it, and lets Node keep what it compiled of it for the
 * next start (where `node:module` says: in the system's folder for temporary files, or in none with
 * `NODE_DISABLE_COMPILE_CACHE`). A Node older than 22.8 has no such thing, and does without.
 */
import { enableCompileCache, flushCompileCache } from 'node:module';

/** Put in by the build, for there are two such programs. */
declare const PROGRAM: string;

/** A server that is killed writes nothing at its end; by now it has compiled what daily work needs. It is written once. */
const AT_WORK_AFTER_MS = 30_000;

enableCompileCache?.();
require(PROGRAM);
setTimeout(() => flushCompileCache?.(), AT_WORK_AFTER_MS).unref();
