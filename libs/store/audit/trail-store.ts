import type { StoredTrailEntry, TrailStore } from '../../usecases';
import type { Db } from '../db';
import { knownChanges } from './known-changes';

export function trailStore(db: Db, zone = 'UTC'): TrailStore {
  return {
    async head() {
      const rows = await db.$queryRaw<{ place: string; hash: string }[]>`
        SELECT id::text AS place, encode(row_hash, 'hex') AS hash FROM audit_entry ORDER BY id DESC LIMIT 1`;
      return rows[0] ?? null;
    },
    /** What a recheck wrote has no row of its own in the trail: it stands where its chunk or its batch stands. */
    ofUnit(unitId, after, limit) {
      const [place = '0', part = '0'] = (after ?? '0.0').split('.');
      return db.$queryRaw<StoredTrailEntry[]>`
        WITH own AS (
          SELECT e.id AS place, 0 AS part, e.at, e.person_id, e.token_id, e.act, e.noun, e.row_key, e.revision, e.change
          FROM audit_entry e WHERE e.unit_id = ${unitId}::int
        ), judged AS (
          SELECT e.id AS place, v.id AS part, v.at, NULL::int AS person_id, NULL::int AS token_id, 'insert' AS act, 'verdict_change' AS noun,
                 v.id::text AS row_key, v.revision, to_jsonb(v) AS change
          FROM verdict_change v
          JOIN recheck_chunk c ON c.recheck_id = v.recheck_id AND v.unit_id BETWEEN c.from_unit AND c.to_unit
          JOIN audit_entry e ON e.noun = 'recheck_chunk' AND e.row_key = c.id::text AND e.change ? 'digest'
          WHERE v.unit_id = ${unitId}::int AND v.recheck_id IS NOT NULL
        ), batched AS (
          SELECT e.id AS place, (r.change->>'id')::int AS part, e.at, e.person_id, e.token_id, e.act, e.noun,
                 r.change->>'id' AS row_key, e.revision, r.change
          FROM audit_batch b
          JOIN audit_entry e ON e.noun = b.noun AND e.row_key = 'batch ' || b.id AND e.change ? 'digest',
               LATERAL audit_batch_rows(b.rows, ${unitId}::int) r
          WHERE b.units @> ARRAY[${unitId}::int]
        )
        SELECT t.place::text AS place, to_char(t.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS at, p.name || coalesce(' by the token ''' || a.name || '''', '') AS by,
               t.act, t.noun, t.row_key AS key, t.revision, t.change, t.place || '.' || t.part AS cursor,
               concat_ws(' of ', r.cause, s.number) AS known, pa.number AS part, po.code AS position,
               to_char(t.at AT TIME ZONE ${zone}, 'YYYY-MM-DD') AS day,
               nullif(concat_ws(', ', po.name, po.place_names[spot.place]), '') AS "where",
               CASE WHEN i.verdict IS NOT NULL
                    THEN jsonb_build_object('verdict', i.verdict, 'revision', i.judged_revision) END AS now
        FROM (SELECT * FROM own UNION ALL SELECT * FROM judged UNION ALL SELECT * FROM batched) t
        LEFT JOIN person p ON p.id = t.person_id LEFT JOIN api_token a ON a.id = t.token_id
        LEFT JOIN rulebook_revision r ON r.id = t.revision LEFT JOIN source s ON s.id = r.source_id
        LEFT JOIN place_record k ON k.id = CASE WHEN t.noun = 'place_record' THEN t.row_key::int END
        CROSS JOIN LATERAL (
          SELECT CASE jsonb_typeof(t.change->'position_id') WHEN 'number' THEN (t.change->>'position_id')::int
                      ELSE k.position_id END AS position_id,
                 CASE jsonb_typeof(t.change->'place') WHEN 'number' THEN (t.change->>'place')::int
                      ELSE k.place END AS place,
                 CASE jsonb_typeof(t.change->'part_id') WHEN 'number' THEN (t.change->>'part_id')::int END AS part_id
        ) spot
        LEFT JOIN position po ON po.id = spot.position_id LEFT JOIN part pa ON pa.id = spot.part_id
        LEFT JOIN install i ON i.unit_id = ${unitId}::int AND i.position_id = spot.position_id AND i.place = spot.place
        WHERE (t.place, t.part) > (${place}::bigint, ${part}::int)
        ORDER BY t.place, t.part LIMIT ${limit}::int`;
    },
    knownChanges: (unitId) => knownChanges(db, unitId),
  };
}
