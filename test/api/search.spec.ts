import type { SearchHits } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from './api-shop';

const db = withDatabase();
let counter: Caller;
/** More than the search looks up owner by owner; past that it goes from the newest ticket back. */
const MANY = 2_500;

/** An owner with one unit and one ticket each, at location 1 and, every tenth, at location 2. */
const OWNERS = `
  INSERT INTO location (id, code, name) VALUES (2, 'FAR', 'Far side') ON CONFLICT DO NOTHING;
  INSERT INTO owner (id, location_id, name, phone)
    SELECT n, CASE WHEN n % 10 = 0 THEN 2 ELSE 1 END,
           CASE WHEN n % 1000 = 7 THEN 'Wilmot ' ELSE 'Sorensby ' END || n, '0000 77' || lpad(n::text, 5, '0')
    FROM generate_series(10001, ${10_000 + MANY}) n;
  INSERT INTO unit (id, owner_id, line_id, model_id, serial, serial_search, built, built_from, built_to)
    SELECT n, n, 1, 1, 'Z' || n, 'Z' || n, '{}', 0, 0 FROM generate_series(10001, ${10_000 + MANY}) n;
  INSERT INTO ticket (id, number, location_id, unit_id, owner_id, closed_at)
    SELECT n, '25-' || n, CASE WHEN n % 10 = 0 THEN 2 ELSE 1 END, n, n, now()
    FROM generate_series(10001, ${10_000 + MANY}) n`;

beforeAll(async () => {
  counter = await (await ApiShop.open(db)).as('counter');
  await db.pool.query(OWNERS);
}, 300_000);

async function found(text: string): Promise<(readonly [number: string, matched: string])[]> {
  const { body } = await counter.get<SearchHits>(`/search?q=${encodeURIComponent(text)}`);
  return body.map(({ number, matched }) => [number, matched] as const);
}

/** The newest fifty tickets of the location. */
const NEWEST = Array.from({ length: MANY }, (_, i) => 10_000 + MANY - i)
  .filter((n) => n % 10 !== 0)
  .slice(0, 50);

describe('the search', () => {
  it('finds the tickets of the few whose name holds what was typed, newest first', async () => {
    expect(await found('ilmo')).toEqual([
      ['25-12007', 'owner'],
      ['25-11007', 'owner'],
      ['25-10007', 'owner'],
    ]);
  });

  it('finds the newest of the very many whose name holds it, and none of another location', async () => {
    expect(await found('oren')).toEqual(NEWEST.map((n) => [`25-${n}`, 'owner']));
  });

  it('finds the newest by a piece of two letters too, which no index knows', async () => {
    expect(await found('by')).toEqual(NEWEST.map((n) => [`25-${n}`, 'owner']));
  });

  it('finds by the end of a phone number, and the newest of the very many that share a piece', async () => {
    expect(await found('7711 234')).toEqual([['25-11234', 'phone']]);
    expect(await found('0 00077')).toEqual(NEWEST.map((n) => [`25-${n}`, 'phone']));
  });

  it('finds nothing by a name or number of nobody', async () => {
    expect(await found('Nobodyhere')).toEqual([]);
    expect(await found('999 888 777')).toEqual([]);
  });
});
