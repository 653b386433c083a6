import { formatDay } from '../../libs/day';
import { asProgram } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import {
  judgeChunk,
  judgeUnit,
  orderRecheck,
  planChunks,
  publishBulletin,
  saveBulletin,
  settleNote,
  viewVisit,
  type Outcome,
} from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from './small-shop';

const db = withDatabase();
let shop: SmallShop;
let unitId: number;

async function value<T>(outcome: Promise<Outcome<T>>): Promise<T> {
  const answer = await outcome;
  if (!answer.ok) throw new Error(answer.refusal.detail);
  return answer.value;
}

/** Judges every chunk of a recheck, as a worker would. */
async function judged(recheckId: number): Promise<void> {
  await asProgram(() => planChunks(shop.ports, { recheckId }));
  const { rows } = await db.pool.query<{ n: number }>('SELECT n FROM recheck_chunk WHERE recheck_id = $1', [recheckId]);
  for (const { n } of rows) await asProgram(() => judgeChunk(shop.ports, { recheckId, n }));
}

const visit = () => value(viewVisit(shop.ports, manager, unitId));

beforeAll(async () => {
  shop = await SmallShop.open(db.url, db.pool);
  db.beforeClose(() => shop.store.close());
  ({ unitId } = await shop.unit([[1, 1, 1]], { handedOver: formatDay(TODAY - 100) }));
  const asked = bulletin('SB-1', [rule('FR-1', { required: 'HOLM/B', action: 'next-service' })]);
  const { id } = await value(saveBulletin(shop.ports, manager, asked));
  const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));
  await judged(recheckId);
});

describe('a note for the next visit', () => {
  it('is settled by hand on the unit as it was seen, with who, when and what was done', async () => {
    const { notes, unit } = await visit();
    expect(notes).toMatchObject([{ source: 'SB-1', where: 'Shear pin, left' }]);
    const noteId = notes[0]!.id;
    const settle = (version: number, one = noteId) =>
      settleNote(shop.ports, manager, { id: unitId, version, noteId: one, reason: 'owner keeps the old pin' });
    expect(await settle(unit.version + 1)).toMatchObject({ ok: false, refusal: { code: 'stale' } });
    expect(await settle(unit.version, noteId + 1)).toMatchObject({ ok: false, refusal: { code: 'not-found' } });
    expect((await visit()).notes).toHaveLength(1);

    await value(settle(unit.version));
    const after = await visit();
    expect(after.notes).toEqual([]);
    expect(after.settledNotes).toMatchObject([
      { id: noteId, sentence: notes[0]!.sentence, source: 'SB-1', why: 'owner keeps the old pin', by: 'Mara Venn' },
    ]);
    expect(await settle(after.unit.version)).toMatchObject({ ok: false, refusal: { code: 'not-found' } });
    const trail = await db.pool.query<{ change: Record<string, unknown> }>(
      `SELECT change FROM audit_entry WHERE noun = 'unit_note' AND unit_id = $1`,
      [unitId],
    );
    expect(trail.rows.map(({ change }) => change)).toMatchObject([
      { closed_by: [null, 1], closed_why: [null, 'owner keeps the old pin'] },
    ]);
  });

  it('does not come up again with the next recheck while the same part stays in its place', async () => {
    const { recheckId } = await value(orderRecheck(shop.ports, manager));
    await judged(recheckId);
    expect((await visit()).notes).toEqual([]);
  });

  it('comes up again when another part that is not right lies there', async () => {
    await db.pool.query('UPDATE install SET part_id = 3, verdict = NULL, judgement = NULL WHERE unit_id = $1', [
      unitId,
    ]);
    await shop.store.transaction((tx) => judgeUnit(tx, shop.clock, unitId));
    const { notes, settledNotes } = await visit();
    expect(notes).toMatchObject([{ source: 'SB-1' }]);
    expect(settledNotes).toEqual([]);
  });
});
