import { readRulebook } from '../../libs/fit-rules';
import { withDatabase } from '../../libs/testing';
import { loadRulebook, publishBulletin, saveBulletin, withdrawBulletin } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop } from './small-shop';
import { value } from './wait';

describe('a rulebook of which most was read for an earlier revision', () => {
  const db = withDatabase();
  let shop: SmallShop;

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
  });

  const expectAsStored = async () => {
    const { rulebook, revision } = await loadRulebook(shop.store, shop.clock);
    const whole = readRulebook(await shop.store.rulebook.load());
    expect({ ok: true, value: rulebook }).toEqual(whole);
    return revision;
  };

  it('is the same as one read whole: after a first look, a publication, an ending and a withdrawal', async () => {
    const { store, ports } = shop;
    const first = await expectAsStored();
    const publish = async (...about: Parameters<typeof bulletin>) => {
      const { id } = await value(saveBulletin(ports, manager, bulletin(...about)));
      await value(publishBulletin(ports, manager, { id, version: 1 }));
      return id;
    };
    const id = await publish('SB-1', [rule('FR-A', { required: 'HOLM/B', replaces: ['FR-PIN'] })]);
    const second = await expectAsStored();
    await publish('SB-2', [rule('FR-A', { required: 'HOLM/C', replaces: ['FR-PIN'] })]);
    await expectAsStored();
    await value(withdrawBulletin(ports, manager, { id, version: 2, reason: 'Misprint' }));
    expect(await expectAsStored()).toBeGreaterThan(second);
    const { stamp } = await store.rulebook.latest();
    expect(await store.rulebook.loadSince({ revision: first, stamp })).toBeNull();
  });
});
