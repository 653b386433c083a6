import { createHash } from 'node:crypto';
import { Pool } from 'pg';

/** The first row that is not as it was written. */
export interface TrailFault {
  /** Its place in the chain. */
  readonly id: string;
  readonly why: string;
}

export interface TrailReport {
  /** Rows that were looked at. */
  readonly rows: number;
  /** Hash of the last row, in hexadecimal: to be compared with one written down earlier. */
  readonly head: string;
  readonly fault: TrailFault | null;
}

interface Row {
  id: string;
  prev: Buffer;
  hash: Buffer;
  canonical: string;
  /** For a chunk or a batch of a recheck: the hash it kept and that of what it stands for, as it is. */
  digest: string | null;
  digestNow: string | null;
  standsFor: 'verdicts' | 'rows';
}

const AT_ONCE = 2_000;
const BEGIN = createHash('sha256').update('').digest();

/**
 * Walks the chain from its first row and stops at the first that does not follow from the one before, whose own hash
 * is not right, or what it stands for was changed. The hashes are worked out here, not by the database. With `expect`,
 * a head written down earlier must still be in the chain.
 */
export async function verifyTrail(pool: Pick<Pool, 'query'>, expect?: string): Promise<TrailReport> {
  let previous: Buffer = BEGIN;
  let [rows, seen] = [0, expect === undefined];
  for (let last = '0'; ;) {
    const page = await readRows(pool, last);
    for (const row of page) {
      const why = faultOf(row, rows + 1, previous);
      if (why !== null) return { rows, head: previous.toString('hex'), fault: { id: row.id, why } };
      [previous, last, rows] = [row.hash, row.id, rows + 1];
      seen ||= previous.toString('hex') === expect;
    }
    if (page.length < AT_ONCE) break;
  }
  const fault = seen ? null : { id: String(rows), why: `the chain does not hold the head ${expect}: rows are missing` };
  return { rows, head: previous.toString('hex'), fault };
}

function faultOf(row: Row, place: number, previous: Buffer): string | null {
  if (row.id !== String(place)) return `row ${place} is missing before it`;
  if (!row.prev.equals(previous)) return 'it does not follow from the row before it';
  const hash = createHash('sha256').update(row.prev).update(row.canonical, 'utf8').digest();
  if (!hash.equals(row.hash)) return 'its content is not what its hash was made over';
  if (row.digest !== row.digestNow) return `the ${row.standsFor} it stands for were changed`;
  return null;
}

async function readRows(pool: Pick<Pool, 'query'>, after: string): Promise<Row[]> {
  const { rows } = await pool.query<Row>(
    `SELECT e.id::text, e.prev_hash AS prev, e.row_hash AS hash, audit_canonical(e) AS canonical,
            e.change->>'digest' AS digest,
            CASE WHEN e.change ? 'batch' THEN (SELECT audit_batch_digest(b.act, b.noun, b.units, b.rows) FROM audit_batch b
                                               WHERE b.id = (e.change->>'batch')::bigint)
                 WHEN e.change ? 'digest' THEN verdict_digest((e.change->>'recheck')::int, (e.change->>'from')::int,
                                                              (e.change->>'to')::int) END AS "digestNow",
            CASE WHEN e.change ? 'batch' THEN 'rows' ELSE 'verdicts' END AS "standsFor"
     FROM (SELECT * FROM audit_entry WHERE id > $1::bigint ORDER BY id LIMIT ${AT_ONCE}) e ORDER BY e.id`,
    [after],
  );
  return rows;
}

/** {@link verifyTrail} on a database by its address, for a program that has no store of its own. */
export async function verifyTrailAt(url: string, expect?: string): Promise<TrailReport> {
  const pool = new Pool({
    connectionString: url,
    max: 1,
    application_name: 'revright verify',
    options: '-c revright.sight=all',
  });
  try {
    return await verifyTrail(pool, expect);
  } finally {
    await pool.end();
  }
}
