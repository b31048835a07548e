import 'reflect-metadata';
import { webcrypto } from 'node:crypto';
import {
  BasicConstraintsExtension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectKeyIdentifierExtension,
  X509CertificateGenerator,
} from '@peculiar/x509';
import { limitNames } from './name-limits';

/** A small certificate authority: what phones are asked to trust. PEM texts. */
export interface Authority {
  certificate: string;
  key: string;
  /** Addresses outside the private networks that it may vouch for as well. */
  addresses: string[];
}

export const DAY_MS = 86_400_000;
/** Two seasons; after that the phones are asked anew. */
const AUTHORITY_DAYS = 730;
export const SIGNED_BY = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' };

/** Makes the authority of this computer, named so that a person finds it again among a phone's certificates. */
export async function makeAuthority(computer: string, addresses: string[], now: Date): Promise<Authority> {
  const keys = await makeKeys();
  const certificate = await X509CertificateGenerator.createSelfSigned({
    name: [{ CN: [`Halfshaft van (${computer}, ${now.toISOString().slice(0, 10)})`] }],
    keys,
    // Without internet a phone's clock and ours may be some hours apart.
    notBefore: new Date(now.getTime() - DAY_MS),
    notAfter: new Date(now.getTime() + AUTHORITY_DAYS * DAY_MS),
    signingAlgorithm: SIGNED_BY,
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
      limitNames(addresses),
    ],
  });
  return { certificate: certificate.toString('pem'), key: await exportKey(keys.privateKey), addresses };
}

export function makeKeys(): Promise<webcrypto.CryptoKeyPair> {
  return webcrypto.subtle.generateKey(SIGNED_BY, true, ['sign', 'verify']);
}

export async function exportKey(key: webcrypto.CryptoKey): Promise<string> {
  return PemConverter.encode(await webcrypto.subtle.exportKey('pkcs8', key), 'PRIVATE KEY');
}
