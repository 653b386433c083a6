import { Agent, request as ask, type IncomingMessage } from 'node:http';
import type { OddRequest } from './requests';

export interface OddAnswer {
  readonly status: number;
  readonly text: string;
  readonly ms: number;
}

const PATIENCE_MS = 30_000;

/** Sends requests as they are, over a few kept connections, and times the answers. */
export class OddClient {
  private readonly agent: Agent;
  private sent = 0;

  constructor(
    private readonly port: number,
    lines: number,
  ) {
    this.agent = new Agent({ keepAlive: true, maxSockets: lines });
  }

  /** A line that the server closed at the very moment it was used carries nothing; such a request is sent once more. */
  async send(request: OddRequest, cookie: string): Promise<OddAnswer> {
    return this.once(request, cookie).catch(() => this.once(request, cookie));
  }

  private once({ method, path, headers, body }: OddRequest, cookie: string): Promise<OddAnswer> {
    const from = performance.now();
    return new Promise((resolve, reject) => {
      const sent = ask({
        agent: this.agent,
        host: '127.0.0.1',
        port: this.port,
        method,
        path: `/api${path}`,
        timeout: PATIENCE_MS,
        // Every request comes from elsewhere, so that guessing is not slowed down by the address.
        headers: { cookie, 'x-forwarded-for': addressOf(this.sent++), ...headers },
      });
      const answered = (response: IncomingMessage) => {
        const status = response.statusCode ?? 0;
        // What goes on for ever has begun: that is its answer.
        if (response.headers['content-type']?.startsWith('text/event-stream')) {
          resolve({ status, text: '', ms: performance.now() - from });
          sent.destroy();
          return;
        }
        const pieces: Buffer[] = [];
        response.on('data', (piece: Buffer) => pieces.push(piece)).on('error', reject);
        response.on('end', () =>
          resolve({ status, text: Buffer.concat(pieces).toString('utf8'), ms: performance.now() - from }),
        );
      };
      sent.on('response', answered).on('error', reject);
      sent.on('timeout', () => sent.destroy(new Error(`no answer within ${PATIENCE_MS} ms`)));
      sent.end(body ?? undefined);
    });
  }

  close(): void {
    this.agent.destroy();
  }
}

const addressOf = (n: number): string => `10.${(n >> 16) & 255}.${(n >> 8) & 255}.${n & 255}`;
