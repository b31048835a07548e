import { execFileSync } from 'node:child_process';
import { networkInterfaces } from 'node:os';

/** Another computer in the van's network, or as near to one as this machine allows. */
export interface SecondAddress {
  /** What a test of this machine could do: told in the output. */
  kind: 'own network' | 'network address of this machine';
  /** The van's server, as seen from there. */
  server: string;
  /** Where a visitor from there comes from. */
  visitor: string;
  /** Runs Node there; returns what it printed. */
  runNode(args: string[], cwd: string): string;
  remove(): void;
}

const NAME = `van-${process.pid}`;
/** A range for two (RFC 1918), unlikely to be somebody's. */
const SERVER = '10.213.77.1';
const VISITOR = '10.213.77.2';

/**
 * A network of its own with one cable to this machine, where Linux lets us make one (as root); else the address that this machine
 * has in its network, which is not localhost either.
 */
export function openSecondAddress(): SecondAddress {
  try {
    return openOwnNetwork();
  } catch {
    removeOwnNetwork();
    return useOwnAddress();
  }
}

function openOwnNetwork(): SecondAddress {
  const cable = `hs${process.pid}`;
  ip('netns', 'add', NAME);
  ip('link', 'add', cable, 'type', 'veth', 'peer', 'name', 'phone', 'netns', NAME);
  ip('address', 'add', `${SERVER}/30`, 'dev', cable);
  ip('link', 'set', cable, 'up');
  ip('-n', NAME, 'address', 'add', `${VISITOR}/30`, 'dev', 'phone');
  ip('-n', NAME, 'link', 'set', 'phone', 'up');
  return {
    kind: 'own network',
    server: SERVER,
    visitor: VISITOR,
    runNode: (args, cwd) => run('ip', ['netns', 'exec', NAME, process.execPath, ...args], cwd),
    remove: removeOwnNetwork,
  };
}

/** The cable goes with the network it leads to. */
function removeOwnNetwork(): void {
  try {
    ip('netns', 'delete', NAME);
  } catch {
    // it was never made
  }
}

function useOwnAddress(): SecondAddress {
  const all = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
  const own = all.find(({ family, internal }) => family === 'IPv4' && !internal);
  if (!own)
    throw new Error('This machine is in no network: van mode cannot be reached from a second address.');
  return {
    kind: 'network address of this machine',
    server: own.address,
    visitor: own.address,
    runNode: (args, cwd) => run(process.execPath, args, cwd),
    remove: () => {},
  };
}

function ip(...args: string[]): void {
  execFileSync('ip', args, { stdio: 'ignore' });
}

function run(command: string, args: string[], cwd: string): string {
  return execFileSync(command, args, { cwd, encoding: 'utf8', timeout: 60_000 });
}
