import { createServer } from 'node:net';
import { type Config } from '../../../libs/config';

/** The sentence for an address that cannot be listened on; undefined for any other error. */
export function listenProblem(error: unknown, { host, port }: Config): string | undefined {
  switch ((error as NodeJS.ErrnoException).code) {
    case 'EADDRINUSE':
      return `Port ${port} on ${host} is taken by another program; stop that one, or set PORT to another port.`;
    case 'EACCES':
      return `Port ${port} on ${host} may not be opened by this user; set PORT to a number above 1023.`;
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return `HOST is '${host}', which is no address of this machine; use 127.0.0.1, or 0.0.0.0 for all of them.`;
    default:
      return undefined;
  }
}

/**
 * Tries the address for a moment; the sentence when it cannot be listened on. Asked before anything is filled or
 * started that would only have to be closed again.
 */
export async function addressProblem(config: Config): Promise<string | undefined> {
  const trial = createServer();
  try {
    await new Promise<void>((done, failed) => trial.once('error', failed).listen(config.port, config.host, done));
    await new Promise((done) => trial.close(done));
    return undefined;
  } catch (error) {
    const problem = listenProblem(error, config);
    if (problem === undefined) throw error;
    return problem;
  }
}
