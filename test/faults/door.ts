import { connect, createServer, type AddressInfo, type Server, type Socket } from 'node:net';

/**
 * A door of fixed address before a server that comes and goes: the server may return on another port, its lines can be
 * cut, and it can be made to swallow everything without an answer, as a broken network does.
 */
export class Door {
  private readonly pairs = new Set<readonly [Socket, Socket]>();
  private silent = false;

  private constructor(
    private readonly server: Server,
    private target: number,
  ) {
    server.on('connection', (near) => this.pass(near));
  }

  static async open(target: number): Promise<Door> {
    const server = createServer();
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    return new Door(server, target);
  }

  get port(): number {
    return (this.server.address() as AddressInfo).port;
  }

  /** Where new lines lead from now on. */
  leadTo(target: number): void {
    this.target = target;
  }

  /** Nothing passes any more, in either direction, and nobody is told; lines of that time are cut at its end. */
  swallow(): void {
    this.silent = true;
    for (const [near, far] of this.pairs) {
      near.pause();
      far.pause();
    }
  }

  speak(): void {
    this.silent = false;
    this.cut();
  }

  /** Cuts every line at once; answers how many there were. */
  cut(): number {
    const count = this.pairs.size;
    for (const pair of this.pairs) pair.forEach((end) => end.destroy());
    return count;
  }

  async close(): Promise<void> {
    this.cut();
    await new Promise((done) => this.server.close(done));
  }

  private pass(near: Socket): void {
    const far = connect(this.target, '127.0.0.1');
    const pair = [near, far] as const;
    this.pairs.add(pair);
    const end = () => {
      this.pairs.delete(pair);
      pair.forEach((one) => one.destroy());
    };
    for (const one of pair) one.on('error', end).on('close', end);
    near.pipe(far);
    far.pipe(near);
    if (this.silent) {
      near.pause();
      far.pause();
    }
  }
}
