import type { Figures } from '../../contracts';
import { formatDay, type DaySpan } from '../../day';
import type { Db } from '../db';
import { at } from './scope-sql';

/** How the callbacks opened in each bucket stand today. */
export function callbacksOverTime(
  db: Db,
  buckets: readonly DaySpan[],
  locationId: number | null,
  zone: string,
): Promise<Figures['callbacks']> {
  const days = JSON.stringify(buckets.map(({ from, to }) => ({ from: formatDay(from), to: formatDay(to) })));
  return db.$queryRaw`
    SELECT b."from", b."to", count(c.id)::int AS opened,
           count(c.id) FILTER (WHERE c.state = 'settled')::int AS done,
           count(c.id) FILTER (WHERE c.state = 'withdrawn')::int AS "notNeeded",
           count(c.id) FILTER (WHERE c.state IN ('open', 'booked'))::int AS waiting,
           round((percentile_cont(0.5) WITHIN GROUP (ORDER BY extract(epoch FROM c.closed_at - c.opened_at) / 86400)
             FILTER (WHERE c.state = 'settled'))::numeric, 1)::float AS "medianDays"
    FROM jsonb_to_recordset(${days}::jsonb) AS b("from" text, "to" text)
    LEFT JOIN (callback c JOIN owner o ON o.id = c.owner_id AND ${at('o.location_id', locationId)})
      ON c.opened_at >= b."from"::timestamp AT TIME ZONE ${zone}::text
     AND c.opened_at < b."to"::timestamp AT TIME ZONE ${zone}::text
    GROUP BY b."from", b."to" ORDER BY b."from"`;
}
