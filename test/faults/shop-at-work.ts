import { Pool, type PoolClient } from 'pg';

/** What came of the work. */
export interface Worked {
  /** What failed, as it was told. */
  readonly errors: readonly string[];
  /** How many changes were acknowledged. */
  readonly written: number;
  /** The longest that somebody was seen waiting for a lock, in milliseconds. */
  readonly longestWaitMs: number;
  /** The longest that a request took from when it was due, in milliseconds. */
  readonly lateMs: number;
}

const EVERY_MS = 20;
const LOOK_EVERY_MS = 25;

/**
 * Fifty requests a second on a shop's database, each when it is due and not when the one before is answered: four of
 * five read a ticket with its trail, one changes it. They ask as an older program does, so that they mean the same
 * before, during and after a migration. A lock that is not had within `lockLimitMs` is an error.
 */
export class ShopAtWork {
  private readonly pool: Pool;
  private readonly watch: Pool;
  private readonly timers: NodeJS.Timeout[];
  private readonly underWay = new Set<Promise<void>>();
  private readonly errors: string[] = [];
  private written = 0;
  private longestWaitMs = 0;
  private lateMs = 0;
  private count = 0;
  private looking = false;
  private ended: Promise<Worked> | null = null;

  constructor(
    url: string,
    private readonly tickets: number,
    lockLimitMs: number,
  ) {
    const options = `-c lock_timeout=${lockLimitMs}`;
    this.pool = new Pool({ connectionString: url, max: 20, options, application_name: 'at work' });
    this.watch = new Pool({ connectionString: url, max: 1 });
    this.timers = [setInterval(() => this.ask(), EVERY_MS), setInterval(() => void this.look(), LOOK_EVERY_MS)];
  }

  /** Waits for what is under way. */
  stop(): Promise<Worked> {
    this.ended ??= this.end();
    return this.ended;
  }

  private async end(): Promise<Worked> {
    for (const timer of this.timers) clearInterval(timer);
    await Promise.all(this.underWay);
    await Promise.all([this.pool.end(), this.watch.end()]);
    const { errors, written, longestWaitMs, lateMs } = this;
    return { errors, written, longestWaitMs, lateMs };
  }

  private ask(): void {
    const n = this.count++;
    const due = performance.now();
    const ticket = 1 + ((n * 7_919) % this.tickets);
    const work = (n % 5 === 0 ? this.change(ticket) : this.read(ticket))
      .catch((error: unknown) => void this.errors.push(String(error)))
      .then(() => {
        this.lateMs = Math.max(this.lateMs, Math.round(performance.now() - due));
        this.underWay.delete(work);
      });
    this.underWay.add(work);
  }

  private async read(ticket: number): Promise<void> {
    await this.pool.query(
      `SELECT t.number, t.stage, u.serial, o.name, (SELECT count(*) FROM audit_entry a WHERE a.unit_id = u.id) AS trail
       FROM ticket t JOIN unit u ON u.id = t.unit_id JOIN owner o ON o.id = t.owner_id WHERE t.number = $1`,
      [`T-${ticket}`],
    );
  }

  private async change(ticket: number): Promise<void> {
    const client: PoolClient = await this.pool.connect();
    try {
      await client.query('BEGIN');
      await client.query(`UPDATE ticket SET complaint = complaint || '.', version = version + 1 WHERE id = $1`, [
        ticket,
      ]);
      await client.query(`INSERT INTO ticket_event (ticket_id, kind) VALUES ($1, 'said')`, [ticket]);
      await client.query('COMMIT');
      this.written++;
      client.release();
    } catch (error) {
      client.release(true);
      throw error;
    }
  }

  private async look(): Promise<void> {
    if (this.looking) return;
    this.looking = true;
    const { rows } = await this.watch
      .query<{ ms: number }>(
        `SELECT coalesce(max(extract(epoch FROM clock_timestamp() - l.waitstart) * 1000), 0)::int AS ms
         FROM pg_locks l JOIN pg_stat_activity a ON a.pid = l.pid WHERE a.application_name = 'at work' AND a.datname = current_database()`,
      )
      .catch(() => ({ rows: [] }));
    this.longestWaitMs = Math.max(this.longestWaitMs, rows[0]?.ms ?? 0);
    this.looking = false;
  }
}
