import { PrismaPg } from '@prisma/adapter-pg';
import type { DemoShop } from '../../demo';
import { beginLoading, endLoading } from '../audit/loading';
import { PrismaClient } from '../generated/client';
import type { OpenStore } from '../open-store';
import { seedCatalogue } from './seed-catalogue';
import { seedHouse } from './seed-house';
import { seedPast } from './seed-past';
import { seedRulebook } from './seed-rulebook';
import { seedShelf } from './seed-shelf';
import { seedTickets } from './seed-tickets';
import { seedTrail } from './seed-trail';
import { seedUnits } from './seed-units';
import { seedVerdicts } from './seed-verdicts';

const TRANSACTION = { maxWait: 10_000, timeout: 120_000 };

/** True when nobody works here yet: the shop has no person, and so nothing that could be written over. */
export async function isEmpty({ pool }: Pick<OpenStore, 'pool'>): Promise<boolean> {
  const { rows } = await pool.query<{ empty: boolean }>('SELECT NOT EXISTS (SELECT FROM person) AS empty');
  return rows[0]!.empty;
}

/**
 * Writes a whole shop in one transaction: all of it is there afterwards, or nothing. Every kind of row goes over in a
 * few statements; what follows from the rulebook is worked out by the code that does so every day.
 */
export async function seedShop({ pool }: Pick<OpenStore, 'pool'>, shop: DemoShop): Promise<void> {
  const client = new PrismaClient({ adapter: new PrismaPg(pool) });
  try {
    await client.$transaction(async (db) => {
      await beginLoading(db);
      const house = await seedHouse(db, shop);
      const catalogue = await seedCatalogue(db, shop);
      await seedRulebook(db, shop);
      const units = await seedUnits(db, shop, catalogue, house.location);
      await seedTickets(db, shop, { house, catalogue, units });
      await seedShelf(db, shop, { house, catalogue });
      await seedVerdicts(db, shop, units.unit);
      await seedPast(db, house.person);
      await seedTrail(db);
      await endLoading(db, 'the demo shop');
    }, TRANSACTION);
  } finally {
    await client.$disconnect();
  }
}
