import { createServer } from 'node:net';
import { StartProblem } from './problem';

const DEFAULT_PORT = 4600;

/** The port people will use, checked before anything slow is done. */
export async function choosePort(host: string): Promise<number> {
  const port = readPort('PORT', DEFAULT_PORT);
  await checkPort(port, host, 'PORT');
  return port;
}

/** The port this setting names. Throws a StartProblem when it is none. */
export function readPort(setting: string, otherwise: number): number {
  const text = process.env[setting];
  const port = Number(text ?? otherwise);
  if (Number.isInteger(port) && port >= 1 && port <= 65_535) return port;
  throw new StartProblem(`${setting}=${text ?? port} is not a port. Use a whole number from 1 to 65535.`);
}

/** Throws a StartProblem when nothing can listen there. */
export async function checkPort(port: number, host: string, setting: string): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    const probe = createServer();
    probe.once('error', (error: NodeJS.ErrnoException) => reject(toProblem(error, port, setting)));
    probe.listen(port, host, () => probe.close(() => resolve()));
  });
}

function toProblem(error: NodeJS.ErrnoException, port: number, setting: string): StartProblem {
  if (error.code === 'EADDRINUSE') {
    return new StartProblem(
      `Port ${port} is taken by another program. Stop it, or choose another: ${setting}=${port + 1} npm ${ownCommand()}`,
    );
  }
  return new StartProblem(
    `Port ${port} cannot be used: ${error.message}. Choose another: ${setting}=4601 npm ${ownCommand()}`,
  );
}

function ownCommand(): string {
  return process.argv.includes('--van') ? 'run van' : 'start';
}
