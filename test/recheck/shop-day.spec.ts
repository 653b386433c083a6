import { day } from '../../libs/day';
import { openStore, type OpenStore } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { SmallShop } from './small-shop';

/** Noon in UTC of the 10th is already the 11th at a shop that is thirteen hours ahead. */
describe('the day a ticket closed', () => {
  const db = withDatabase();
  let shop: SmallShop;
  let far: OpenStore;
  let unitId = 0;

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    far = openStore({ url: db.url, timeZone: 'Pacific/Auckland', sight: 'all' });
    db.beforeClose(() => Promise.all([far.close(), shop.store.close()]));
    unitId = (await shop.unit([[1, 1, 1]], { handedOver: '2026-11-10' })).unitId;
  });

  it('is that of the shop', async () => {
    const closedOn = async (store: OpenStore) => (await store.installs.held({ unitIds: [unitId] }))[0]!.closedOn;
    expect(await closedOn(shop.store)).toBe(day('2026-11-10'));
    expect(await closedOn(far)).toBe(day('2026-11-11'));
  });

  it('decides by the shop’s day whether the unit is still within the look-back window', async () => {
    const scope = { everything: true, areas: [], ignoresLookBack: false };
    const choice = { scope, fromUnit: unitId, toUnit: unitId, lookBackFrom: day('2026-11-11') };
    const rows = async (store: OpenStore) => [
      (await store.installs.held(choice)).length,
      await store.scans.scan(choice, ({ count }) => Promise.resolve(count)),
    ];
    expect(await rows(shop.store)).toEqual([0, 0]);
    expect(await rows(far)).toEqual([1, 1]);
  });
});
