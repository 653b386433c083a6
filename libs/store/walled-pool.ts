import { Pool, type PoolClient, type PoolConfig } from 'pg';
import { sightNow, type Sight } from './audit/acting';

type Lent = (
  error: Error | undefined,
  client: PoolClient | undefined,
  release: (error?: Error | boolean) => void,
) => void;

/**
 * A pool that tells each connection, whenever it is lent, with whose eyes it looks. So a statement outside of a
 * transaction stands behind the wall too, and what an earlier borrower was allowed to see never counts: who says
 * nothing sees nothing.
 */
export class WalledPool extends Pool {
  private readonly told = new WeakMap<PoolClient, string>();

  constructor(
    config: PoolConfig,
    private readonly otherwise: Sight | 'nothing',
  ) {
    super(config);
    // While it is lent, the pool does not listen to a connection. One that breaks between two questions would end the
    // program; as it is, the next question is refused, and the pool drops it when it is given back.
    this.on('connect', (client) => client.on('error', () => undefined));
  }

  override connect(): Promise<PoolClient>;
  override connect(lent: Lent): void;
  override connect(lent?: Lent): Promise<PoolClient> | void {
    // Asked here, not when a connection comes free: that happens in the course of somebody else's work.
    const lending = this.lend(sightNow(this.otherwise));
    if (!lent) return lending;
    lending.then(
      (client) => lent(undefined, client, (error) => client.release(error)),
      (error: Error) => lent(error, undefined, () => undefined),
    );
  }

  private async lend(sight: string): Promise<PoolClient> {
    const client = await super.connect();
    if (this.told.get(client) === sight) return client;
    try {
      await client.query(`SELECT set_config('revright.sight', $1, false)`, [sight]);
    } catch (error) {
      client.release(true);
      throw error;
    }
    this.told.set(client, sight);
    return client;
  }
}
