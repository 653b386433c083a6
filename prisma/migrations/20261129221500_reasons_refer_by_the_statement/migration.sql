-- Reasons of calls are written by the hundred thousand. Two foreign keys, each looked up for every row by itself, took twice
-- as long as all the rest of writing them. What they promise is promised by triggers that ask once for a statement: every
-- reason has its call and its source, and neither goes while a reason names it. The keys stay in the catalogue, not enforced.
-- Before PostgreSQL 18 they cannot, and there they go on as they are.

CREATE FUNCTION reasons_refer() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
  lost record;
BEGIN
  -- Whoever would remove one of these waits until this transaction has ended, as with a foreign key.
  PERFORM FROM callback c WHERE c.id IN (SELECT w.callback_id FROM written w) FOR KEY SHARE;
  PERFORM FROM source s WHERE s.id IN (SELECT w.source_id FROM written w) FOR KEY SHARE;
  SELECT w.id, w.callback_id, w.source_id INTO lost FROM written w
    LEFT JOIN callback c ON c.id = w.callback_id LEFT JOIN source s ON s.id = w.source_id
    WHERE c.id IS NULL OR s.id IS NULL LIMIT 1;
  IF FOUND THEN
    RAISE EXCEPTION 'reason % names callback % and source %, of which one is not there', lost.id, lost.callback_id, lost.source_id
      USING ERRCODE = 'foreign_key_violation', TABLE = 'callback_reason';
  END IF;
  RETURN NULL;
END $$;

CREATE FUNCTION reason_keeps_what_it_names() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'what a reason names, and the id of what it names, is not changed'
    USING ERRCODE = 'foreign_key_violation', TABLE = TG_TABLE_NAME;
END $$;

CREATE FUNCTION named_by_reasons() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
  named boolean;
BEGIN
  IF TG_TABLE_NAME = 'callback' THEN named := EXISTS (SELECT FROM callback_reason r WHERE r.callback_id = OLD.id);
  ELSE named := EXISTS (SELECT FROM callback_reason r WHERE r.source_id = OLD.id);
  END IF;
  IF named THEN
    RAISE EXCEPTION 'the % % is named by a reason of a callback', TG_TABLE_NAME, OLD.id
      USING ERRCODE = 'foreign_key_violation', TABLE = TG_TABLE_NAME;
  END IF;
  RETURN OLD;
END $$;

DO $$
DECLARE
  parent text;
BEGIN
  IF current_setting('server_version_num')::int < 180000 THEN RETURN; END IF;
  EXECUTE 'ALTER TABLE callback_reason ALTER CONSTRAINT callback_reason_callback_id_fkey NOT ENFORCED';
  EXECUTE 'ALTER TABLE callback_reason ALTER CONSTRAINT callback_reason_source_id_fkey NOT ENFORCED';
  CREATE TRIGGER refers AFTER INSERT ON callback_reason REFERENCING NEW TABLE AS written
    FOR EACH STATEMENT EXECUTE FUNCTION reasons_refer();
  CREATE TRIGGER keeps_what_it_names BEFORE UPDATE OF callback_id, source_id ON callback_reason
    FOR EACH ROW WHEN ((OLD.callback_id, OLD.source_id) IS DISTINCT FROM (NEW.callback_id, NEW.source_id))
    EXECUTE FUNCTION reason_keeps_what_it_names();
  FOREACH parent IN ARRAY ARRAY['callback', 'source'] LOOP
    EXECUTE format('CREATE TRIGGER named_by_reasons BEFORE DELETE ON %I
      FOR EACH ROW EXECUTE FUNCTION named_by_reasons()', parent);
    EXECUTE format('CREATE TRIGGER id_named_by_reasons BEFORE UPDATE OF id ON %I
      FOR EACH ROW WHEN (OLD.id <> NEW.id) EXECUTE FUNCTION reason_keeps_what_it_names()', parent);
  END LOOP;
END $$;
