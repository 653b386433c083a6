-- Rows that one statement of a recheck wrote differ in little more than their ids, and the same words were made into JSON,
-- hashed and kept for each of them. In a batch, rows now stand together that share all the rest: what they share once, and
-- beside it the columns in which they differ, each as one list. Batches written before stay as they are and are read as before.
--
-- A batch's rows are a list, either of { unit, change }, one for a row, or of { change, each }, one for rows that share the
-- change, where `each` holds lists of equal length: `unit`, and columns that belong to the change of the row.

-- What a batch says of one unit; each change with the id of the row.
CREATE FUNCTION audit_batch_rows(rows jsonb, of_unit int) RETURNS TABLE (change jsonb) LANGUAGE sql IMMUTABLE AS $$
  SELECT r->'change' FROM jsonb_array_elements(rows) r WHERE r ? 'unit' AND (r->>'unit')::int = of_unit
  UNION ALL
  SELECT (g->'change') || (SELECT jsonb_object_agg(own.key, own.value->(u.n::int - 1))
                           FROM jsonb_each(g->'each') own WHERE own.key <> 'unit')
  FROM jsonb_array_elements(rows) g, LATERAL jsonb_array_elements_text(g->'each'->'unit') WITH ORDINALITY AS u(unit, n)
  WHERE g ? 'each' AND u.unit::int = of_unit
$$;

-- How many rows a batch stands for.
CREATE FUNCTION audit_batch_count(rows jsonb) RETURNS int LANGUAGE sql IMMUTABLE AS $$
  SELECT coalesce(sum(CASE WHEN r ? 'each' THEN jsonb_array_length(r->'each'->'id') ELSE 1 END), 0)::int
  FROM jsonb_array_elements(rows) r
$$;

-- A statement has written rows of which some name the recheck that wrote them last. Of a change only what differs is
-- kept, as [before, after]. The statements run anew each time, since a plan for three rows would not do for thousands.
CREATE OR REPLACE FUNCTION audit_written() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
DECLARE
  of_reason boolean := TG_TABLE_NAME = 'callback_reason';
  unit text := CASE WHEN of_reason THEN 'c.unit_id' ELSE 'w.unit_id' END;
  its_callback text := CASE WHEN of_reason THEN 'JOIN public.callback c ON c.id = w.callback_id' ELSE '' END;
  -- In these nearly every new row differs from the others.
  own text[] := CASE TG_TABLE_NAME WHEN 'callback_reason' THEN '{id,callback_id,position_id,place,part_id}'
                                   WHEN 'callback' THEN '{id,unit_id,owner_id}'
                                   ELSE '{id,ticket_id,unit_id,position_id,place,part_id}' END;
  shared text[] := ARRAY(SELECT a.attname FROM pg_catalog.pg_attribute a WHERE a.attrelid = TG_RELID AND a.attnum > 0
                         AND NOT a.attisdropped AND a.attname <> ALL (CASE TG_OP WHEN 'INSERT' THEN own ELSE '{id}' END));
  names text := (SELECT string_agg(quote_ident(s), ', ') FROM unnest(shared) s);
  units int[];
  rows jsonb;
BEGIN
  IF TG_OP = 'INSERT' THEN
    EXECUTE format('
      WITH r AS MATERIALIZED (SELECT w.*, %s AS "its unit" FROM written w %s WHERE w.recheck_id IS NOT NULL),
      g AS (SELECT min(id) AS first, jsonb_build_object(%s) AS change,
                   jsonb_build_object(''unit'', array_agg("its unit" ORDER BY id), %s) AS each
            FROM r GROUP BY %s)
      SELECT (SELECT array_agg(DISTINCT "its unit") FROM r),
             (SELECT jsonb_agg(jsonb_build_object(''change'', change, ''each'', each) ORDER BY first) FROM g)',
      unit, its_callback, (SELECT string_agg(format('%L, %I', s, s), ', ') FROM unnest(shared) s),
      (SELECT string_agg(format('%L, array_agg(%I ORDER BY id)', o, o), ', ') FROM unnest(own) o), names)
      INTO units, rows;
  ELSE
    EXECUTE format('
      WITH r AS MATERIALIZED (
        SELECT w.id, %s AS "its unit", %s
        FROM written w JOIN was o ON o.id = w.id %s
        WHERE w.recheck_id IS NOT NULL AND w.recheck_id IS DISTINCT FROM o.recheck_id),
      g AS (SELECT min(id) AS first, jsonb_build_object(''unit'', array_agg("its unit" ORDER BY id),
                                                        ''id'', array_agg(id ORDER BY id)) AS each, %s
            FROM r GROUP BY %s)
      SELECT (SELECT array_agg(DISTINCT "its unit") FROM r),
             (SELECT jsonb_agg(jsonb_build_object(''change'', d.change, ''each'', g.each) ORDER BY g.first)
              FROM g, LATERAL (SELECT jsonb_object_agg(c.name, c.pair) AS change
                               FROM unnest($1, ARRAY[%s]) AS c(name, pair) WHERE c.pair IS NOT NULL) d)',
      unit, (SELECT string_agg(format('CASE WHEN o.%1$I IS DISTINCT FROM w.%1$I THEN jsonb_build_array(o.%1$I, w.%1$I) END AS %1$I', s), ', ')
             FROM unnest(shared) s),
      its_callback, names, names, names)
      INTO units, rows USING shared;
  END IF;
  IF rows IS NOT NULL THEN
    INSERT INTO public.audit_batch (act, noun, units, rows, digest)
    VALUES (lower(TG_OP), TG_TABLE_NAME, units, rows, public.audit_batch_digest(lower(TG_OP), TG_TABLE_NAME, units, rows));
  END IF;
  RETURN NULL;
END $$;

-- As before; the row in the chain says how many rows the batch stands for.
CREATE OR REPLACE FUNCTION audit_batch_chained() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
BEGIN
  PERFORM public.audit_append(NEW.act, NEW.noun, 'batch ' || NEW.id, NULL, jsonb_build_object(
    'batch', NEW.id, 'rows', public.audit_batch_count(NEW.rows), 'digest', NEW.digest));
  RETURN NULL;
END $$;
