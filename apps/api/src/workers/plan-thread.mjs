import { tsImport } from 'tsx/esm/api';

// A thread does not inherit the loader of its process on every Node version, so it brings its own.
await tsImport('./plan-thread.ts', import.meta.url);
