import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import Fastify, { type FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { servePages } from './serve-pages';

const PAGE = '<script>alert(1)</script><p>The bay</p>';

let folder: string;
let app: FastifyInstance;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'halfshaft-pages-'));
  await mkdir(join(folder, 'bay'));
  for (const [name, text] of [
    ['bay/index.html', PAGE],
    ['404.html', '<p>Not here</p>'],
  ] as const) {
    await writeFile(join(folder, name), text);
    await writeFile(join(folder, `${name}.gz`), gzipSync(text));
  }
  await writeFile(join(folder, 'icon.png'), 'has no smaller copy');
  app = Fastify();
  await servePages(app, { kind: 'build', folder });
});
afterEach(async () => {
  await app.close();
  await rm(folder, { recursive: true, force: true });
});

function get(url: string, encodings: string) {
  return app.inject({ url, headers: { 'accept-encoding': encodings } });
}

describe('servePages', () => {
  it('sends the smaller copy of a page with the page’s own policy to who reads it, else the page', async () => {
    const small = await get('/bay/', 'gzip, br');
    expect(small.headers).toMatchObject({ 'content-encoding': 'gzip', vary: 'accept-encoding' });
    expect(small.headers['content-type']).toContain('text/html');
    expect(gunzipSync(small.rawPayload).toString()).toBe(PAGE);
    const plain = await get('/bay/', 'identity');
    expect(plain.body).toBe(PAGE);
    expect(plain.headers['content-encoding']).toBeUndefined();
    for (const { headers } of [small, plain])
      expect(headers['content-security-policy']).toMatch(/'self' 'sha256-/);
  });

  it('finds what has no smaller copy, a folder without its slash, and says what is not there', async () => {
    expect((await get('/icon.png', 'gzip')).body).toBe('has no smaller copy');
    expect(await get('/bay', 'gzip')).toMatchObject({ statusCode: 301 });
    const missing = await get('/nothing', 'gzip');
    expect(missing.statusCode).toBe(404);
    expect(gunzipSync(missing.rawPayload).toString()).toBe('<p>Not here</p>');
  });
});
