import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

/** The built-in library is imported as text, as the bundles do. */
export const plimAsText = {
  name: 'plim-as-text',
  enforce: 'pre' as const,
  load(id: string) {
    return id.endsWith('.plim') ? `export default ${JSON.stringify(readFileSync(id, 'utf8'))};` : undefined;
  },
};

/** Everything but what needs the real editor, which has a configuration of its own. */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [plimAsText],
  test: {
    include: ['**/*.test.ts'],
    exclude: ['editor/*.test.ts', '**/node_modules/**', '.cache/**'],
    setupFiles: ['same-seed.ts'],
    // Nothing is kept in modules but what can be worked out again: one load of them serves all files, in a third of the time.
    isolate: false,
    // Otherwise one core is left to the process that only hands out files.
    maxWorkers: '100%',
    // Far above what any of them needs: a machine that does other work meanwhile is no failure.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
