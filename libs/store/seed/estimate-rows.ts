import type { DemoShop } from '../../demo';
import { sumsOf, type EstimateLine } from '../../ticket';
import type { HouseIds } from './seed-house';

type DemoTicket = DemoShop['tickets'][number];

export const ESTIMATE_COLUMNS = {
  ticket_id: 'int',
  revision: 'int',
  at: 'timestamptz',
  person_id: 'int',
  lines: 'jsonb',
  currency: 'text',
  tax_name: 'text',
  tax_basis_points: 'int',
  tax_included: 'boolean',
  net_minor: 'int',
  tax_minor: 'int',
  total_minor: 'int',
};

/** What the owner was asked: parts and labour. Where spares go along, they were asked for them in a second revision. */
export function estimateRows(ticket: DemoTicket, ticketId: number, shop: DemoShop, { house }: { house: HouseIds }) {
  if (ticket.authorisation === null) return [];
  const at = new Date(ticket.authorisation.at).getTime();
  const { currency, money } = shop.settings;
  const { name, basisPoints, included } = money.tax;
  return revisionsOf(ticket, shop).map((lines, index, all) => {
    const sums = sumsOf(
      lines.map(({ amountMinor }) => amountMinor),
      money.tax,
    );
    return {
      ticket_id: ticketId,
      revision: index + 1,
      at: new Date(at - (all.length - index) * 20 * 60_000).toISOString(),
      person_id: house.person.of(ticket.technician),
      lines,
      currency,
      tax_name: name,
      tax_basis_points: basisPoints,
      tax_included: included,
      net_minor: sums.netMinor,
      tax_minor: sums.taxMinor,
      total_minor: sums.totalMinor,
    };
  });
}

/** The number of the revision the owner said yes to. */
export function lastRevision({ picks }: DemoTicket): number {
  return picks.some(({ purpose }) => purpose === 'spare') ? 2 : 1;
}

function revisionsOf(ticket: DemoTicket, shop: DemoShop): EstimateLine[][] {
  const labour: EstimateLine[] =
    ticket.labourMinutes === 0
      ? []
      : [
          {
            kind: 'labour',
            part: null,
            what: 'Work at the bench',
            quantity: 1,
            minutes: ticket.labourMinutes,
            amountMinor: ticket.labourMinor,
          },
        ];
  const parts = ticket.picks.map((pick) => partLine(pick, shop));
  const whole = [...parts, ...labour];
  return lastRevision(ticket) === 1 ? [whole] : [whole.filter(({ kind }) => kind !== 'spare'), whole];
}

function partLine(pick: DemoTicket['picks'][number], shop: DemoShop): EstimateLine {
  const { number, name } = partByKey(shop).get(pick.part)!;
  const { quantity, purpose, priceMinor } = pick;
  const kind = purpose === 'spare' ? 'spare' : 'part';
  return { kind, part: number, what: name, quantity, minutes: 0, amountMinor: priceMinor * quantity };
}

const known = new WeakMap<DemoShop, ReadonlyMap<string, DemoShop['parts'][number]>>();

function partByKey(shop: DemoShop): ReadonlyMap<string, DemoShop['parts'][number]> {
  const made = known.get(shop) ?? new Map(shop.parts.map((part) => [part.key, part]));
  known.set(shop, made);
  return made;
}
