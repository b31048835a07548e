import { defineConfig } from 'vitest/config';

// These tests start a real Postgres, the real server and a real Chromium, so one file runs at a time.
export default defineConfig({
  test: {
    globalSetup: ['./support/test-server.ts'],
    pool: 'forks',
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 180_000,
  },
});
