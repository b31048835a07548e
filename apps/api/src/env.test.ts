import { describe, expect, it } from 'vitest';
import { readEnv } from './env';

const LEAST = {
  DATABASE_APP_URL: 'postgresql://halfshaft_app:x@127.0.0.1:5432/halfshaft',
  DATABASE_AUTH_URL: 'postgresql://halfshaft_auth:x@127.0.0.1:5432/halfshaft',
  SIGN_IN_SECRET: 'x'.repeat(32),
  PUBLIC_URL: 'https://service.example.org',
};

describe('readEnv', () => {
  it('needs four settings and knows the rest', () => {
    expect(readEnv(LEAST)).toEqual({
      ...LEAST,
      DATABASE_POOL_SIZE: 10,
      HOST: '0.0.0.0',
      PORT: 4600,
      PHOTO_EVENT_MEGABYTES: 200,
      PHOTO_TEAM_MEGABYTES: 2000,
      LOG_LEVEL: 'warn',
      WEB_FOLDER: '../../web/out',
    });
  });

  it('reads numbers out of text', () => {
    expect(readEnv({ ...LEAST, PORT: '8080', DATABASE_POOL_SIZE: '20' })).toMatchObject({
      PORT: 8080,
      DATABASE_POOL_SIZE: 20,
    });
  });

  it('says one sentence for each setting that is wrong, by name', () => {
    const wrong = { ...LEAST, SIGN_IN_SECRET: 'short', DATABASE_AUTH_URL: 'localhost', PORT: '99999' };
    expect(() => readEnv(wrong)).toThrow(/SIGN_IN_SECRET must be a random text of 32 characters or more/);
    expect(() => readEnv(wrong)).toThrow(/DATABASE_AUTH_URL must be a postgresql:\/\/ address/);
    expect(() => readEnv(wrong)).toThrow(/PORT: /);
    expect(() => readEnv({})).toThrow(/PUBLIC_URL: /);
  });

  it.each(['1', '201', 'ten'])('does not take a pool of %s', (size) => {
    expect(() => readEnv({ ...LEAST, DATABASE_POOL_SIZE: size })).toThrow(/DATABASE_POOL_SIZE: /);
  });
});
