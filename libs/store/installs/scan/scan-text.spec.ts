import { Prisma } from '../../generated/client';
import { literalSql } from './literal-sql';
import { MISSING, NumberRows } from './number-rows';
import { RowCursor } from './row-cursor';

describe('a row in the text form of COPY', () => {
  const take = (rows: NumberRows, text: string) => rows.take(Buffer.from(`xx${text}\nyy`), 2, 2 + text.length);

  it('is read as whole numbers, however many rows there are', () => {
    const rows = new NumberRows(3);
    take(rows, '12\t-7\t\\N');
    for (let i = 0; i < 10_000; i++) take(rows, `${i}\t-2147483648\t2147483647`);
    expect(rows.count).toBe(10_001);
    expect([...rows.values.subarray(0, 3)]).toEqual([12, -7, MISSING]);
    expect([...rows.values.subarray(30_000, 30_003)]).toEqual([9_999, -2_147_483_648, 2_147_483_647]);
  });

  it('is read column by column, with what COPY had to write otherwise', () => {
    const text = `-14\t\\N\tä\\tb\\\\c\t\t0`;
    const bytes = Buffer.from(`xx${text}\n`);
    const row = new RowCursor().begin(bytes, 2, bytes.length - 1);
    expect([row.number(), row.text(), row.text(), row.text(), row.number()]).toEqual([-14, null, 'ä\tb\\c', '', 0]);
  });
});

describe('a statement with its values written into it', () => {
  it('quotes texts, sets negative numbers apart and writes arrays as PostgreSQL reads them', () => {
    expect(literalSql(Prisma.sql`SELECT ${"it's"}, 1 - ${-2}, ${null}, ${[1, 2]}::int[], ${['a"b']}::text[]`)).toBe(
      `SELECT 'it''s', 1 - (-2), NULL, '{1,2}'::int[],  E'{"a\\\\"b"}'::text[]`,
    );
  });

  it('refuses what it cannot write', () => {
    expect(() => literalSql(Prisma.sql`SELECT ${{}}`)).toThrow('a object cannot be written into a statement');
  });
});
