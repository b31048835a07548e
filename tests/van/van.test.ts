import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findFreePort } from '@halfshaft/store/embedded';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openSecondAddress, type SecondAddress } from './second-address';
import { ROOT, type RunningVan, startVan } from './start-van';
import type { Report } from './visit';

let folder: string;
let second: SecondAddress;
let van: RunningVan | null = null;
let httpUrl: string;
let httpsUrl: string;
let report: Report;

const portOf = (url: string) => new URL(url).port;

async function visitVan(): Promise<Report> {
  van = await startVan(folder, {
    PORT: portOf(httpUrl),
    HTTPS_PORT: portOf(httpsUrl),
    VAN_ADDRESS: second.server,
  });
  const password = /demo-\S+/.exec(van.output())?.[0] ?? '';
  const args = ['--import', 'tsx', 'tests/van/visit.ts', httpUrl, httpsUrl];
  return JSON.parse(second.runNode([...args, 'mara@birchlane.example', password], ROOT)) as Report;
}

beforeAll(async () => {
  second = openSecondAddress();
  process.stdout.write(`Van mode is visited from: ${second.kind}.\n`);
  folder = mkdtempSync(join(tmpdir(), 'halfshaft-van-'));
  chmodSync(folder, 0o755); // as root, the database runs as another user
  httpUrl = `http://${second.server}:${await findFreePort()}`;
  httpsUrl = `https://${second.server}:${await findFreePort()}`;
  report = await visitVan();
});

afterAll(async () => {
  await van?.stop();
  second.remove();
  rmSync(folder, { recursive: true, force: true });
});

describe('npm run van, from another address in the network', () => {
  it('is met there, not on this machine’s localhost', () => {
    expect(second.visitor).not.toMatch(/^127\./);
    expect(report.http.signIn.from).toBe(second.visitor);
    expect(report.https.signIn.from).toBe(second.visitor);
  });

  it('prints the page to join at, a code for it, both addresses and the fingerprint', () => {
    const output = van?.output() ?? '';
    expect(output).toContain(`${httpUrl}/van`);
    expect(output).toContain(httpsUrl);
    expect(output).toMatch(/[▀▄█]{10}/);
    expect(output.replace(/\s/g, '')).toContain(report.certificate.fingerprint.replaceAll(':', ''));
  });

  it('shows a join page that leads both ways from the address it was reached at, without scripts', () => {
    const { status, html, policy } = report.join;
    expect(status).toBe(200);
    expect(html).toContain(`href="${httpUrl}/"`);
    expect(html).toContain(`href="${httpsUrl}/"`);
    expect(html).toContain('href="/van/halfshaft-van.crt"');
    expect(html.replace(/<[^>]*>|\s/g, '')).toContain(report.certificate.fingerprint.replaceAll(':', ''));
    expect(html).toContain('<svg');
    expect(html).not.toMatch(/<script|style="|127\.0\.0\.1|localhost/);
    expect(policy).toContain("script-src 'self'");
    expect(report.style).toEqual({ status: 200, type: 'text/css; charset=utf-8' });
    expect(report.joinOverHttps).toBe(200);
  });

  it('hands out the authority’s certificate in the type that phones install', () => {
    expect(report.certificate.type).toBe('application/x-x509-ca-cert');
    expect(report.certificate.isAuthority).toBe(true);
  });

  it('is believed over https by whoever trusts that certificate, and by nobody else', () => {
    expect(report.https.front.status).toBe(200);
    expect(report.withoutTrust).toMatch(/^UNABLE_TO_/);
  });

  it.each(['http', 'https'] as const)('serves the pages and signs people in over %s', (way) => {
    const { front, signIn, signedInAs } = report[way];
    expect(front).toMatchObject({ status: 200, type: 'text/html; charset=utf-8' });
    expect(front.policy).toMatch(/script-src 'self' 'sha256-/);
    expect(front.policy).not.toContain('upgrade-insecure-requests');
    expect(signIn.status).toBe(200);
    expect(signedInAs).toBe('Mara Quill');
  });

  it('keeps the session of https for https alone, and under a name of its own', () => {
    const session = (cookies: string[]) => cookies.filter((each) => each.includes('session_token'));
    expect(session(report.https.signIn.cookies)).toEqual([
      expect.stringMatching(/^__Secure-halfshaft\.session_token=.*; Secure/),
    ]);
    expect(session(report.http.signIn.cookies)).toEqual([
      expect.stringMatching(/^halfshaft\.session_token=/),
    ]);
    expect(report.http.signIn.cookies.join()).not.toMatch(/;\s*secure/i);
    expect(report.http.signIn.cookies.join()).toMatch(/;\s*HttpOnly/i);
  });

  it('takes no change over one way from a page of the other', () => {
    expect(report.http.fromOtherWay).toBe(403);
    expect(report.https.fromOtherWay).toBe(403);
  });

  it('stops at Ctrl-C, and asks no phone to trust it anew at the next start', async () => {
    expect(await van?.stop()).toBe(0);
    const again = await visitVan();
    expect(again.certificate.fingerprint).toBe(report.certificate.fingerprint);
    expect(again.https.signedInAs).toBe('Mara Quill');
  });
});
