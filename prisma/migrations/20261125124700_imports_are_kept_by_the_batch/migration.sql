-- An import writes rows by the hundred thousand. A chained row for each took longer than all its other work, with every
-- other change of the shop waiting behind it. As with a recheck, what one statement of an import wrote is kept as one
-- batch, whole and with a hash, and the trail holds one row for the batch.

-- CreateTable
CREATE TABLE "audit_by_batch" (
    "xact" BIGINT NOT NULL,
    "begun" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "audit_by_batch_pkey" PRIMARY KEY ("xact")
);

-- From here to its end, this transaction's rows are kept by the batch. That cannot be taken back: a batch is written
-- where the mark stands, and a row goes without one of its own only where mark and setting both stand. So a setting
-- that is changed in the middle of a statement leads to a row that is kept twice, never to one that is not kept.
CREATE FUNCTION audit_begin_batches() RETURNS void LANGUAGE plpgsql SECURITY DEFINER
SET search_path = public, pg_temp AS $$
BEGIN
  DELETE FROM audit_by_batch WHERE begun < now() - INTERVAL '1 day';
  INSERT INTO audit_by_batch (xact) VALUES (pg_current_xact_id()::text::bigint) ON CONFLICT DO NOTHING;
  PERFORM set_config('revright.by_batch', 'on', true);
END $$;
REVOKE EXECUTE ON FUNCTION audit_begin_batches() FROM PUBLIC;

-- Does the mark stand?
CREATE FUNCTION audit_marked() RETURNS boolean LANGUAGE plpgsql STABLE SECURITY DEFINER AS $$
BEGIN
  RETURN EXISTS (SELECT FROM public.audit_by_batch b WHERE b.xact = pg_current_xact_id()::text::bigint);
END $$;
-- Asked for every row, so the setting, which costs nothing, is asked first.
CREATE FUNCTION audit_in_batch() RETURNS boolean LANGUAGE plpgsql STABLE AS $$
BEGIN
  RETURN coalesce(current_setting('revright.by_batch', true), '') = 'on' AND public.audit_marked();
END $$;

-- The change without what columns of that name hold.
CREATE FUNCTION audit_without(change jsonb, kept_out text[]) RETURNS jsonb LANGUAGE sql IMMUTABLE AS $$
  SELECT change || coalesce((SELECT jsonb_object_agg(k, 'not kept here'::text) FROM unnest(kept_out) k WHERE change ? k), '{}')
$$;

-- A statement of such a transaction has written rows. Of a change only what differs is kept, as [before, after]; columns
-- named in the trigger's arguments are personal, as with audit_row.
CREATE FUNCTION audit_statement() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
DECLARE
  unit text := CASE TG_TABLE_NAME WHEN 'unit' THEN 'w.id' WHEN 'owner' THEN 'NULL::int' WHEN 'part' THEN 'NULL::int'
    ELSE 'w.unit_id' END;
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
  kept_out text;
BEGIN
  FOR watched, kept_out IN VALUES
    ('part', ''), ('owner', '''name'', ''phone'', ''email'', ''address'''), ('unit', ''), ('evidence', ''),
    ('ticket', '''authorisation'''), ('place_record', '')
  LOOP
    EXECUTE format('DROP TRIGGER audit ON %I', watched);
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE ON %I DEFERRABLE INITIALLY DEFERRED
      FOR EACH ROW WHEN (audit_wanted() AND NOT audit_in_batch()) EXECUTE FUNCTION audit_row(%s)', watched, kept_out);
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit_delete AFTER DELETE ON %I DEFERRABLE INITIALLY DEFERRED
      FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row(%s)', watched, kept_out);
    EXECUTE format('CREATE TRIGGER audit_inserted AFTER INSERT ON %I REFERENCING NEW TABLE AS written
      FOR EACH STATEMENT WHEN (audit_wanted() AND audit_marked()) EXECUTE FUNCTION audit_statement(%s)', watched, kept_out);
    EXECUTE format('CREATE TRIGGER audit_updated AFTER UPDATE ON %I REFERENCING OLD TABLE AS was NEW TABLE AS written
      FOR EACH STATEMENT WHEN (audit_wanted() AND audit_marked()) EXECUTE FUNCTION audit_statement(%s)', watched, kept_out);
  END LOOP;
END $$;

-- The programs may say that a transaction begins to write by the batch, and of what says so they may read and no more.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  GRANT EXECUTE ON FUNCTION audit_begin_batches() TO revright_app;
  REVOKE INSERT, UPDATE, DELETE ON audit_by_batch FROM revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;

-- What becomes of each row is counted and needs not be kept with the row; only why one is rejected is.
ALTER TABLE "sheet_row" DROP COLUMN "outcome";
