import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { keepAuthority } from './keep-authority';

const NOW = new Date('2026-05-01T08:00:00Z');
const folder = mkdtempSync(join(tmpdir(), 'halfshaft-authority-'));
const keep = (addresses: string[], now = NOW) => keepAuthority(folder, 'laptop', addresses, now);

afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('keepAuthority', () => {
  it('asks no phone anew at the next start, in whatever private network that is', async () => {
    const first = await keep(['192.168.4.1']);
    expect(await keep(['10.3.2.1'], new Date('2027-05-01T08:00:00Z'))).toEqual(first);
  });

  it('keeps the key for this user alone', async () => {
    await keep(['192.168.4.1']);
    expect(statSync(join(folder, 'van-authority.json')).mode & 0o777).toBe(0o600);
  });

  it('makes another when today’s address is outside what it may vouch for', async () => {
    const first = await keep(['192.168.4.1']);
    const second = await keep(['203.0.113.7', '192.168.4.1']);
    expect(second.certificate).not.toBe(first.certificate);
    expect(second.addresses).toEqual(['203.0.113.7']);
    expect(await keep(['192.168.4.1'])).toEqual(second);
  });

  it('makes another when the kept one would end within the month', async () => {
    const first = await keep(['192.168.4.1']);
    expect(await keep(['192.168.4.1'], new Date('2028-03-25T08:00:00Z'))).toEqual(first);
    expect(await keep(['192.168.4.1'], new Date('2028-04-05T08:00:00Z'))).not.toEqual(first);
  });
});
