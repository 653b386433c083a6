import { startWorker } from '../../../apps/worker/src/start-worker';
import { verifyTrail } from '../../../libs/store';
import { openDatabase } from '../../../libs/testing';
import { ApiShop } from '../../api/api-shop';
import type { Tally } from '../fault';
import type { RealShop } from './commands';
import type { ModelTicket } from './model';

/**
 * Sequences that one shop serves. Each leaves tickets and papers behind that every later recheck of everything reads, so
 * that a shop of hundreds would do little else.
 */
const SEQUENCES_A_SHOP = 25;

/** A shop of its own with its three people and a worker. */
export interface StaffedShop {
  readonly people: Pick<RealShop, 'shop' | 'technician' | 'counter' | 'manager'>;
  /** Tickets of the sequences before, as they were left and must stay. */
  readonly past: ModelTicket[];
}

interface Open extends StaffedShop {
  served: number;
  close(): Promise<void>;
}

/** Shops one after the other. */
export class StaffedShops {
  private open: Open | null = null;

  constructor(private readonly tally: Tally) {}

  /** Lets a sequence into the shop that is open. One that fails is the last of its shop, since nobody knows what it left. */
  async serve<T>(sequence: (shop: StaffedShop) => Promise<T>): Promise<T> {
    const shop = (this.open ??= await openShop());
    try {
      const came = await sequence(shop);
      if (++shop.served === SEQUENCES_A_SHOP) await this.close();
      return came;
    } catch (error) {
      await this.close();
      throw error;
    }
  }

  async close(): Promise<void> {
    const { open } = this;
    this.open = null;
    if (!open) return;
    const { fault } = await verifyTrail(open.people.shop.pool);
    this.tally.check(fault === null, `the trail of changes breaks at row ${fault?.id}: ${fault?.why}`);
    await open.close();
  }
}

async function openShop(): Promise<Open> {
  const db = await openDatabase();
  const shop = await ApiShop.open(db);
  const { store, clock } = shop;
  const worker = await startWorker({
    config: { redisUrl: undefined, workerConcurrency: 1, timeZone: 'UTC' },
    store,
    clock: { now: () => clock.nowMs, today: () => clock.today },
  });
  const [technician, counter, manager] = [
    await shop.as('technician'),
    await shop.as('counter'),
    await shop.as('manager'),
  ];
  return {
    people: { shop, technician, counter, manager },
    past: [],
    served: 0,
    async close() {
      await worker.close();
      await db.close();
    },
  };
}
