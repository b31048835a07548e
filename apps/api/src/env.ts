import { z } from 'zod';

const schema = z.object({
  /** Address for the app's login; may lead through a pooler. */
  DATABASE_APP_URL: z.url('DATABASE_APP_URL must be a postgresql:// address of the login halfshaft_app.'),
  /** Address for the same login, not through a pooler: one listener per process. */
  DATABASE_DIRECT_URL: z.url().optional(),
  /** Address for the sign-in login. */
  DATABASE_AUTH_URL: z.url('DATABASE_AUTH_URL must be a postgresql:// address of the login halfshaft_auth.'),
  DATABASE_POOL_SIZE: z.coerce.number().int().min(2).max(200).default(10),
  /** Signs the session cookies; long and random. */
  SIGN_IN_SECRET: z.string().min(32, 'SIGN_IN_SECRET must be a random text of 32 characters or more.'),
  /** The address people type, such as https://service.example.org. */
  PUBLIC_URL: z.url(),
  HOST: z.string().default('0.0.0.0'),
  PORT: z.coerce.number().int().min(0).max(65_535).default(4600),
  /** How much the photos of one event may take up, and of one team: about four to a megabyte. */
  PHOTO_EVENT_MEGABYTES: z.coerce.number().int().min(1).max(100_000).default(200),
  PHOTO_TEAM_MEGABYTES: z.coerce.number().int().min(1).max(1_000_000).default(2000),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'silent']).default('warn'),
  /** Where the web build lies, from this file. */
  WEB_FOLDER: z.string().default('../../web/out'),
  /** Set only while developing: pages come from this Next server instead of the build. */
  WEB_DEV_URL: z.url().optional(),
});

export type Env = z.infer<typeof schema>;

/** The settings of this process. Throws one sentence for each that is wrong. */
export function readEnv(source: Record<string, string | undefined> = process.env): Env {
  const parsed = schema.safeParse(source);
  if (parsed.success) return parsed.data;
  const sentences = parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  throw new Error(`Settings are wrong or missing.\n${sentences.join('\n')}`);
}
