import { isIPv4 } from 'node:net';
import type { NetworkInterfaceInfo } from 'node:os';
import { StartProblem } from '../problem';
import { isPrivate } from './private-ranges';

type Interfaces = NodeJS.Dict<NetworkInterfaceInfo[]>;

/** Names of networks that lead to containers, virtual machines or far away, never to a phone (common practice, no source). */
const NO_PHONE_THERE = /^(?:docker|br-|cni|virbr|vmnet|vboxnet|vEthernet|utun|tun|tap|wg)/;

/**
 * The IPv4 addresses at which phones in the same network reach this computer, private ones first. `wanted` (VAN_ADDRESS) names
 * the one to put first instead. Throws a StartProblem when there is none.
 */
export function chooseAddresses(interfaces: Interfaces, wanted?: string): string[] {
  const found = Object.entries(interfaces).flatMap(([name, addresses]) =>
    NO_PHONE_THERE.test(name) ? [] : (addresses ?? []).filter(isReachable).map(({ address }) => address),
  );
  const sorted = [...found.filter(isPrivate), ...found.filter((address) => !isPrivate(address))];
  if (wanted) return putFirst(wanted, sorted, interfaces);
  if (sorted.length > 0) return sorted;
  throw new StartProblem(
    'This computer is in no network, so no phone can reach it. Join the Wi-Fi of the van, or switch on this computer’s own hotspot, then start again.',
  );
}

function isReachable({ family, internal }: NetworkInterfaceInfo): boolean {
  return family === 'IPv4' && !internal;
}

function putFirst(wanted: string, others: string[], interfaces: Interfaces): string[] {
  const isOurs = Object.values(interfaces).some((list) => list?.some(({ address }) => address === wanted));
  if (isIPv4(wanted) && isOurs) return [wanted, ...others.filter((address) => address !== wanted)];
  throw new StartProblem(
    `VAN_ADDRESS=${wanted} is no IPv4 address of this computer. It has: ${others.join(', ') || 'none'}.`,
  );
}
