import { betterAuth } from 'better-auth';
import { anonymous } from 'better-auth/plugins';
import pg from 'pg';
import { guardPasswordLinks, type MayUsePasswordLink } from './password-link';

export interface AuthSettings {
  authUrl: string;
  secret: string;
  publicUrl: string;
  /** A helper who came by a link made an account: whatever the first account belonged to now belongs to the second. */
  onHelperAccount?: (helperUserId: string, accountUserId: string) => Promise<void>;
  /** Left away, no link that sets a password may be used. */
  mayUsePasswordLink?: MayUsePasswordLink;
}

const SESSION_DAYS = 30;
const SECONDS_PER_DAY = 86_400;
/** Tries at one address in one minute; counted in the database, so several processes count together. */
const SIGN_INS_PER_MINUTE = 8;
const NEW_PASSWORDS_PER_MINUTE = 8;
const SIGN_UPS_PER_MINUTE = 20;
/** A whole crew scans one code behind one address. */
const HELPERS_PER_MINUTE = 40;

/** Sign-in by the library, in the schema `auth` under a login that can see nothing else. */
export function createAuth(settings: AuthSettings) {
  const pool = new pg.Pool({ connectionString: settings.authUrl, max: 4, options: '-c search_path=auth' });
  // A connection the database drops, also one that is just being closed, is replaced when next needed; unheard, the event
  // would end the process.
  pool.on('error', () => {});
  pool.on('connect', (client) => void client.on('error', () => {}));
  const auth = betterAuth({
    baseURL: settings.publicUrl,
    basePath: '/auth',
    secret: settings.secret,
    database: pool,
    // The front door has already refused requests from other sites; people reach it by name, by address, or through a proxy.
    trustedOrigins: (request) => (request ? ownOrigins(request.url) : []),
    emailAndPassword: {
      enabled: true,
      minPasswordLength: 10,
      maxPasswordLength: 200,
      revokeSessionsOnPasswordReset: true,
    },
    verification: { storeIdentifier: 'hashed' },
    hooks: { before: guardPasswordLinks(settings.mayUsePasswordLink ?? (async () => false)) },
    session: { expiresIn: SESSION_DAYS * SECONDS_PER_DAY },
    plugins: [
      anonymous({
        emailDomainName: 'helper.invalid',
        onLinkAccount: async ({ anonymousUser, newUser }) => {
          await settings.onHelperAccount?.(anonymousUser.user.id, newUser.user.id);
        },
      }),
    ],
    telemetry: { enabled: false },
    rateLimit: {
      enabled: true,
      storage: 'database',
      window: 60,
      max: 300,
      customRules: {
        '/sign-in/email': { window: 60, max: SIGN_INS_PER_MINUTE },
        '/sign-in/anonymous': { window: 60, max: HELPERS_PER_MINUTE },
        '/reset-password': { window: 60, max: NEW_PASSWORDS_PER_MINUTE },
        '/sign-up/email': { window: 60, max: SIGN_UPS_PER_MINUTE },
      },
    },
    advanced: {
      cookiePrefix: 'halfshaft',
      useSecureCookies: settings.publicUrl.startsWith('https:'),
      ipAddress: { ipAddressHeaders: ['x-halfshaft-ip'] },
    },
  });
  return { auth, close: () => pool.end() };
}

export type Auth = ReturnType<typeof createAuth>['auth'];

function ownOrigins(url: string): string[] {
  const { host } = new URL(url);
  return [`http://${host}`, `https://${host}`];
}
