import { X509Certificate } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Authority, DAY_MS, makeAuthority } from './make-authority';
import { isPrivate } from './private-ranges';

/** What is left must outlast an event. */
const LEAST_DAYS_LEFT = 30;

/** The authority kept in this folder, made on first use and made anew when it ends soon or cannot vouch for today's addresses. */
export async function keepAuthority(
  folder: string,
  computer: string,
  addresses: string[],
  now: Date,
): Promise<Authority> {
  const path = join(folder, 'van-authority.json');
  const open = addresses.filter((address) => !isPrivate(address));
  const kept = existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as Authority) : null;
  if (kept && lastsLongEnough(kept, now) && open.every((address) => kept.addresses.includes(address)))
    return kept;
  const made = await makeAuthority(computer, open, now);
  mkdirSync(folder, { recursive: true });
  // Whole or not at all; the key is for this user only.
  writeFileSync(`${path}.new`, JSON.stringify(made, null, 2), { mode: 0o600 });
  renameSync(`${path}.new`, path);
  return made;
}

function lastsLongEnough({ certificate }: Authority, now: Date): boolean {
  const end = Date.parse(new X509Certificate(certificate).validTo);
  return end - now.getTime() > LEAST_DAYS_LEFT * DAY_MS;
}
