import { hostname, networkInterfaces } from 'node:os';
import { checkPort, readPort } from '../port';
import { chooseAddresses } from './choose-addresses';

/** Where a van's server is reached. */
export interface VanPlan {
  /** IPv4 addresses in the network around us, the one to print first. */
  addresses: string[];
  /** Names for the certificate besides them. */
  names: string[];
  /** What the certificate says whose it is. */
  computer: string;
  httpPort: number;
  httpsPort: number;
  /** The page that a new phone opens first; plain http, since it trusts nothing yet. */
  joinUrl: string;
}

/** Every address of this computer: those of the Wi-Fi, and 127.0.0.1 for its own browser. */
export const VAN_HOST = '0.0.0.0';

/** Chooses addresses and ports before anything slow is done. Throws a StartProblem when there is no network or a port is taken. */
export async function planVan(httpPort: number): Promise<VanPlan> {
  const httpsPort = readPort('HTTPS_PORT', httpPort + 1);
  await checkPort(httpsPort, VAN_HOST, 'HTTPS_PORT');
  const addresses = chooseAddresses(networkInterfaces(), process.env.VAN_ADDRESS);
  const computer = hostname().split('.')[0] ?? '';
  return {
    addresses,
    // Many systems answer to their name with ".local" behind it (RFC 6762).
    names: ['localhost', ...(/^[a-z0-9-]+$/i.test(computer) ? [`${computer}.local`.toLowerCase()] : [])],
    computer,
    httpPort,
    httpsPort,
    joinUrl: `http://${addresses[0]}:${httpPort}/van`,
  };
}
