import { Prisma } from '../../generated/client';
import { NumberRows } from './copy-out';
import { literalSql } from './literal-sql';

describe('rows of whole numbers in the text form of COPY', () => {
  it('are read the same wherever the stream is cut', () => {
    const text = '12\t-7\t\\N\n0\t-2147483648\t2147483647\n';
    for (let cut = 0; cut <= text.length; cut++) {
      const seen: number[][] = [];
      const rows = new NumberRows(3, -1, (row) => seen.push([...row]));
      rows.take(Buffer.from(text.slice(0, cut)));
      rows.take(Buffer.from(text.slice(cut)));
      expect(seen).toEqual([
        [12, -7, -1],
        [0, -2_147_483_648, 2_147_483_647],
      ]);
    }
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
