import type { OwnIntakeDraft, Problem } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD } from './api-shop';

const db = withDatabase();
let shop: ApiShop;

const PATH = '/session/draft';
const DRAFT = {
  ownerId: null,
  ownerName: '',
  owner: { name: 'Yrsa Quill', phone: '555 9081', email: '', address: '', consent: true },
  unitId: null,
  unitName: '',
  unit: { lineCode: null, modelNumber: null, serial: '160', serialAbsent: null, options: {}, plate: '' },
  complaint: 'Auger does',
  benchId: null,
  promisedOn: null,
};
const rows = async (): Promise<number> => (await db.pool.query('SELECT FROM intake_draft')).rowCount ?? 0;
const nothing = { draft: null };

beforeAll(async () => {
  shop = await ApiShop.open(db);
}, 300_000);

beforeEach(async () => {
  await db.pool.query('DELETE FROM intake_draft');
});

/** A sign-in of its own, so that others' stay. */
async function signedIn(login: string): Promise<Caller> {
  const { headers } = await shop.signIn(login, PASSWORD);
  return new Caller(shop.api.url, headers.get('set-cookie')!.split(';')[0]!);
}

describe('what is being typed at the intake', () => {
  it('is kept for whoever types it, in any of their browsers, and for nobody else', async () => {
    const [one, other] = [await signedIn('counter'), await signedIn('counter')];
    expect((await one.get(PATH)).body).toEqual(nothing);
    expect((await one.ask('PUT', PATH, { draft: DRAFT })).status).toBe(204);
    const more = { ...DRAFT, complaint: 'Auger does not turn' };
    expect((await one.ask('PUT', PATH, { draft: more })).status).toBe(204);
    expect((await other.get<OwnIntakeDraft>(PATH)).body).toEqual({ draft: more });
    expect((await (await shop.as('manager')).get(PATH)).body).toEqual(nothing);
    expect((await shop.anonymous().get(PATH)).status).toBe(401);
    expect(await rows()).toBe(1);
  });

  it('is forgotten when its person says so, signs out, or signs out everywhere', async () => {
    for (const [method, path, body] of [
      ['PUT', PATH, nothing],
      ['DELETE', '/session', undefined],
      ['DELETE', '/session/all', undefined],
    ] as const) {
      const caller = await signedIn('counter');
      await caller.ask('PUT', PATH, { draft: DRAFT });
      expect(await rows()).toBe(1);
      expect((await caller.ask(method, path, body)).status).toBe(204);
      expect(`${method} ${path}: ${await rows()}`).toBe(`${method} ${path}: 0`);
    }
  });

  it('is not found after half a day, and goes when anybody types the next one', async () => {
    await (await signedIn('technician')).ask('PUT', PATH, { draft: DRAFT });
    shop.clock.nowMs += 12 * 3_600_000 + 1;
    const back = await signedIn('technician');
    expect((await back.get(PATH)).body).toEqual(nothing);
    await (await signedIn('counter')).ask('PUT', PATH, { draft: DRAFT });
    expect(await rows()).toBe(1);
  });

  it('is refused where it is no such thing, and what the server would not take is not kept', async () => {
    const caller = await signedIn('counter');
    const refused = await caller.ask<Problem>('PUT', PATH, { draft: { ...DRAFT, complaint: 7 } });
    expect(refused.status).toBe(400);
    await caller.ask('PUT', PATH, { draft: { ...DRAFT, verdict: 'right' } });
    expect((await caller.get(PATH)).body).toEqual({ draft: DRAFT });
  });
});
