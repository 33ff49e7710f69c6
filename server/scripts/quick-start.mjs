// What a program need not do before its first answer. Bundled modules all run at the start, but for those that
// something asks for by `require` when it needs them: here small modules are put in between which do that.
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const require = createRequire(import.meta.url);
const language = fileURLToPath(new URL('../../language/src', import.meta.url));

/** Modules of ours with functions that are seldom called at the start, and bring the parser and all that makes it. */
const LATER = {
  './syntax/syntax-services.ts': ['createSyntaxServices'],
  './formatting/notation-words.ts': ['isNotationWord'],
};
// A file of another name would quietly run at the start again.
for (const path of Object.keys(LATER))
  if (!existsSync(join(language, path))) throw new Error(`There is no ${path}`);

/** Modules of Node that take longer to load than what they are needed for: names of pipes. */
const SELDOM = /^crypto$/;

/** What every importing module would get a copy of its own of, several hundred names each. */
const PROTOCOL = /^vscode-languageserver(\/node)?$/;

/** For esbuild. */
export const quickStart = {
  name: 'quick-start',
  setup(build) {
    /** Puts `write(path)` before each module for which `find(args)` gives its path and the folder that is seen from. */
    function putBefore(namespace, filter, find, write) {
      build.onResolve({ filter }, (args) => {
        const found = args.namespace === namespace ? undefined : find(args);
        return found && { path: found.path, namespace, pluginData: found.resolveDir };
      });
      build.onLoad({ filter, namespace }, ({ path, pluginData: resolveDir }) => ({
        contents: write(path),
        resolveDir,
      }));
    }
    putBefore(
      'later',
      /^\.\.?\/.*\.ts$/,
      ({ kind, path, resolveDir }) => {
        const found = `./${relative(language, resolve(resolveDir, path)).replaceAll(sep, '/')}`;
        return kind === 'import-statement' && found in LATER
          ? { path: found, resolveDir: language }
          : undefined;
      },
      (path) =>
        LATER[path]
          .map((name) => `export const ${name} = (...args) => require('${path}').${name}(...args);`)
          .join('\n'),
    );
    putBefore(
      'seldom',
      SELDOM,
      (args) => (args.kind === 'require-call' ? args : undefined),
      (path) => `module.exports = new Proxy({}, { get: (_, name) => require('node:${path}')[name] });`,
    );
    putBefore(
      'protocol',
      PROTOCOL,
      (args) => (args.kind === 'import-statement' ? args : undefined),
      (path) =>
        [
          `const all = require('${path}'), pick = (name) => all[name];`,
          ...Object.keys(require(path)).map(
            (name) => `export const ${name} = /* @__PURE__ */ pick('${name}');`,
          ),
        ].join('\n'),
    );
  },
};
