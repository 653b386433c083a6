import type { FastifyInstance, FastifyRequest } from 'fastify';

/** Requests that have come and are not answered yet. Streams do not count: they end only when they are cut. */
export class RequestsUnderWay {
  private count = 0;
  private ending = false;
  private whenNone: () => void = () => undefined;

  constructor(private readonly fastify: FastifyInstance) {
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
      if (this.ending) reply.header('connection', 'close');
      done();
    });
  }

  /** Takes no connection any more and waits until everything under way is answered, at most so long. */
  async finish(mostMs: number): Promise<void> {
    this.ending = true;
    this.fastify.server.close();
    if (this.count === 0) return;
    let timer: NodeJS.Timeout | undefined;
    const enough = new Promise<void>((resolve) => (timer = setTimeout(resolve, mostMs)));
    await Promise.race([new Promise<void>((resolve) => (this.whenNone = resolve)), enough]);
    clearTimeout(timer);
  }
}
