import { createServer } from 'node:net';
import { StartProblem } from './problem';

const DEFAULT_PORT = 4600;

/** The port people will use, checked before anything slow is done. */
export async function choosePort(host: string): Promise<number> {
  const port = Number(process.env.PORT ?? DEFAULT_PORT);
  if (!Number.isInteger(port) || port < 1 || port > 65_535) {
    throw new StartProblem(`PORT=${process.env.PORT} is not a port. Use a whole number from 1 to 65535.`);
  }
  await new Promise<void>((resolve, reject) => {
    const probe = createServer();
    probe.once('error', (error: NodeJS.ErrnoException) => reject(toProblem(error, port)));
    probe.listen(port, host, () => probe.close(() => resolve()));
  });
  return port;
}

function toProblem(error: NodeJS.ErrnoException, port: number): StartProblem {
  if (error.code === 'EADDRINUSE') {
    return new StartProblem(
      `Port ${port} is taken by another program. Stop it, or choose another: PORT=${port + 1} npm start`,
    );
  }
  return new StartProblem(
    `Port ${port} cannot be used: ${error.message}. Choose another: PORT=4601 npm start`,
  );
}
