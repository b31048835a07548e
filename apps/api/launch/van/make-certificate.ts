import 'reflect-metadata';
import { webcrypto } from 'node:crypto';
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  X509Certificate,
  X509CertificateGenerator,
} from '@peculiar/x509';
import { type Authority, DAY_MS, exportKey, makeKeys, SIGNED_BY } from './make-authority';

/** Made anew at each start, so it need only outlast one event. */
const CERTIFICATE_DAYS = 60;

/** Who the server is: the addresses and names under which phones reach it. */
export interface ServerNames {
  addresses: readonly string[];
  names: readonly string[];
}

/** The server's own key and certificate, signed by the authority. PEM texts. */
export async function makeCertificate(
  authority: Authority,
  { addresses, names }: ServerNames,
  now: Date,
): Promise<{ key: string; cert: string }> {
  const keys = await makeKeys();
  const issuer = new X509Certificate(authority.certificate);
  const certificate = await X509CertificateGenerator.create({
    subject: [{ CN: ['Halfshaft in the van'] }],
    issuer: issuer.subject,
    publicKey: keys.publicKey,
    signingKey: await importKey(authority.key),
    notBefore: new Date(now.getTime() - DAY_MS),
    notAfter: new Date(now.getTime() + CERTIFICATE_DAYS * DAY_MS),
    signingAlgorithm: SIGNED_BY,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      await AuthorityKeyIdentifierExtension.create(issuer.publicKey),
      new SubjectAlternativeNameExtension([
        ...addresses.map((value) => ({ type: 'ip' as const, value })),
        ...names.map((value) => ({ type: 'dns' as const, value })),
      ]),
    ],
  });
  return { key: await exportKey(keys.privateKey), cert: certificate.toString('pem') };
}

function importKey(pem: string): Promise<webcrypto.CryptoKey> {
  const [bytes = new ArrayBuffer(0)] = PemConverter.decode(pem);
  return webcrypto.subtle.importKey('pkcs8', bytes, SIGNED_BY, false, ['sign']);
}
