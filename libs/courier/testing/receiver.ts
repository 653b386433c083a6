import {
  createServer,
  type IncomingHttpHeaders,
  type IncomingMessage,
  type Server,
  type ServerResponse,
} from 'node:http';
import type { AddressInfo } from 'node:net';

/** What a receiver was sent. */
export interface Received {
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** A real program that is told of events, on a port of its own of this machine. */
export class Receiver {
  readonly received: Received[] = [];
  /** Connections that were opened, whether or not something was sent. */
  connections = 0;
  /** What it does with a post once it has read it; answers 204 unless told otherwise. */
  answers: (response: ServerResponse, request: Received) => void = (response) => void response.writeHead(204).end();

  private constructor(private readonly server: Server) {
    server.on('connection', () => this.connections++);
  }

  static async open(host = '127.0.0.1'): Promise<Receiver> {
    const server = createServer();
    const receiver = new Receiver(server);
    server.on('request', (request: IncomingMessage, response) => {
      const parts: Buffer[] = [];
      request.on('data', (part: Buffer) => parts.push(part));
      request.on('end', () => {
        const received = {
          path: request.url ?? '',
          headers: request.headers,
          body: Buffer.concat(parts).toString('utf8'),
        };
        receiver.received.push(received);
        receiver.answers(response, received);
      });
    });
    await new Promise<void>((resolve) => void server.listen(0, host, resolve));
    return receiver;
  }

  get port(): number {
    return (this.server.address() as AddressInfo).port;
  }

  close(): Promise<void> {
    this.server.closeAllConnections();
    return new Promise((resolve) => void this.server.close(() => resolve()));
  }
}
