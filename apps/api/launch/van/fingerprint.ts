import { X509Certificate } from 'node:crypto';

/** The SHA-256 of a certificate as phones show it, in pairs: "AB:12:…". */
export function fingerprintOf(pem: string): string {
  return new X509Certificate(pem).fingerprint256;
}

/** The same in two lines of eight groups of four, to be read out. */
export function inGroups(fingerprint: string): string[] {
  const groups = fingerprint.replaceAll(':', '').match(/.{4}/g) ?? [];
  return [groups.slice(0, 8).join(' '), groups.slice(8).join(' ')];
}
