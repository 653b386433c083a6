import { PrismaPg } from '@prisma/adapter-pg';
import type { ClientBase, Pool, PoolConfig } from 'pg';
import type { Store, Tables } from '../usecases';
import { actorTold, type Sight } from './audit/acting';
import { workAsApp } from './audit/work-as-app';
import type { Db } from './db';
import { directDb } from './direct-db';
import { PrismaClient, type Prisma } from './generated/client';
import { installScans } from './installs/scan/install-scans';
import { Listener } from './live/listen';
import { migrationNames, prismaFolder } from './migrate/migration-list';
import { missingMigrations } from './migrate/missing-migrations';
import { eachRetried, retried } from './retried';
import { tablesOn } from './tables';
import { WalledPool } from './walled-pool';

export interface StoreOptions {
  /** Address of the PostgreSQL database. */
  readonly url: string;
  /** Most connections at once. */
  readonly poolSize?: number;
  /** The shop's time zone, in which the day of an instant is counted. Default UTC. */
  readonly timeZone?: string;
  /** What the process is called among the database's sessions. */
  readonly name?: string;
  /** What work sees that names nobody (see `actingAs`, `asProgram`): nothing, unless a tool of its own says otherwise. */
  readonly sight?: Sight;
  /** After how long without a question the database ends a transaction, in milliseconds. Default a minute. */
  readonly idleLimitMs?: number;
}

/** The store, with the pool that everything of it travels through, and its end. */
export interface OpenStore extends Store {
  readonly pool: Pool;
  close(): Promise<void>;
}

const MOST_SCANS = 4;
/** Planning the recheck of very many installs, or a chunk of them all changed, takes its time on a busy machine. */
const TRANSACTION = { maxWait: 10_000, timeout: 120_000 };

/**
 * The client's own limit stops nothing by itself: it is looked at between two questions. A program that is held up, or
 * whose machine is gone without a word, would keep its rows locked for ever; so the database has limits of its own.
 */
const IDLE_LIMIT_MS = 60_000;

type Most = { readonly minutes: number };

const within = (most?: Most) => ({ ...TRANSACTION, timeout: limitMs(most) });

const limitMs = (most?: Most): number => (most ? most.minutes * 60_000 : TRANSACTION.timeout);

/** A transaction that may take longer than others may also ask and pause for longer. */
async function allow(tx: Prisma.TransactionClient, most?: Most): Promise<Prisma.TransactionClient> {
  if (most) {
    const limit = String(limitMs(most));
    await tx.$queryRaw`SELECT set_config('statement_timeout', ${limit}, true),
                              set_config('idle_in_transaction_session_timeout', ${limit}, true)`;
  }
  return tx;
}

async function limit(client: ClientBase, statementMs: number, idleMs: number): Promise<void> {
  await client.query(
    `SELECT set_config('statement_timeout', $1, false), set_config('idle_in_transaction_session_timeout', $2, false)`,
    [String(statementMs), String(idleMs)],
  );
}

/** Opens the store; the client and plain SQL share one pool. Nothing is connected before the first question. */
export function openStore(options: StoreOptions): OpenStore {
  const { url, poolSize = 10, timeZone = 'UTC', name = 'listener', sight, idleLimitMs = IDLE_LIMIT_MS } = options;
  const otherwise = sight ?? 'nothing';
  const pool = poolOf({ connectionString: url, max: poolSize, application_name: 'revright' }, otherwise, (client) =>
    limit(client, TRANSACTION.timeout, idleLimitMs),
  );
  const scanPool = poolOf(
    { connectionString: url, max: MOST_SCANS, application_name: 'revright scan' },
    otherwise,
    (client) =>
      // A scan is one statement that goes on for as long as its reader takes.
      limit(client, 0, idleLimitMs),
  );
  const client = new PrismaClient({ adapter: new PrismaPg(pool) });
  // Those this program came with: they do not change while it runs, and it is asked every few seconds.
  const migrations = migrationNames(prismaFolder());
  const listener = new Listener(url, `revright ${name}`);
  return {
    ...alone(eachRetried(directDb(pool, client)), timeZone),
    pool,
    idleLimitMs,
    missingMigrations: () => missingMigrations(pool, migrations),
    hints: listener,
    scans: installScans(scanPool, timeZone),
    transaction: (work, most) =>
      retried(() =>
        client.$transaction(
          async (tx) => work(tablesOn(await actorTold(await allow(tx, most), otherwise), timeZone)),
          within(most),
        ),
      ),
    close: async () => {
      await listener.close();
      await client.$disconnect();
      await Promise.all([pool.end(), scanPool.end()]);
    },
  };
}

/** Tables outside of a transaction: a lock would be let go at once, so none is taken on the way to the rulebook. */
function alone(db: Db, timeZone: string): Tables {
  const tables = tablesOn(db, timeZone);
  return { ...tables, rulebook: { ...tables.rulebook, share: () => tables.rulebook.latest() } };
}

function poolOf(config: PoolConfig, sight: Sight | 'nothing', limited: (client: ClientBase) => Promise<void>): Pool {
  const prepare = async (client: ClientBase) => {
    await workAsApp(client);
    await limited(client);
  };
  // The pool waits for what this answers, though its types do not say so.
  const onConnect = prepare as (client: ClientBase) => void;
  const pool = new WalledPool({ ...config, onConnect }, sight);
  // An idle connection that the server closes is no reason to end the program: the pool opens another.
  pool.on('error', () => undefined);
  return pool;
}

export type { Tables };
