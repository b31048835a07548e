import { readFile, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, runAxe, screenshot } from './chromium';
import { refuseComplaints } from './open-page';

const PAGES: Readonly<Record<string, string>> = {
  '/fine': '<h1>Service A</h1><button>Done</button>',
  '/unnamed-button': '<h1>Service A</h1><button id="mute"></button>',
  '/inline-script': '<h1>Service A</h1><script>document.title = "ran";</script>',
  '/throws': '<h1>Service A</h1><script src="/throws.js"></script>',
};
const STRICT = "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:";

let server: Server;
let baseUrl: string;

beforeAll(async () => {
  server = createServer((request, response) => {
    const path = request.url ?? '/';
    const body = PAGES[path];
    response.setHeader('content-security-policy', STRICT);
    if (path === '/throws.js') {
      response
        .setHeader('content-type', 'text/javascript')
        .end('console.error("wet"); throw new Error("mud");');
    } else if (body !== undefined) {
      const head = '<meta charset="utf-8"><title>Service</title><link rel="icon" href="data:,">';
      const page = `<!doctype html><html lang="en"><head>${head}</head><body><main>${body}</main></body></html>`;
      response.setHeader('content-type', 'text/html').end(page);
    } else {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('The test server has no port.');
  baseUrl = `http://127.0.0.1:${address.port}`;
});

afterAll(() => new Promise((resolve) => server.close(resolve)));

const phone = { width: 390, height: 844 };

describe('the browser of the tests', () => {
  it('opens a page at the asked size and colour scheme, without complaints', async () => {
    const { page, complaints } = await openPage({ ...phone, colorScheme: 'dark', baseUrl });
    await page.goto('/fine');
    expect(await page.evaluate(() => innerWidth)).toBe(390);
    expect(await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches)).toBe(true);
    expect(complaints).toEqual([]);
  });

  it('finds nothing to mend on a page that is in order, under a strict policy', async () => {
    const { page } = await openPage({ ...phone, baseUrl });
    await page.goto('/fine');
    expect(await runAxe(page)).toEqual([]);
  });

  it('finds a button without a name and says where it is', async () => {
    const { page } = await openPage({ ...phone, baseUrl });
    await page.goto('/unnamed-button');
    expect(await runAxe(page)).toEqual([
      'critical button-name: Buttons must have discernible text at #mute in <button id="mute"></button>',
    ]);
  });

  it('hears a script that the policy blocks', async () => {
    const expected = [/policy violation: script-src-elem blocks inline/, /console error: .*inline script/];
    const { page, complaints } = await openPage({ ...phone, baseUrl, expected });
    await page.goto('/inline-script');
    expect(await page.title()).toBe('Service');
    await expect.poll(() => complaints.length).toBe(2);
  });

  it('hears a console error and an uncaught error', async () => {
    const expected = [/console error: wet/, /uncaught error: mud/];
    const { page, complaints } = await openPage({ ...phone, baseUrl, expected });
    await page.goto('/throws');
    await expect.poll(() => complaints.length).toBe(2);
  });

  it('refuses complaints nobody expected and expects those that were announced', () => {
    expect(() => refuseComplaints(['console error: wet'], [])).toThrow(
      'The page complained:\nconsole error: wet',
    );
    expect(() => refuseComplaints([], [/wet/])).toThrow('expected to complain of /wet/ and did not');
    expect(() => refuseComplaints(['console error: wet'], [/wet/])).not.toThrow();
  });

  it.fails('fails a test whose page complained', async () => {
    const { page } = await openPage({ ...phone, baseUrl });
    await page.goto('/throws');
  });

  it('takes a picture', async () => {
    const { page } = await openPage({ ...phone, baseUrl });
    await page.goto('/fine');
    const path = await screenshot(page, 'browser-test');
    const bytes = await readFile(path);
    await rm(path);
    expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG');
  });
});
