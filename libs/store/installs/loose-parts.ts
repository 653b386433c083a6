import { Prisma } from '../generated/client';

/**
 * Loose parts of units as rows of `install`: picked on an open ticket and not fitted yet, or spares that went out with the
 * owner. Each stands at the positions it is meant for; its place is the id of its pick with a minus before it, so that no
 * place of a machine is ever taken for it. `of` is a condition on ticket `t`.
 */
export function looseParts(of: Prisma.Sql, zone: string): Prisma.Sql {
  return Prisma.sql`
    SELECT NULL::int AS id, k.ticket_id, s.position_id, -k.id AS place, k.part_id, '{}'::int[] AS candidates,
           (k.picked_at AT TIME ZONE ${zone}::text)::date - DATE '1970-01-01' AS fitted_on
    FROM ticket t
    JOIN pick k ON k.ticket_id = t.id
    JOIN unit n ON n.id = t.unit_id
    CROSS JOIN LATERAL unnest(CASE WHEN k.position_id IS NULL THEN k.spare_for ELSE ARRAY[k.position_id] END) s(position_id)
    JOIN position o ON o.id = s.position_id AND o.line_id = n.line_id
    WHERE ${of} AND ((k.state = 'picked' AND t.closed_at IS NULL) OR (k.state = 'given' AND k.purpose = 'spare'))`;
}
