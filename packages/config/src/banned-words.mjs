// Words that some rows of the import table forbid, by group. `spots` are read from the syntax tree, so a comment or a
// string that mentions one is no hit.
export const BANNED_WORDS = {
  clock: {
    spots: ['new Date', 'Date()', 'Date.now', 'performance.now', 'Temporal.Now'],
    says: (path) =>
      path.startsWith('apps/api/')
        ? 'The clock is injected: reading or building a Date belongs in apps/api/src/clock.ts.'
        : 'A clock must be passed in: take the time as an argument.',
  },
  chance: {
    spots: [
      'Math.random',
      'crypto.randomUUID',
      'crypto.getRandomValues',
      'globalThis.crypto',
      'globalThis.Math',
      'globalThis.Date',
    ],
    says: () => 'Chance must be passed in: take the number, the id or the source of numbers as an argument.',
  },
  env: {
    spots: ['process.env'],
    says: (path) =>
      path.startsWith('apps/api/')
        ? 'Settings are read and checked once, in apps/api/src/env.ts (or launch/).'
        : 'Settings are read in apps/api/src/env.ts or a launch/ script and passed in.',
  },
};
