import { defineConfig } from 'prisma/config';

/** Only the command line reads this (`npx prisma migrate deploy` with DATABASE_URL set to the owner's address). */
export default defineConfig({
  schema: '../prisma/models',
  migrations: { path: '../prisma/migrations' },
  datasource: { url: process.env.DATABASE_URL ?? '' },
});
