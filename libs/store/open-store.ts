import { setTimeout as sleep } from 'node:timers/promises';
import { PrismaPg } from '@prisma/adapter-pg';
import type { ClientBase, Pool, PoolConfig } from 'pg';
import { StoreOutage, type Store, type Tables } from '../usecases';
import { actorTold, type Sight } from './audit/acting';
import { workAsApp } from './audit/work-as-app';
import { PrismaClient } from './generated/client';
import { installScans } from './installs/scan/install-scans';
import { Listener } from './live/listen';
import { isOutage, isRetryable } from './retryable';
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
}

/** The store, with the pool that everything of it travels through, and its end. */
export interface OpenStore extends Store {
  readonly pool: Pool;
  close(): Promise<void>;
}

const MOST_TRIES = 5;
const MOST_SCANS = 4;
/** Planning the recheck of very many installs, or a chunk of them all changed, takes its time on a busy machine. */
const TRANSACTION = { maxWait: 10_000, timeout: 120_000 };

const within = (most?: { readonly minutes: number }) => ({
  ...TRANSACTION,
  timeout: most ? most.minutes * 60_000 : TRANSACTION.timeout,
});

/** The pool waits for what this answers, though its types do not say so. */
const onConnect = workAsApp as (client: ClientBase) => void;

/** Opens the store; the client and plain SQL share one pool. Nothing is connected before the first question. */
export function openStore({ url, poolSize = 10, timeZone = 'UTC', name = 'listener', sight }: StoreOptions): OpenStore {
  const otherwise = sight ?? 'nothing';
  const pool = poolOf({ connectionString: url, max: poolSize, application_name: 'revright' }, otherwise);
  const scanPool = poolOf({ connectionString: url, max: MOST_SCANS, application_name: 'revright scan' }, otherwise);
  const client = new PrismaClient({ adapter: new PrismaPg(pool) });
  const listener = new Listener(url, `revright ${name}`);
  return {
    ...tablesOn(client, timeZone),
    pool,
    hints: listener,
    scans: installScans(scanPool, timeZone),
    transaction: (work, most) =>
      retried(() =>
        client.$transaction(async (tx) => work(tablesOn(await actorTold(tx, otherwise), timeZone)), within(most)),
      ),
    close: async () => {
      await listener.close();
      await client.$disconnect();
      await Promise.all([pool.end(), scanPool.end()]);
    },
  };
}

function poolOf(config: PoolConfig, sight: Sight | 'nothing'): Pool {
  const pool = new WalledPool({ ...config, onConnect }, sight);
  // An idle connection that the server closes is no reason to end the program: the pool opens another.
  pool.on('error', () => undefined);
  return pool;
}

async function retried<T>(run: () => Promise<T>): Promise<T> {
  for (let tries = 1; ; tries++) {
    try {
      return await run();
    } catch (error) {
      if (isOutage(error)) throw new StoreOutage(error);
      if (tries >= MOST_TRIES || !isRetryable(error)) throw error;
      // Waiting a different time than the other transaction keeps the two from meeting again.
      await sleep(20 + Math.random() * 180);
    }
  }
}

export type { Tables };
