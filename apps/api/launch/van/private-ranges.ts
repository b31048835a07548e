import { BlockList } from 'node:net';

/**
 * Networks nobody on the internet can be: private (RFC 1918), link-local (RFC 3927) and this computer itself (RFC 1122), as the
 * certificate's limits write them.
 */
export const PRIVATE_RANGES = [
  '10.0.0.0/8',
  '172.16.0.0/12',
  '192.168.0.0/16',
  '169.254.0.0/16',
  '127.0.0.0/8',
] as const;

const list = new BlockList();
for (const range of PRIVATE_RANGES) {
  const [network = '', bits] = range.split('/');
  list.addSubnet(network, Number(bits));
}

/** Whether an IPv4 address belongs to one of these networks. */
export function isPrivate(address: string): boolean {
  return list.check(address);
}
