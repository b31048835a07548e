import { defineConfig, mergeConfig } from 'vitest/config';
import base from './vitest.config';

// The long proofs of the whole product: `npm run prove`. They are no part of the ordinary test; pages must have been built.
export default defineConfig(
  mergeConfig(base, { test: { include: ['**/*.prove.ts'], testTimeout: 4 * 3_600_000 } }),
);
