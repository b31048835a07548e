import { defineConfig } from 'vitest/config';

// Only what needs neither a database nor a port; the rest of the API is tested whole, in the workspace `tests`.
// A worker thread that has to be started on a busy machine needs more than the usual five seconds.
export default defineConfig({
  test: { include: ['src/**/*.test.ts', 'launch/**/*.test.ts'], testTimeout: 60_000 },
});
