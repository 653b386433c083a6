import { Server } from 'node:net';
import { setImmediate as nextTurn, setTimeout as pause } from 'node:timers/promises';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { Ending } from '../health/ending';

/** A connection that was taken just before the end has this long to say what it wants. */
const TIME_TO_SPEAK_MS = 500;

/** Requests that have come and are not answered yet. Streams do not count: they end only when they are cut. */
export class RequestsUnderWay {
  private count = 0;
  private whenNone: () => void = () => undefined;

  constructor(
    private readonly fastify: FastifyInstance,
    private readonly ending: Ending,
  ) {
    const counts = new WeakSet<FastifyRequest>();
    fastify.addHook('onRequest', (request, reply, done) => {
      if (!request.headers.accept?.includes('text/event-stream')) {
        counts.add(request);
        this.count++;
        // Told once in any case: after the answer, or when the client has gone without it.
        reply.raw.once('close', () => {
          if (counts.delete(request)) this.count--;
          if (this.count === 0) this.whenNone();
        });
      }
      done();
    });
    fastify.addHook('onSend', (_request, reply, _payload, done) => {
      if (this.ending.begun) reply.header('connection', 'close');
      done();
    });
  }

  /**
   * Takes no connection any more and waits until everything under way is answered, at most so long. What was taken and
   * has said nothing yet is still heard, so no idle connection is cut here, as the HTTP server's own `close` would.
   * One whose connection was still with the operating system hears that it was reset: its client asks again elsewhere,
   * a change under its Idempotency-Key.
   */
  async finish(mostMs: number): Promise<void> {
    this.ending.begin();
    // After the turn in which everything that waits at the door is let in, so that next to nobody stands there.
    await nextTurn();
    Server.prototype.close.call(this.fastify.server);
    const end = new AbortController();
    const enough = pause(mostMs, undefined, { signal: end.signal }).catch(() => undefined);
    await pause(Math.min(TIME_TO_SPEAK_MS, mostMs));
    if (this.count > 0) await Promise.race([new Promise<void>((resolve) => (this.whenNone = resolve)), enough]);
    end.abort();
  }
}
