import { defineConfig } from 'vitest/config';

/** One editor for the whole run, started by the global setup; each test file opens a window of its own in it. */
export default defineConfig({
  root: import.meta.dirname,
  test: {
    include: ['*.test.ts'],
    globalSetup: ['global-setup.mjs'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 90_000,
    teardownTimeout: 20_000,
    expect: { poll: { timeout: 20_000, interval: 50 } },
  },
});
