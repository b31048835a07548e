import { defineConfig } from 'vitest/config';

// Hundreds of small projects and services are solved to the end: a busy machine needs more than the usual five seconds.
export default defineConfig({ test: { testTimeout: 120_000 } });
