import { defineConfig } from 'vitest/config';

// The long proofs: `npm run prove`. They are no part of the ordinary test.
export default defineConfig({ test: { include: ['src/**/*.prove.ts'], testTimeout: 600_000 } });
