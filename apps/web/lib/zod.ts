import { config } from 'zod';

/** As in the contract: pages may not make code from text, so zod must not try before the first schema is made. */
config({ jitless: true });

export * from 'zod';
