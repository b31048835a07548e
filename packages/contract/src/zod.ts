import { config } from 'zod';

/**
 * Pages run under a policy that forbids making code from text. zod tries that once, to parse faster, and the browser
 * reports the attempt; so it is told not to, before the first schema is made.
 */
config({ jitless: true });

export * from 'zod';
