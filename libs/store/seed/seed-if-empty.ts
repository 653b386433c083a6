import type { DemoShop } from '../../demo';
import type { OpenStore } from '../open-store';
import { isEmpty, seedShop } from './seed-shop';

/** Any fixed number of its own. */
const SEED_LOCK = 4_780_003;

/**
 * Fills the database with that shop when nobody works there yet, and answers whether it did. Of several programs that
 * start at once on an empty database one fills it while the others wait.
 */
export async function seedIfEmpty(store: Pick<OpenStore, 'pool'>, makeShop: () => DemoShop): Promise<boolean> {
  const holder = await store.pool.connect();
  try {
    await holder.query('SELECT pg_advisory_lock($1)', [SEED_LOCK]);
    if (!(await isEmpty(store))) return false;
    await seedShop(store, makeShop());
    return true;
  } finally {
    // Ending the session gives the lock free.
    holder.release(true);
  }
}
