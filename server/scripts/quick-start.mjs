// What a program need not do before its first answer. Bundled modules all run at the start, but for those that
// something asks for by `require` when it needs them: here small modules are put in between which do that.
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);

/** Modules of ours with functions that are seldom called at the start, and bring the parser and all that makes it. */
const LATER = {
  './syntax/syntax-services.ts': ['createSyntaxServices'],
  './notation-words.ts': ['isNotationWord'],
};

/** Modules of Node that take longer to load than what they are needed for: names of pipes. */
const SELDOM = /^crypto$/;

/** What every importing module would get a copy of its own of, several hundred names each. */
const PROTOCOL = /^vscode-languageserver(\/node)?$/;

/** For esbuild. */
export const quickStart = {
  name: 'quick-start',
  setup(build) {
    /** Puts `write(args)` before each module that `applies(args)`. */
    function putBefore(namespace, filter, applies, write) {
      build.onResolve({ filter }, (args) =>
        args.namespace !== namespace && applies(args)
          ? { path: args.path, namespace, pluginData: args.resolveDir }
          : undefined,
      );
      build.onLoad({ filter, namespace }, ({ path, pluginData: resolveDir }) => ({
        contents: write(path),
        resolveDir,
      }));
    }
    putBefore(
      'later',
      /^\.\/.*\.ts$/,
      ({ path, kind }) => kind === 'import-statement' && path in LATER,
      (path) =>
        LATER[path]
          .map((name) => `export const ${name} = (...args) => require('${path}').${name}(...args);`)
          .join('\n'),
    );
    putBefore(
      'seldom',
      SELDOM,
      ({ kind }) => kind === 'require-call',
      (path) => `module.exports = new Proxy({}, { get: (_, name) => require('node:${path}')[name] });`,
    );
    putBefore(
      'protocol',
      PROTOCOL,
      ({ kind }) => kind === 'import-statement',
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
