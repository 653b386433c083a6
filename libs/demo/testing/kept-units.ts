import { day, type Day, type DaySet } from '../../day';
import type { DemoRecord, DemoShop, DemoTicket } from '../demo-shop';
import { KEPT_BULLETIN } from '../rulebook/drafts';

/** What publishing the kept bulletin must bring, by unit index. */
export interface KeptUnits {
  /** Out of the shop, handed over within the look-back window: a callback each. */
  readonly callbacks: ReadonlySet<number>;
  /** In the shop: a flag on the open ticket. */
  readonly flags: ReadonlySet<number>;
}

/**
 * Counts by hand which units hold, in an auger place, a pin that is not the new one, and were certainly built in the
 * days the bulletin speaks of. No rule code: only the newest record of each place, and the possible build days.
 */
export function countKeptUnits(shop: DemoShop, built: readonly DaySet[], lookBackFrom: Day): KeptUnits {
  const rule = shop.sources.find(({ key }) => key === KEPT_BULLETIN)!.draft!.opens[0]!;
  const [from, to] = [day(rule.built.from!), day(rule.built.to!)];
  const inShop = new Set(shop.tickets.filter(({ closedAt }) => closedAt === null).map(({ unit }) => unit));
  const callbacks = new Set<number>();
  const flags = new Set<number>();
  for (const { unit, record, ticket } of newestRecords(shop, rule.line, rule.positions[0]!)) {
    const parts = record.part === null ? record.candidates : [record.part];
    if (parts.length === 0 || parts.includes(rule.required!)) continue;
    const days = built[unit]!;
    if (days.length === 0 || days.some((span) => span.from < from || span.to > to)) continue;
    if (inShop.has(unit)) flags.add(unit);
    else if (ticket.closedAt !== null && ticket.closedAt >= lookBackFrom * 86_400_000) callbacks.add(unit);
  }
  return { callbacks, flags };
}

function newestRecords(shop: DemoShop, line: string, position: string) {
  const newest = new Map<string, { unit: number; record: DemoRecord; ticket: DemoTicket }>();
  for (const ticket of shop.tickets) {
    if (shop.units[ticket.unit]!.line !== line) continue;
    for (const side of ['found', 'left'] as const) {
      for (const record of ticket.records) {
        if (record.side !== side || record.position !== position || record.leftOutWhy !== null) continue;
        newest.set(`${ticket.unit} ${record.place}`, { unit: ticket.unit, record, ticket });
      }
    }
  }
  return newest.values();
}
