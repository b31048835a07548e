import type { NetworkInterfaceInfo } from 'node:os';
import { describe, expect, it } from 'vitest';
import { chooseAddresses } from './choose-addresses';

function at(address: string, internal = false): NetworkInterfaceInfo {
  const common = { address, internal, mac: '02:00:00:00:00:01', cidr: `${address}/24` };
  return address.includes(':')
    ? { ...common, family: 'IPv6', netmask: 'ffff:ffff:ffff:ffff::', scopeid: 0 }
    : { ...common, family: 'IPv4', netmask: '255.255.255.0' };
}

const LOOPBACK = { lo: [at('127.0.0.1', true), at('::1', true)] };

describe('chooseAddresses', () => {
  it('takes the IPv4 addresses of real networks, private ones first', () => {
    const interfaces = {
      ...LOOPBACK,
      wwan0: [at('203.0.113.7')],
      docker0: [at('172.17.0.1')],
      'br-1a2b': [at('172.18.0.1')],
      wlp2s0: [at('192.168.4.1'), at('fe80::1')],
    };
    expect(chooseAddresses(interfaces)).toEqual(['192.168.4.1', '203.0.113.7']);
  });

  it('puts the wanted address first, also one it would have left out', () => {
    const interfaces = { ...LOOPBACK, wlan0: [at('192.168.4.1')], tap0: [at('10.8.0.1')] };
    expect(chooseAddresses(interfaces, '10.8.0.1')).toEqual(['10.8.0.1', '192.168.4.1']);
  });

  it('says in a sentence that there is no network', () => {
    expect(() => chooseAddresses(LOOPBACK)).toThrow(/is in no network.*Join the Wi-Fi of the van/);
  });

  it.each(['192.168.4.2', '::1', 'laptop'])('does not take %s for an address of this computer', (wanted) => {
    const interfaces = { ...LOOPBACK, wlan0: [at('192.168.4.1')] };
    expect(() => chooseAddresses(interfaces, wanted)).toThrow(
      `VAN_ADDRESS=${wanted} is no IPv4 address of this computer. It has: 192.168.4.1.`,
    );
  });
});
