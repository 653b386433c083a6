import { AsyncLocalStorage } from 'node:async_hooks';
import type { Db } from '../db';

/** Who asks for what is done: the database writes it beside every change. */
export interface Acting {
  readonly personId: number;
  readonly locationId: number;
}

const acting = new AsyncLocalStorage<Acting>();

/** Runs the work, and all it waits for, in the name of that person. Work outside of it is the program's own. */
export function actingAs<T>(who: Acting, work: () => T): T {
  return acting.run(who, work);
}

/** The transaction, once the database has been told for it who acts; it forgets at the transaction's end. */
export async function actorTold(db: Db): Promise<Db> {
  const who = acting.getStore();
  if (!who) return db;
  await db.$executeRaw`
    SELECT set_config('revright.person', ${String(who.personId)}, true),
           set_config('revright.location', ${String(who.locationId)}, true)`;
  return db;
}
