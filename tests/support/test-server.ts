import { startTestServer } from '@halfshaft/store/embedded';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the database server's own superuser. */
    adminUrl: string;
  }
}

/** One database server for the whole run; each test file works on its own copy of the migrated template. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startTestServer();
  project.provide('adminUrl', server.adminUrl);
  return () => server.stop();
}
