import type { DemoShop } from '../../demo';
import { judgeInstall, loadRulebook, monthsBefore, planConsequences } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { looseParts } from '../installs/loose-parts';
import { tablesOn } from '../tables';
import { seedPastFlags } from './seed-past-flags';

/** What every unit holds, and the first judgement on it with all that follows, by the path that judges every day. */
export async function seedVerdicts(db: Db, shop: DemoShop, unitIds: readonly number[]): Promise<void> {
  const tables = tablesOn(db);
  const rulebook = await loadRulebook(tables, { now: () => Date.now(), today: () => shop.today });
  await seedPastFlags(db, shop, unitIds, rulebook);
  await seedInstalls(db, unitIds);
  const held = await tables.installs.held({ unitIds });
  const plan = planConsequences(
    held.map((install) => judgeInstall(install, rulebook)),
    { flags: [], reasons: [], notes: [] },
    {
      today: shop.today,
      lookBackFrom: monthsBefore(shop.today, shop.settings.lookBackMonths),
      wholeUnits: true,
      because: 'the shop was opened.',
    },
  );
  await tables.installs.apply(plan, { revision: rulebook.revision, recheckId: null });
}

/** The newest record of each place: of the latest ticket, what was left there before what was found; and loose parts. */
async function seedInstalls(db: Db, unitIds: readonly number[]): Promise<void> {
  await db.$executeRaw`
    INSERT INTO install (unit_id, location_id, position_id, place, record_id, ticket_id, line_id, part_id, candidates, fitted_on,
                         built_from, built_to)
    SELECT u.id, u.location_id, r.position_id, r.place, r.id, r.ticket_id, u.line_id, r.part_id, r.candidates,
           r.fitted_on, u.built_from, u.built_to
    FROM (
      SELECT r.id, r.ticket_id, r.position_id, r.place, r.part_id, r.candidates,
             r.fitted_on - DATE '1970-01-01' AS fitted_on, r.unit_id
      FROM (
      SELECT DISTINCT ON (r.unit_id, r.position_id, r.place) r.*
      FROM place_record r JOIN ticket t ON t.id = r.ticket_id
      WHERE r.unit_id = ANY(${[...unitIds]}::int[]) AND r.left_out_why IS NULL
      ORDER BY r.unit_id, r.position_id, r.place, t.opened_at DESC, t.id DESC, (r.side = 'left') DESC
      ) r
      WHERE r.condition IS DISTINCT FROM 'missing'
      UNION ALL
      SELECT l.*, t.unit_id FROM (${looseParts(Prisma.sql`t.unit_id = ANY(${[...unitIds]}::int[])`, 'UTC')}) l
      JOIN ticket t ON t.id = l.ticket_id
    ) r
    JOIN unit u ON u.id = r.unit_id`;
}
