import { defineConfig } from 'vitest/config';

export default defineConfig({ test: { include: ['src/**/*.prove.ts'], testTimeout: 1_800_000 } });
