import type {
  OrderList,
  ShelfItem,
  ShelfItemDetail,
  ShelfMoved,
  ShelfPull,
  StockView,
  TicketView,
} from '../../libs/contracts';
import { rule, type ApiShop } from '../api/api-shop';
import type { Walk } from './walk';

/** Everything that is done at the shelf, in the order a shop would come by it. */
export async function workAtShelf(shop: ApiShop, walk: Walk): Promise<void> {
  const { version } = await walk.call<{ version: number }>('settings-view');
  await walk.call('settings-change', { version, body: { keepShelf: true } });
  const bag = { partText: '70-412B/P10', quantity: 2, bin: 'C3' };
  const { item } = await walk.call<ShelfMoved>('shelf-receive', { as: 'technician', body: bag });
  const count = { partText: '70-412B', pieces: 19, reason: 'one was bent' };
  const stock = await walk.call<StockView>('shelf-stock', { query: { partText: '70-412B' } });
  await walk.call('shelf-count', { as: 'technician', version: stock.version, body: count });
  await walk.call('shelf-list', { query: { q: '70412b' } });
  await orderSome(walk, item);
  await waitForBelt(shop, walk);
  await pullSome(walk);
}

async function orderSome(walk: Walk, { id, version }: ShelfItem): Promise<void> {
  const path = { id };
  const now = await walk.call<ShelfItemDetail>('shelf-item', { path });
  const body = { reorderPoint: 25, orderQuantity: 20, supplier: 'Landvik wholesale', packSize: 10 };
  await walk.call('shelf-set', { path, version: now.version ?? version, body });
  await walk.call('shelf-orders-list');
  await walk.call('shelf-orders-csv');
  const ordered = { expectedOn: '2026-11-27', lines: [{ itemId: id, pieces: 20 }] };
  const { open } = await walk.call<OrderList>('shelf-orders-place', { body: ordered });
  await walk.call('shelf-orders-cancel', { path: { id: open[0]!.id }, version: open[0]!.version });
}

async function waitForBelt(shop: ApiShop, walk: Walk): Promise<void> {
  const { id, version, unit } = await shop.newTicket('17030077');
  const wait = { position: 'BELT', partText: '80-001', quantity: 1 };
  const at = { path: { id }, as: 'technician' as const };
  const waiting = await walk.call<TicketView>('tickets-wait-for-part', { ...at, version, body: wait });
  const path = { id, waitId: waiting.waits[0]!.id };
  const { version: later } = await walk.call<TicketView>('tickets-end-wait', { ...at, path, version: waiting.version });
  const { rows } = await shop.pool.query<{ id: number }>(
    `WITH t AS (INSERT INTO ticket (number, location_id, unit_id, owner_id, closed_at, handed_over)
                SELECT 'T-OLD', 1, id, owner_id, now(), TRUE FROM unit WHERE id = $1 RETURNING id)
     INSERT INTO pick (ticket_id, position_id, part_id, quantity, purpose, state)
     SELECT t.id, 1, p.id, 2, 'spare', 'given' FROM t, part p WHERE p.key = 'HOLM/70412B' RETURNING id`,
    [unit.id],
  );
  const back = { id, pickId: rows[0]!.id };
  await walk.call('tickets-take-spare-back', { ...at, path: back, version: later });
}

async function pullSome(walk: Walk): Promise<void> {
  const barred = [{ part: 'HOLM/70412B', reason: 'breaks-later', note: 'its bar stock came too hard' }];
  const opens = [rule('PIN-HARD', { barred: barred as never, built: { from: '2016-01-01', to: '2017-01-01' } })];
  const paper = {
    ...{ kind: 'service-bulletin', publisher: 'Holmgard', number: 'SB-12', title: 'Pins that are too hard' },
    ...{ issued: '2026-10-02', received: '2026-10-21', draft: { opens, ends: [] } },
  };
  const { id, version } = await walk.call<{ id: number; version: number }>('bulletins-save', { body: paper });
  const { revision } = await walk.call<{ revision: number }>('bulletins-what-if', { path: { id } });
  await walk.call('bulletins-publish', { path: { id }, version, body: { whatIfRevision: revision } });
  const [pull] = await walk.call<ShelfPull[]>('shelf-pulls');
  await walk.call('shelf-pulls-of', { path: { id } });
  const body = { itemId: pull!.item.id, note: 'red tag' };
  await walk.call('shelf-pulled', { path: { id: pull!.noticeId }, body });
}
