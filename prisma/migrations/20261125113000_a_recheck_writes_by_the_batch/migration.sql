-- A recheck raises flags and opens callbacks by the thousand. A chained row for each would take longer than all its other
-- work, with every other change of the shop waiting behind it. What one statement of a recheck wrote is therefore kept
-- as one batch, with a hash, and the trail holds one row for the batch. Whether a row goes into a batch or has a row of
-- its own is told by its recheck_id alone: nothing can be written that falls between the two.

-- AlterTable
ALTER TABLE "callback_reason" ADD COLUMN "recheck_id" INTEGER;

-- CreateTable
CREATE TABLE "audit_batch" (
    "id" BIGSERIAL NOT NULL,
    "act" TEXT NOT NULL,
    "noun" TEXT NOT NULL,
    "units" INTEGER[] NOT NULL,
    "rows" JSONB NOT NULL,
    "digest" TEXT NOT NULL,

    CONSTRAINT "audit_batch_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "audit_batch_units_idx" ON "audit_batch" USING GIN ("units");

-- From a batch, or a chunk, to the row of the trail that stands for it.
CREATE INDEX "audit_entry_stands_for" ON "audit_entry" ("noun", "row_key") WHERE "change" ? 'digest';

-- What the row of a batch in the trail keeps the hash of: everything in it.
CREATE FUNCTION audit_batch_digest(act text, noun text, units int[], rows jsonb) RETURNS text LANGUAGE sql IMMUTABLE AS $$
  SELECT encode(sha256(convert_to(jsonb_build_array(act, noun, units, rows)::text, 'UTF8')), 'hex')
$$;

-- A statement has written rows of which some name the recheck that wrote them last. Of a change only what differs is
-- kept, as [before, after]. The statements run anew each time, since a plan for three rows would not do for thousands.
CREATE FUNCTION audit_written() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
DECLARE
  unit text := CASE WHEN TG_TABLE_NAME = 'callback_reason'
    THEN '(SELECT c.unit_id FROM public.callback c WHERE c.id = w.callback_id)' ELSE 'w.unit_id' END;
  units int[];
  rows jsonb;
BEGIN
  IF TG_OP = 'INSERT' THEN
    EXECUTE format('SELECT array_agg(DISTINCT r.unit), jsonb_agg(jsonb_build_object(''unit'', r.unit, ''change'', r.change) ORDER BY r.id)
      FROM (SELECT w.id, %s AS unit, to_jsonb(w) AS change FROM written w WHERE w.recheck_id IS NOT NULL) r', unit)
      INTO units, rows;
  ELSE
    EXECUTE format('SELECT array_agg(DISTINCT r.unit),
             jsonb_agg(jsonb_build_object(''unit'', r.unit, ''change'', r.change || jsonb_build_object(''id'', r.id)) ORDER BY r.id)
      FROM (SELECT w.id, %s AS unit, d.change
            FROM written w JOIN was o ON o.id = w.id,
                 LATERAL (SELECT to_jsonb(o) AS was, to_jsonb(w) AS is_now) j,
                 LATERAL (SELECT jsonb_object_agg(n.key, jsonb_build_array(j.was->n.key, n.value)) AS change
                          FROM jsonb_each(j.is_now) n WHERE n.value IS DISTINCT FROM j.was->n.key) d
            WHERE w.recheck_id IS NOT NULL AND w.recheck_id IS DISTINCT FROM o.recheck_id) r', unit)
      INTO units, rows;
  END IF;
  IF rows IS NOT NULL THEN
    INSERT INTO public.audit_batch (act, noun, units, rows, digest)
    VALUES (lower(TG_OP), TG_TABLE_NAME, units, rows, public.audit_batch_digest(lower(TG_OP), TG_TABLE_NAME, units, rows));
  END IF;
  RETURN NULL;
END $$;

-- At the end of the transaction, as all of the trail, the batch gets its row in the chain.
CREATE FUNCTION audit_batch_chained() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
BEGIN
  PERFORM public.audit_append(NEW.act, NEW.noun, 'batch ' || NEW.id, NULL, jsonb_build_object(
    'batch', NEW.id, 'rows', jsonb_array_length(NEW.rows), 'digest', NEW.digest));
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER chained AFTER INSERT ON audit_batch DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION audit_batch_chained();
CREATE TRIGGER only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON audit_batch
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

DO $$
DECLARE
  watched text;
BEGIN
  FOREACH watched IN ARRAY ARRAY['flag', 'callback', 'callback_reason'] LOOP
    EXECUTE format('DROP TRIGGER audit ON %I', watched);
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit_insert AFTER INSERT ON %I DEFERRABLE INITIALLY DEFERRED
      FOR EACH ROW WHEN (NEW.recheck_id IS NULL AND audit_wanted()) EXECUTE FUNCTION audit_row()', watched);
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit_update AFTER UPDATE ON %I DEFERRABLE INITIALLY DEFERRED
      FOR EACH ROW WHEN ((NEW.recheck_id IS NULL OR NEW.recheck_id IS NOT DISTINCT FROM OLD.recheck_id) AND audit_wanted())
      EXECUTE FUNCTION audit_row()', watched);
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit_delete AFTER DELETE ON %I DEFERRABLE INITIALLY DEFERRED
      FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row()', watched);
    EXECUTE format('CREATE TRIGGER audit_inserted AFTER INSERT ON %I REFERENCING NEW TABLE AS written
      FOR EACH STATEMENT WHEN (audit_wanted()) EXECUTE FUNCTION audit_written()', watched);
    EXECUTE format('CREATE TRIGGER audit_updated AFTER UPDATE ON %I REFERENCING OLD TABLE AS was NEW TABLE AS written
      FOR EACH STATEMENT WHEN (audit_wanted()) EXECUTE FUNCTION audit_written()', watched);
  END LOOP;
END $$;

-- Of the batches, as of the trail, the programs may read and no more.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  REVOKE INSERT, UPDATE, DELETE ON audit_batch FROM revright_app;
  REVOKE ALL ON SEQUENCE audit_batch_id_seq FROM revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;
