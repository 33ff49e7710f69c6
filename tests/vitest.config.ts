import { defineConfig } from 'vitest/config';

/** Everything but what needs the real editor, which has a configuration of its own. */
export default defineConfig({
  root: import.meta.dirname,
  test: {
    include: ['**/*.test.ts'],
    exclude: ['editor/*.test.ts', '**/node_modules/**', '.cache/**'],
  },
});
