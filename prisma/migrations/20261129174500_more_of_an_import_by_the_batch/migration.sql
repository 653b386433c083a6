-- What else an import writes by the hundred thousand is kept by the batch too: supersessions, serial schemes, papers with
-- their rules, and the numbers of bags. A chained row for each took longer than all the rest of the import.

-- As before; none of these tables speaks of one unit.
CREATE OR REPLACE FUNCTION audit_statement() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
DECLARE
  unit text := CASE WHEN TG_TABLE_NAME = 'unit' THEN 'w.id'
    WHEN TG_TABLE_NAME IN ('evidence', 'ticket', 'place_record') THEN 'w.unit_id' ELSE 'NULL::int' END;
  kept_out text[] := coalesce(TG_ARGV, '{}');
  units int[];
  rows jsonb;
BEGIN
  IF TG_OP = 'INSERT' THEN
    EXECUTE format('SELECT array_agg(DISTINCT r.unit) FILTER (WHERE r.unit IS NOT NULL),
             jsonb_agg(jsonb_build_object(''unit'', r.unit, ''change'', r.change) ORDER BY r.id)
      FROM (SELECT w.id, %s AS unit, %s AS change FROM written w) r',
      unit, CASE WHEN cardinality(kept_out) = 0 THEN 'to_jsonb(w)' ELSE 'public.audit_without(to_jsonb(w), $1)' END)
      INTO units, rows USING kept_out;
  ELSE
    EXECUTE format('SELECT array_agg(DISTINCT r.unit) FILTER (WHERE r.unit IS NOT NULL),
             jsonb_agg(jsonb_build_object(''unit'', r.unit, ''change'', r.change || jsonb_build_object(''id'', r.id)) ORDER BY r.id)
      FROM (SELECT w.id, %s AS unit, public.audit_without(d.change, $1) AS change
            FROM written w JOIN was o ON o.id = w.id,
                 LATERAL (SELECT to_jsonb(o) AS was, to_jsonb(w) AS is_now) j,
                 LATERAL (SELECT jsonb_object_agg(n.key, jsonb_build_array(j.was->n.key, n.value)) AS change
                          FROM jsonb_each(j.is_now) n WHERE n.value IS DISTINCT FROM j.was->n.key) d
            WHERE d.change IS NOT NULL) r', unit)
      INTO units, rows USING kept_out;
  END IF;
  IF rows IS NOT NULL THEN
    units := coalesce(units, '{}');
    INSERT INTO public.audit_batch (act, noun, units, rows, digest)
    VALUES (lower(TG_OP), TG_TABLE_NAME, units, rows, public.audit_batch_digest(lower(TG_OP), TG_TABLE_NAME, units, rows));
  END IF;
  RETURN NULL;
END $$;

DO $$
DECLARE
  watched text;
BEGIN
  FOREACH watched IN ARRAY ARRAY['supersession', 'serial_scheme', 'source', 'fit_rule', 'part_trade_number'] LOOP
    EXECUTE format('DROP TRIGGER audit ON %I', watched);
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE ON %I DEFERRABLE INITIALLY DEFERRED
      FOR EACH ROW WHEN (audit_wanted() AND NOT audit_in_batch()) EXECUTE FUNCTION audit_row()', watched);
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit_delete AFTER DELETE ON %I DEFERRABLE INITIALLY DEFERRED
      FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row()', watched);
    EXECUTE format('CREATE TRIGGER audit_inserted AFTER INSERT ON %I REFERENCING NEW TABLE AS written
      FOR EACH STATEMENT WHEN (audit_wanted() AND audit_marked()) EXECUTE FUNCTION audit_statement()', watched);
    EXECUTE format('CREATE TRIGGER audit_updated AFTER UPDATE ON %I REFERENCING OLD TABLE AS was NEW TABLE AS written
      FOR EACH STATEMENT WHEN (audit_wanted() AND audit_marked()) EXECUTE FUNCTION audit_statement()', watched);
  END LOOP;
END $$;
