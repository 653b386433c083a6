import type { BulkPosition, BulkStore } from '../../usecases';
import type { Db } from '../db';

export function lineActions(db: Db): Pick<BulkStore, 'saveLines' | 'positions' | 'savePositions'> {
  return {
    async saveLines(rows) {
      const text = JSON.stringify(rows);
      await db.$executeRaw`
        INSERT INTO product_line (code, maker_id, name, kind, options, sketch, produced_from, produced_until)
        SELECT r.code, m.id, r.name, r.kind, r.options, coalesce(r.sketch, ''), r."producedFrom", r."producedUntil"
        FROM jsonb_to_recordset(${text}::jsonb)
          AS r(code text, maker text, name text, kind text, options jsonb, sketch text, "producedFrom" date,
               "producedUntil" date)
        JOIN maker m ON m.code = r.maker
        ON CONFLICT (code) DO UPDATE SET name = EXCLUDED.name, kind = EXCLUDED.kind, options = EXCLUDED.options,
          sketch = CASE WHEN EXCLUDED.sketch = '' THEN product_line.sketch ELSE EXCLUDED.sketch END,
          produced_from = EXCLUDED.produced_from, produced_until = EXCLUDED.produced_until`;
      await db.$executeRaw`
        INSERT INTO model (line_id, number, name)
        SELECT l.id, o.number, o.name
        FROM jsonb_to_recordset(${text}::jsonb) AS r(code text, models jsonb)
        JOIN product_line l ON l.code = r.code
        CROSS JOIN LATERAL jsonb_to_recordset(r.models) AS o(number text, name text)
        ON CONFLICT (line_id, number) DO UPDATE SET name = EXCLUDED.name`;
    },
    positions: () => db.$queryRaw<BulkPosition[]>`
      SELECT l.code AS line, p.code, p.name, p.assembly, p.place_names AS "placeNames", p.sketch_x AS "sketchX",
             p.sketch_y AS "sketchY", p.sort_order AS "sortOrder", p.joint
      FROM position p JOIN product_line l ON l.id = p.line_id ORDER BY l.code, p.sort_order, p.id`,
    async savePositions(rows) {
      await db.$executeRaw`
        INSERT INTO position (line_id, code, name, assembly, places, place_names, sort_order, joint, sketch_x, sketch_y)
        SELECT l.id, r.code, r.name, r.assembly, cardinality(r."placeNames"), r."placeNames", r."sortOrder",
               nullif(r.joint, 'null'::jsonb), r."sketchX", r."sketchY"
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
          AS r(line text, code text, name text, assembly text, "placeNames" text[], "sortOrder" int, joint jsonb,
               "sketchX" float8, "sketchY" float8)
        JOIN product_line l ON l.code = r.line
        ON CONFLICT (line_id, code) DO UPDATE SET name = EXCLUDED.name, assembly = EXCLUDED.assembly,
          places = EXCLUDED.places, place_names = EXCLUDED.place_names, sort_order = EXCLUDED.sort_order,
          joint = EXCLUDED.joint, sketch_x = EXCLUDED.sketch_x, sketch_y = EXCLUDED.sketch_y`;
    },
  };
}
