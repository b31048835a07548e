import { createServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { checkServerIdentity, connect } from 'node:tls';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Authority, makeAuthority } from '../../apps/api/launch/van/make-authority';
import { makeCertificate, type ServerNames } from '../../apps/api/launch/van/make-certificate';

const EXTRA = '203.0.113.7'; // an address of the documentation (RFC 5737), outside all private networks
let authority: Authority;
let stranger: Authority;

beforeAll(async () => {
  const now = new Date();
  authority = await makeAuthority('laptop', [EXTRA], now);
  stranger = await makeAuthority('laptop', [EXTRA], now);
});

/** 'believed', or what the client says against it, when a client that trusts `trusted` asks a server with these names for `asked`. */
async function visit(names: ServerNames, asked: string, trusted = authority): Promise<string> {
  const server = createServer(await makeCertificate(authority, names, new Date()));
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  const answer = await new Promise<string>((done) => {
    const client = connect(
      {
        host: '127.0.0.1',
        port,
        ca: trusted.certificate,
        checkServerIdentity: (_host, certificate) => checkServerIdentity(asked, certificate),
      },
      () => done('believed'),
    );
    client.once('error', (error) => done(error.message));
    client.once('close', () => server.close());
    client.once('secureConnect', () => client.end());
  });
  return answer;
}

const OURS = { addresses: ['192.168.4.1', EXTRA], names: ['laptop.local'] };

describe('the van’s certificate', () => {
  it.each(['192.168.4.1', 'laptop.local', EXTRA])('is believed at %s', async (asked) => {
    expect(await visit(OURS, asked)).toBe('believed');
  });

  it('is not believed at an address it does not name', async () => {
    expect(await visit(OURS, '192.168.4.9')).toMatch(/^Hostname\/IP does not match certificate's altnames/);
  });

  it('is not believed by a phone that trusts another laptop of the same name', async () => {
    expect(await visit(OURS, '192.168.4.1', stranger)).not.toBe('believed');
  });

  // RFC 5280, 4.2.1.10: a name outside the permitted subtrees makes the path invalid.
  it.each([
    { addresses: [], names: ['bank.example.org'] },
    { addresses: [], names: ['local.example.org'] },
    { addresses: ['198.51.100.1'], names: [] },
    { addresses: ['2001:db8::1'], names: [] },
    { addresses: ['192.168.4.1'], names: ['bank.example.org'] },
  ])('vouches for nothing on the internet: $names $addresses', async (names) => {
    const asked = names.names[0] ?? names.addresses[0] ?? '';
    expect(await visit(names, asked)).toBe('permitted subtree violation');
  });
});
