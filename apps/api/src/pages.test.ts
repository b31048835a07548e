import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { contentPolicy, readPagePolicies } from './pages';

/** `printf %s 'alert(1)' | openssl dgst -sha256 -binary | base64` */
const HASH_OF_ALERT_1 = 'sha256-bhHHL3z2vDgxUt0W3dWQOrprscmda2Y5pLsLg4GF+pI=';

let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'halfshaft-pages-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

async function scriptsOf(html: string): Promise<string | undefined> {
  await writeFile(join(folder, 'page.html'), html);
  const policy = (await readPagePolicies(folder)).get(join(folder, 'page.html'));
  return policy?.split('; ').find((part) => part.startsWith('script-src '));
}

describe('readPagePolicies', () => {
  it('lets an inline script run by its hash', async () => {
    expect(await scriptsOf('<script>alert(1)</script>')).toBe(`script-src 'self' '${HASH_OF_ALERT_1}'`);
    expect(await scriptsOf('<script id="x" async>alert(1)</script>')).toContain(HASH_OF_ALERT_1);
  });

  it('hashes the script as it stands, line breaks and all', async () => {
    const broken = await scriptsOf('<script>\nalert(1)\n</script>');
    expect(broken).toMatch(/^script-src 'self' 'sha256-[^']{44}'$/);
    expect(broken).not.toContain(HASH_OF_ALERT_1);
  });

  it('lists the same script once and every other one', async () => {
    const scripts = await scriptsOf(
      '<script>alert(1)</script><script>alert(2)</script><script>alert(1)</script>',
    );
    expect(scripts?.match(/sha256-/g)).toHaveLength(2);
  });

  it('needs no hash for a script from a file', async () => {
    expect(await scriptsOf('<script src="/a.js" async=""></script><p>no script</p>')).toBe(
      "script-src 'self'",
    );
  });

  it('reads pages in folders too, and nothing but pages', async () => {
    await mkdir(join(folder, 'event'));
    await writeFile(join(folder, 'event', 'index.html'), '<script>alert(1)</script>');
    await writeFile(join(folder, 'notes.txt'), '<script>alert(1)</script>');
    const policies = await readPagePolicies(folder);
    expect([...policies.keys()]).toEqual([join(folder, 'event', 'index.html')]);
  });
});

describe('contentPolicy', () => {
  it('lets nothing in from elsewhere and nothing run that was not named', () => {
    const policy = contentPolicy(["'self'"]);
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    for (const part of [
      "default-src 'self'",
      "object-src 'none'",
      "base-uri 'none'",
      "frame-ancestors 'none'",
    ]) {
      expect(policy.split('; ')).toContain(part);
    }
  });
});
