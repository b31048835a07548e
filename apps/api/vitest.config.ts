import { defineConfig } from 'vitest/config';

// Only what needs neither a database nor a port; the rest of the API is tested whole, in the workspace `tests`.
export default defineConfig({ test: { include: ['src/**/*.test.ts', 'launch/**/*.test.ts'] } });
