import type { PoolClient } from 'pg';
import { openStore, type OpenStore } from '../../libs/store';

export interface Stop {
  /** The statement at which the line ends, counted from 1 since it was armed. */
  readonly k: number;
  readonly when: 'before' | 'after';
  /** Every later statement fails too, until disarmed. */
  readonly lasting: boolean;
}

/** A store whose lines to the database can be made to end at a given statement, as when its process is stopped there. */
export class StepStore {
  private stop: Stop | null = null;
  private count = 0;
  private struck = false;

  private constructor(readonly store: OpenStore) {
    store.pool.on('connect', (client) => this.watch(client));
  }

  static async open(url: string): Promise<StepStore> {
    const steps = new StepStore(openStore({ url, poolSize: 4, sight: 'all' }));
    await steps.store.rulebook.latest();
    return steps;
  }

  arm(stop: Stop): void {
    this.stop = stop;
    this.count = 0;
    this.struck = false;
  }

  /** Lines hold again; true when the fault has struck. */
  disarm(): boolean {
    this.stop = null;
    return this.struck;
  }

  close = (): Promise<void> => this.store.close();

  private watch(client: PoolClient): void {
    const query = client.query.bind(client) as (...args: unknown[]) => Promise<unknown>;
    const cut = () => {
      this.struck = true;
      (client as unknown as { connection: { stream: { destroy(): void } } }).connection.stream.destroy();
    };
    const hits = (when: Stop['when'], at: number) =>
      this.stop?.when === when && (at === this.stop.k || (this.stop.lasting && at > this.stop.k));
    const ended = () => new Error('Connection terminated unexpectedly');
    const counted = async (...args: unknown[]) => {
      if (!this.stop) return query(...args);
      const at = ++this.count;
      if (hits('before', at)) cut();
      const answer = await query(...args);
      if (!hits('after', at)) return answer;
      cut();
      throw ended();
    };
    // As the pool asks for a statement outside of a transaction.
    const countedCalled = (...args: unknown[]) => {
      if (!this.stop) return query(...args);
      const at = ++this.count;
      const told = args.pop() as (error: Error | null, answer?: unknown) => void;
      if (hits('before', at)) cut();
      return query(...args, (error: Error | null, answer: unknown) => {
        if (error || !hits('after', at)) return told(error, answer);
        cut();
        told(ended());
      });
    };
    const either = (...args: unknown[]) => (typeof args.at(-1) === 'function' ? countedCalled : counted)(...args);
    client.query = either as unknown as typeof client.query;
  }
}
