import type { KnownChange } from '../../usecases';
import type { Db } from '../db';
import { readDaySet } from '../units/day-set-text';

interface Changed {
  readonly cursor: string;
  /** Which columns changed. */
  readonly columns: readonly string[];
  readonly line: { readonly id: number; readonly code: string } | null;
  readonly model: { readonly number: string } | null;
  readonly options: Readonly<Record<string, boolean>> | null;
  readonly scheme: string | null;
  readonly key: string | null;
  readonly built: string | null;
}

/** What the trail says of the columns of a unit that fit rules ask for: of each change, what stood there before. */
export async function knownChanges(db: Db, unitId: number): Promise<readonly KnownChange[]> {
  const rows = await db.$queryRaw<Changed[]>`
    WITH changed AS (
      SELECT e.id AS place, 0 AS part, e.change
      FROM audit_entry e WHERE e.unit_id = ${unitId}::int AND e.noun = 'unit' AND e.act = 'update'
      UNION ALL
      SELECT e.id, (r.change->>'id')::int, r.change
      FROM audit_batch b
      JOIN audit_entry e ON e.noun = b.noun AND e.row_key = 'batch ' || b.id AND e.change ? 'digest',
           LATERAL audit_batch_rows(b.rows, ${unitId}::int) r
      WHERE b.units @> ARRAY[${unitId}::int] AND b.noun = 'unit' AND b.act = 'update'
    )
    SELECT c.place || '.' || c.part AS cursor, ARRAY(SELECT jsonb_object_keys(c.change)) AS columns,
           CASE WHEN l.id IS NOT NULL THEN jsonb_build_object('id', l.id, 'code', l.code) END AS line,
           CASE WHEN m.id IS NOT NULL THEN jsonb_build_object('number', m.number) END AS model,
           c.change->'options'->0 AS options, c.change->'serial_scheme'->>0 AS scheme,
           c.change->'serial_key'->>0 AS key, c.change->'built'->>0 AS built
    FROM changed c
    LEFT JOIN product_line l ON l.id = (c.change->'line_id'->>0)::int
    LEFT JOIN model m ON m.id = (c.change->'model_id'->>0)::int
    WHERE c.change ?| ARRAY['line_id', 'model_id', 'options', 'serial_scheme', 'serial_key', 'built']
    ORDER BY c.place DESC, c.part DESC`;
  return rows.map(before);
}

function before({ cursor, columns, line, model, options, scheme, key, built }: Changed): KnownChange {
  const has = new Set(columns);
  return {
    cursor,
    before: {
      ...(has.has('line_id') ? { line } : {}),
      ...(has.has('model_id') ? { model } : {}),
      ...(has.has('options') ? { options: options ?? {} } : {}),
      ...(has.has('serial_scheme') ? { serialScheme: scheme } : {}),
      ...(has.has('serial_key') ? { serialKey: key } : {}),
      ...(has.has('built') ? { built: readDaySet(built ?? '{}') } : {}),
    },
  };
}
