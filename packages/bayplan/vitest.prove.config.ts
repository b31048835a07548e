import { defineConfig } from 'vitest/config';

// Hundreds of services solved twice: kept out of the ordinary tests because they take minutes, not because they may fail.
export default defineConfig({
  test: {
    include: ['src/**/*.prove.ts'],
    reporters: ['verbose'],
    fileParallelism: false,
    testTimeout: 1_200_000,
  },
});
