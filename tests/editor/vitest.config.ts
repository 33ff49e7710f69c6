import { defineConfig } from 'vitest/config';

/** One editor for the whole run, started by the global setup; each test file opens a window of its own in it. */
export default defineConfig({
  root: import.meta.dirname,
  test: {
    include: ['*.test.ts'],
    globalSetup: ['global-setup.mjs'],
    fileParallelism: false,
    // Ceilings, not waits: on a busy machine the first test of a window was seen to take 56 s.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    teardownTimeout: 20_000,
    expect: { poll: { timeout: 60_000, interval: 50 } },
  },
});
