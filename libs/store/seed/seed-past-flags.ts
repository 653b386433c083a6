import type { DemoShop } from '../../demo';
import { judgeInstall, monthsBefore, planConsequences, type LoadedRulebook } from '../../usecases';
import type { Db } from '../db';
import { raiseFlags } from '../installs/write-flags';
import { tablesOn } from '../tables';

/**
 * The flags of tickets that are closed: parts that were found, are no longer right, and were replaced. They are judged
 * by the code that judges every day, as if the ticket were still open; for that the table of what units hold is lent
 * what was found, and left empty again.
 */
export async function seedPastFlags(
  db: Db,
  shop: DemoShop,
  unitIds: readonly number[],
  rulebook: LoadedRulebook,
): Promise<void> {
  await lendFound(db, unitIds);
  const held = await tablesOn(db).installs.held({ unitIds });
  const asIfOpen = held.map((install) => ({
    ...install,
    unit: { ...install.unit, openTicketId: install.ticketId },
  }));
  const { flags } = planConsequences(
    asIfOpen.map((install) => judgeInstall(install, rulebook)),
    { flags: [], reasons: [], notes: [] },
    {
      today: shop.today,
      lookBackFrom: monthsBefore(shop.today, shop.settings.lookBackMonths),
      wholeUnits: false,
      because: 'the shop was opened.',
    },
  );
  await raiseFlags(db, flags, null);
  await db.$executeRaw`DELETE FROM install`;
}

async function lendFound(db: Db, unitIds: readonly number[]): Promise<void> {
  await db.$executeRaw`
    INSERT INTO install (unit_id, position_id, place, record_id, ticket_id, line_id, part_id, candidates, fitted_on,
                         built_from, built_to)
    SELECT DISTINCT ON (f.unit_id, f.position_id, f.place)
           f.unit_id, f.position_id, f.place, f.id, f.ticket_id, u.line_id, f.part_id, '{}', f.fitted_on - DATE '1970-01-01',
           u.built_from, u.built_to
    FROM place_record f
    JOIN ticket t ON t.id = f.ticket_id AND t.closed_at IS NOT NULL
    JOIN place_record l ON l.ticket_id = f.ticket_id AND l.position_id = f.position_id AND l.place = f.place
                       AND l.side = 'left' AND l.part_id <> f.part_id
    JOIN unit u ON u.id = f.unit_id
    WHERE f.side = 'found' AND f.unit_id = ANY(${[...unitIds]}::int[])
    ORDER BY f.unit_id, f.position_id, f.place, t.opened_at DESC, t.id DESC`;
}
