import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// These tests start a real Postgres, the real server and a real Chromium, so one file runs at a time.
export default defineConfig({
  // The phones of faults/swarm run the pages' own code.
  resolve: { alias: { '@': fileURLToPath(new URL('../apps/web', import.meta.url)) } },
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
