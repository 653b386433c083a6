import { formatDay } from '../../libs/day';
import { withDatabase } from '../../libs/testing';
import { SmallShop, TODAY } from './small-shop';

const REFUSED = { code: '23503' };

/** What the foreign keys of a callback's reasons promise, by whatever means the database keeps it. */
describe('a reason of a callback', () => {
  const db = withDatabase();
  let callbackId: number;
  let sourceId: number;

  const add = (callback: number, source: number, place = 1): string =>
    `INSERT INTO callback_reason (callback_id, source_id, position_id, place, verdict, action, detail)
     VALUES (${callback}, ${source}, 1, ${place}, 'wrong', 'call-back', '{}')`;

  beforeAll(async () => {
    const shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
    const [unitId] = await shop.many(1, formatDay(TODAY - 10), ['2015-01-01', '2015-06-01']);
    const idOf = async (sql: string) => (await db.pool.query<{ id: number }>(sql)).rows[0]!.id;
    callbackId = await idOf(`INSERT INTO callback (unit_id, owner_id) VALUES (${unitId}, 1) RETURNING id`);
    sourceId = await idOf(`SELECT id FROM source WHERE key = 'PL-1'`);
    await db.pool.query(add(callbackId, sourceId));
  });

  it('is refused without its call or its source, also among others that have theirs', async () => {
    await expect(db.pool.query(add(callbackId + 100, sourceId))).rejects.toMatchObject(REFUSED);
    await expect(db.pool.query(add(callbackId, sourceId + 100, 2))).rejects.toMatchObject(REFUSED);
    const mixed = `${add(callbackId, sourceId, 3)}, (${callbackId}, ${sourceId + 100}, 1, 4, 'wrong', 'call-back', '{}')`;
    await expect(db.pool.query(mixed)).rejects.toMatchObject(REFUSED);
    expect((await db.pool.query('SELECT 1 FROM callback_reason')).rowCount).toBe(1);
  });

  it('cannot be turned to a call or a source that is not there', async () => {
    for (const column of ['callback_id', 'source_id']) {
      await expect(db.pool.query(`UPDATE callback_reason SET ${column} = ${column} + 100`)).rejects.toMatchObject(
        REFUSED,
      );
    }
  });

  it('keeps its call and its source from being removed', async () => {
    await expect(db.pool.query(`DELETE FROM callback WHERE id = ${callbackId}`)).rejects.toMatchObject(REFUSED);
    await expect(db.pool.query(`DELETE FROM source WHERE id = ${sourceId}`)).rejects.toMatchObject(REFUSED);
  });

  it.each(['callback', 'source'])(
    'that is being written keeps its %s: a removal waits and is then refused',
    async (of) => {
      const parent = await db.pool.query<{ id: number }>(
        of === 'callback'
          ? `INSERT INTO callback (unit_id, owner_id, state) SELECT unit_id, owner_id, 'withdrawn' FROM callback LIMIT 1 RETURNING id`
          : `INSERT INTO source (key, kind, publisher, number, title, issued, received, state)
           VALUES ('SB-9', 'service-bulletin', 'Holmgard', 'SB-9', 'Bulletin', '2020-01-01', '2020-01-01', 'draft') RETURNING id`,
      );
      const { id } = parent.rows[0]!;
      const writer = await db.pool.connect();
      try {
        await writer.query('BEGIN');
        await writer.query(of === 'callback' ? add(id, sourceId) : add(callbackId, id));
        const removal = db.pool.query(`DELETE FROM ${of} WHERE id = ${id}`).then(
          () => 'removed',
          (error: unknown) => error,
        );
        await waits(`DELETE FROM ${of}%`);
        await writer.query('COMMIT');
        expect(await removal).toMatchObject(REFUSED);
      } finally {
        writer.release();
      }
    },
  );

  /** Until such a statement waits for a lock. */
  async function waits(statement: string): Promise<void> {
    const asked = `SELECT 1 FROM pg_stat_activity WHERE query LIKE $1 AND wait_event_type = 'Lock'`;
    while ((await db.pool.query(asked, [statement])).rowCount === 0)
      await new Promise((resolve) => setTimeout(resolve, 20));
  }
});
