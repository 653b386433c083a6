import { setTimeout as pause } from 'node:timers/promises';
import { withDatabase } from '../../libs/testing';
import { openStore } from '../../libs/store';
import { judgeChunk, planChunks, publishBulletin, saveBulletin, type Store, type Tables } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop } from './small-shop';
import { value } from './wait';

/** The database gives up on a transaction that was silent for so long; the spin lasts longer. */
const [IDLE_LIMIT_MS, SPIN_MS] = [600, 1_500];
const built = { from: '1991-01-01', to: '1991-01-02' };

/** Reading the one unit holds up the whole process; reading any other takes long enough to be held up by that. */
function heldUpBy(unitId: number, store: Store): Store {
  const heldUp = (tx: Tables): Tables => {
    const installs: Tables['installs'] = {
      ...tx.installs,
      async held(choice) {
        const rows = await tx.installs.held(choice);
        if (!rows.some(({ unit }) => unit.id === unitId)) return pause(400, rows);
        await pause(200);
        for (const end = performance.now() + SPIN_MS; performance.now() < end;);
        return rows;
      },
    };
    return { ...tx, installs };
  };
  return { ...store, transaction: (work, most) => store.transaction((tx) => work(heldUp(tx)), most) };
}

describe('a chunk that is judged beside one that holds up its process', () => {
  const db = withDatabase();

  it('is judged, while the other one is set aside', async () => {
    const shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
    const impatient = openStore({ url: db.url, idleLimitMs: IDLE_LIMIT_MS, sight: 'all' });
    db.beforeClose(() => impatient.close());
    const [spinning] = await shop.many(2, '2026-08-01', [built.from, built.to]);
    const one = rule('FR-ONE', { built, required: 'HOLM/B', action: 'call-back' });
    const { id } = await value(saveBulletin(shop.ports, manager, bulletin('SB-ONE', [one])));
    const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));
    await planChunks(shop.ports, { recheckId }, { unitsAChunk: 1 });
    const ports = { ...shop.ports, store: heldUpBy(spinning!, impatient) };
    const look = () => shop.store.rechecks.find(recheckId);
    for (let round = 0; round < 6 && (await look())?.state !== 'done'; round++) {
      await Promise.all([0, 1].map((n) => judgeChunk(ports, { recheckId, n })));
    }
    expect(await look()).toMatchObject({ state: 'done', judged: 2, setAside: 1 });
    expect((await look())!.setAsideWhy).toEqual([expect.stringMatching(`^Unit ${spinning}: .*did not end in time`)]);
  });
});
