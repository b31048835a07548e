import { defineConfig } from 'vitest/config';

// These tests start a real Postgres, the real server and a real Chromium, so one file runs at a time.
export default defineConfig({
  test: {
    globalSetup: ['./support/test-server.ts'],
    pool: 'forks',
    fileParallelism: false,
    // The whole server is read once and not for each file anew; what a file opens it closes itself.
    isolate: false,
    setupFiles: ['./browser/close-chromium.ts'],
    testTimeout: 120_000,
    hookTimeout: 180_000,
  },
});
