import type { ShelfItemDetail, ShelfMoved, ShelfPage, StockView, TicketView } from '../../libs/contracts';
import { day } from '../../libs/day';
import { SAFETY_POINTS } from '../../libs/ticket';
import type { Actor } from '../../libs/usecases';
import { ApiShop, type Answer, type Caller } from './api-shop';

export const technician: Actor = { id: 1, name: 'The technician', role: 'technician', locationId: 1 };

/** Units of line SNOW-2 built in these months take 70-412A, those of LATE 70-412B. */
export const EARLY = ['2014-03-01', '2014-04-01'] as const;
export const LATE = ['2017-03-01', '2017-04-01'] as const;

/** The shop of the API specs, with a shelf that is kept, and tickets ready for picking made without a walk through the stages. */
export class ShelfShop {
  private constructor(
    readonly shop: ApiShop,
    readonly caller: Caller,
    readonly manager: Caller,
  ) {}

  static async open(db: Parameters<typeof ApiShop.open>[0]): Promise<ShelfShop> {
    const shop = await ApiShop.open(db);
    await shop.pool.query(
      `INSERT INTO owner (id, location_id, name, phone, consent) VALUES (900, 1, 'Ole Brand', '555 0101', true)`,
    );
    const shelf = new ShelfShop(shop, await shop.as('technician'), await shop.as('manager'));
    await shelf.keep(true);
    return shelf;
  }

  async keep(kept: boolean): Promise<void> {
    await ok(this.manager.settle('PATCH', '/settings', { keepShelf: kept }));
  }

  /** Ids of open tickets in repair, safety ticked, each with a unit of its own that was built in the span. */
  async tickets(count: number, [from, to]: readonly [string, string] = LATE): Promise<readonly number[]> {
    const { rows } = await this.shop.pool.query<{ id: number }>(
      `WITH n AS (SELECT g, nextval('unit_id_seq')::int AS unit_id FROM generate_series(1, $1) g),
       u AS (INSERT INTO unit (id, owner_id, line_id, model_id, serial, built, built_from, built_to)
             SELECT unit_id, 900, 1, 1, 'S' || unit_id, int4multirange(int4range($2, $3)), $2, $3 FROM n RETURNING id)
       INSERT INTO ticket (number, location_id, unit_id, owner_id, stage, safety_checks)
       SELECT 'T-' || u.id, 1, u.id, 900, 'repair', $4 FROM u RETURNING id`,
      [count, day(from), day(to), SAFETY_POINTS.map(({ id }) => id)],
    );
    return rows.map(({ id }) => id);
  }

  async ticket(id: number): Promise<TicketView> {
    return ok(this.caller.get(`/tickets/${id}`));
  }

  receive(partText: string, quantity: number, more: Record<string, unknown> = {}): Promise<ShelfMoved> {
    return ok(this.caller.ask<ShelfMoved>('POST', '/shelf/receive', { partText, quantity, ...more }));
  }

  /** A count made on the stock as it stands. */
  async count<T = ShelfMoved>(body: { partText: string; pieces: number; reason: string }): Promise<Answer<T>> {
    const stock = await ok(this.caller.get<StockView>(`/shelf/stock?partText=${encodeURIComponent(body.partText)}`));
    return this.caller.change<T>('POST', '/shelf/count', stock.version, body);
  }

  /** A change of the ticket on its present version. */
  async act<T = TicketView>(
    id: number,
    method: string,
    path: string,
    body?: unknown,
    caller = this.caller,
  ): Promise<Answer<T>> {
    const { version } = await this.ticket(id);
    return caller.change<T>(method, `/tickets/${id}${path}`, version, body);
  }

  pick<T = TicketView>(id: number, partText: string, more: Record<string, unknown> = {}, caller = this.caller) {
    const body = { position: 'AUG-PIN', partText, quantity: 1, purpose: 'fit', ...more };
    return this.act<T>(id, 'POST', '/picks', body, caller);
  }

  async item(q: string): Promise<ShelfItemDetail> {
    const page = await ok(this.caller.get<ShelfPage>(`/shelf?q=${encodeURIComponent(q)}`));
    return ok(this.caller.get<ShelfItemDetail>(`/shelf/items/${page.items[0]!.id}`));
  }

  /** `on hand / reserved` of the part. */
  async stock(q: string): Promise<string> {
    const { onHand, reserved } = await this.item(q);
    return `${onHand} / ${reserved}`;
  }

  /**
   * Items whose sums are not those of their movements, or whose reserved pieces are not those of the picks that lie on
   * the benches: none, whatever was done.
   */
  async untrue(): Promise<readonly unknown[]> {
    const { rows } = await this.shop.pool.query<Record<string, number>>(
      `SELECT i.id, i.on_hand, i.reserved, m.pieces, m.reserved AS moved, k.picked
       FROM shelf_item i
       CROSS JOIN LATERAL (SELECT COALESCE(sum(pieces), 0)::int AS pieces, COALESCE(sum(reserved), 0)::int AS reserved
                           FROM shelf_movement WHERE item_id = i.id) m
       CROSS JOIN LATERAL (SELECT COALESCE(sum(k.quantity), 0)::int AS picked FROM pick k
                           WHERE k.state = 'picked' AND k.part_id = i.part_id
                             AND EXISTS (SELECT FROM shelf_movement v WHERE v.pick_id = k.id AND v.item_id = i.id)) k
       WHERE (i.on_hand, i.reserved, i.reserved) <> (m.pieces, m.reserved, k.picked)`,
    );
    return rows;
  }
}

export async function ok<T>(answer: Promise<Answer<T>>): Promise<T> {
  const { status, body } = await answer;
  if (status !== 200) throw new Error(`${status} ${JSON.stringify(body)}`);
  return body;
}
