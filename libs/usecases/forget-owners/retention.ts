import { changeRetention, type Retention } from '../../contracts';
import { formatDay } from '../../day';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import { RETENTION_DAY, RETENTION_YEARS } from '../ports/personal-data-store';
import type { Tables } from '../ports/store';
import type { Ports } from '../run';
import { settled } from '../settled';
import { forget, whyNot } from './erase-owner';

const YEAR = 365.25 * 24 * 3_600_000;
const MOST_SHOWN = 200;
const AT_ONCE = 500;

/** The setting, and whom it would forget; with `asked`, whom so many years would, before anything is settled. */
export async function viewRetention({ store, clock }: Ports, asked?: number): Promise<Retention> {
  return store.transaction((tx) => retentionOf(tx, clock.now(), asked));
}

/** Settles after how many years without a ticket an owner is forgotten; null: never. Nobody is forgotten by this alone. */
export async function settleRetention(
  { store, clock }: Ports,
  actor: Actor,
  { years, version }: { readonly years: number | null; readonly version: number },
): Promise<Outcome<Retention>> {
  return store.transaction(async (tx) => {
    if (!(await tx.settings.claim([RETENTION_YEARS], version)))
      return refused('stale', 'This was settled otherwise meanwhile; look again.', {
        current: await retentionOf(tx, clock.now()),
      });
    await tx.settings.write(RETENTION_YEARS, years, actor.id);
    return done(await retentionOf(tx, clock.now()));
  });
}

/**
 * Once a day forgets the owners who are due, in the program's own name; answers how many. Each is looked at again under
 * lock, since a ticket may have been opened meanwhile.
 */
export async function forgetDueOwners({ store, clock }: Ports): Promise<number> {
  const today = formatDay(clock.today());
  return store.transaction(async (tx) => {
    const years = await yearsOf(tx);
    if (years === null || (await tx.settings.read(RETENTION_DAY)) === today) return 0;
    await tx.settings.write(RETENTION_DAY, today, null);
    const { owners } = await tx.personal.due(clock.now() - years * YEAR, AT_ONCE);
    let count = 0;
    for (const { id } of owners) {
      const owner = await tx.personal.lock(id, null);
      if (!owner || whyNot(owner) !== null) continue;
      await forget(tx, id, `nothing was heard for ${years} years`, null);
      count++;
    }
    return count;
  });
}

async function retentionOf(tx: Tables, now: number, asked?: number): Promise<Retention> {
  const { years, version } = await settled(tx, [RETENTION_YEARS], async () => ({ years: await yearsOf(tx) }));
  const about = asked ?? years;
  if (about === null) return { years, version, due: [], dueCount: 0 };
  const { owners, count } = await tx.personal.due(now - about * YEAR, MOST_SHOWN);
  return { years, version, due: owners, dueCount: count };
}

async function yearsOf({ settings }: Tables): Promise<number | null> {
  const read = changeRetention.safeParse({ years: await settings.read(RETENTION_YEARS) });
  return read.success ? read.data.years : null;
}
