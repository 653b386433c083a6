-- The trail: what was changed, by whom, in one chain. Each row carries the hash of the one before, so that a changed,
-- removed or slipped-in row is found. Rows are written by the database itself, in the transaction of the change, as the
-- last thing before it commits: no program can forget one, and the chain is held for the shortest time there is.

-- CreateTable
CREATE TABLE "audit_entry" (
    "id" BIGINT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "person_id" INTEGER,
    "act" TEXT NOT NULL,
    "noun" TEXT NOT NULL,
    "row_key" TEXT NOT NULL,
    "unit_id" INTEGER,
    "revision" INTEGER,
    "change" JSONB NOT NULL,
    "prev_hash" BYTEA NOT NULL,
    "row_hash" BYTEA NOT NULL,

    CONSTRAINT "audit_entry_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "audit_entry_unit_id_id_idx" ON "audit_entry"("unit_id", "id");

-- DropIndex
DROP INDEX "verdict_change_recheck_id_idx";

-- CreateIndex
CREATE INDEX "verdict_change_recheck_id_unit_id_idx" ON "verdict_change"("recheck_id", "unit_id");

-- What a row's hash is made over, besides the hash before it: every column, in order, as one JSON array.
CREATE FUNCTION audit_canonical(e audit_entry) RETURNS text LANGUAGE sql STABLE AS $$
  SELECT jsonb_build_array(e.id, (extract(epoch FROM e.at) * 1000)::bigint, e.person_id, e.act, e.noun, e.row_key,
                           e.unit_id, e.revision, e.change)::text
$$;

-- Puts a row at the end of the chain. One transaction at a time may; the next one waits until this one has ended.
CREATE FUNCTION audit_append(act text, noun text, row_key text, unit_id int, change jsonb) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER AS $$
DECLARE
  entry public.audit_entry;
BEGIN
  PERFORM pg_advisory_xact_lock(4780005);
  SELECT last.id + 1, last.row_hash INTO entry.id, entry.prev_hash
    FROM public.audit_entry last ORDER BY last.id DESC LIMIT 1;
  IF NOT FOUND THEN
    entry.id := 1;
    entry.prev_hash := sha256('');
  END IF;
  entry.at := clock_timestamp();
  entry.person_id := nullif(current_setting('revright.person', true), '')::int;
  entry.act := act;
  entry.noun := noun;
  entry.row_key := row_key;
  entry.unit_id := unit_id;
  SELECT max(r.id) INTO entry.revision FROM public.rulebook_revision r;
  entry.change := change;
  entry.row_hash := sha256(entry.prev_hash || convert_to(public.audit_canonical(entry), 'UTF8'));
  INSERT INTO public.audit_entry SELECT entry.*;
END $$;
REVOKE EXECUTE ON FUNCTION audit_append(text, text, text, int, jsonb) FROM PUBLIC;

-- The unit a row is about, where it is about one.
CREATE FUNCTION audit_unit(noun text, r jsonb) RETURNS int LANGUAGE plpgsql STABLE SECURITY DEFINER AS $$
BEGIN
  RETURN CASE
    WHEN noun = 'unit' THEN (r->>'id')::int
    WHEN r ? 'unit_id' THEN (r->>'unit_id')::int
    WHEN r ? 'callback_id' THEN (SELECT c.unit_id FROM public.callback c WHERE c.id = (r->>'callback_id')::int)
    WHEN r ? 'ticket_id' THEN (SELECT t.unit_id FROM public.ticket t WHERE t.id = (r->>'ticket_id')::int)
  END;
END $$;

-- One row of a table was written. Of a change only what differs is kept, as [before, after]. Columns named in the
-- trigger's arguments are personal or secret: that they changed is kept, what they hold is not, so that an owner can
-- be forgotten while the record stays whole.
CREATE FUNCTION audit_row() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
DECLARE
  was jsonb := CASE WHEN TG_OP <> 'INSERT' THEN to_jsonb(OLD) END;
  is_now jsonb := CASE WHEN TG_OP <> 'DELETE' THEN to_jsonb(NEW) END;
  whole jsonb := coalesce(is_now, was);
  change jsonb := whole;
  kept_out text;
BEGIN
  IF TG_OP = 'UPDATE' THEN
    SELECT jsonb_object_agg(n.key, jsonb_build_array(was->n.key, n.value)) INTO change
      FROM jsonb_each(is_now) n WHERE n.value IS DISTINCT FROM was->n.key;
    IF change IS NULL THEN RETURN NULL; END IF;
  END IF;
  FOREACH kept_out IN ARRAY coalesce(TG_ARGV, '{}') LOOP
    IF change ? kept_out THEN change := jsonb_set(change, ARRAY[kept_out], '"not kept here"'); END IF;
  END LOOP;
  PERFORM public.audit_append(lower(TG_OP), TG_TABLE_NAME, coalesce(whole->>'id', whole->>'key'),
                              public.audit_unit(TG_TABLE_NAME, whole), change);
  RETURN NULL;
END $$;

-- The verdicts a chunk of a recheck changed, as one text: what its row in the trail keeps the hash of.
CREATE FUNCTION verdict_digest(recheck int, low int, high int) RETURNS text LANGUAGE sql STABLE AS $$
  SELECT encode(sha256(convert_to(coalesce(string_agg(
           jsonb_build_array(v.id, v.unit_id, v.position_id, v.place, v.ticket_id, v.part_id, v.from_verdict,
                             v.to_verdict, v.revision)::text, E'\n' ORDER BY v.id), ''), 'UTF8')), 'hex')
  FROM verdict_change v WHERE v.recheck_id = recheck AND v.unit_id BETWEEN low AND high
$$;

-- A recheck changes verdicts by the hundred thousand. They stand in verdict_change, to which rows are only ever added;
-- the trail keeps one row for each chunk, with how many there are and the hash of them all.
CREATE FUNCTION audit_chunk() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
BEGIN
  PERFORM public.audit_append(NEW.state, 'recheck_chunk', NEW.id::text, NULL, jsonb_build_object(
    'recheck', NEW.recheck_id, 'n', NEW.n, 'from', NEW.from_unit, 'to', NEW.to_unit, 'judged', NEW.judged,
    'changed', NEW.changed, 'digest', public.verdict_digest(NEW.recheck_id, NEW.from_unit, NEW.to_unit)));
  RETURN NULL;
END $$;

-- A whole shop is loaded in one piece by the owner of the tables, who says so and adds one row for all of it. The
-- programs do not run as the owner, and what they say is not listened to.
CREATE FUNCTION audit_wanted() RETURNS boolean LANGUAGE sql STABLE AS $$
  SELECT coalesce(current_setting('revright.loading', true), '') <> 'on' OR current_user = 'revright_app'
$$;

DO $$
DECLARE
  watched text;
  kept_out text;
BEGIN
  FOR watched, kept_out IN VALUES
    ('location', ''), ('bench', ''), ('person', '''password_hash'''), ('setting', ''), ('serial_scheme', ''),
    ('standard_edition', ''), ('source', ''), ('fit_rule', ''), ('rulebook_revision', ''), ('supersession', ''),
    ('part', ''), ('owner', '''name'', ''phone'', ''email'', ''address'''), ('unit', ''), ('evidence', ''),
    ('ticket', '''authorisation'''), ('place_record', ''), ('pick', ''), ('flag', ''), ('callback', ''),
    ('callback_reason', ''), ('callback_attempt', '''note''')
  LOOP
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON %I
      DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row(%s)',
      watched, kept_out);
  END LOOP;
END $$;
CREATE CONSTRAINT TRIGGER audit AFTER INSERT ON verdict_change DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (NEW.recheck_id IS NULL AND audit_wanted()) EXECUTE FUNCTION audit_row();
CREATE CONSTRAINT TRIGGER audit AFTER INSERT ON recheck DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row();
CREATE CONSTRAINT TRIGGER audit AFTER UPDATE ON recheck_chunk DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD.state = 'waiting' AND NEW.state <> 'waiting') EXECUTE FUNCTION audit_chunk();

-- The trail and what it stands on are only ever added to, whoever asks.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is only ever added to', TG_TABLE_NAME USING ERRCODE = 'insufficient_privilege';
END $$;
CREATE TRIGGER only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON audit_entry
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON verdict_change
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- The programs work as a role that owns nothing: it reads and writes the shop, and of the trail it may only read.
-- Where the owner of the database may not make roles, they go on as the owner, and only the triggers above guard.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN
    CREATE ROLE revright_app NOLOGIN;
  END IF;
EXCEPTION
  WHEN insufficient_privilege THEN RAISE NOTICE 'No role of its own for the programs: this user may not make one.';
  WHEN duplicate_object OR unique_violation THEN NULL;
END $$;
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  GRANT revright_app TO CURRENT_USER;
  GRANT USAGE ON SCHEMA public TO revright_app;
  GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public TO revright_app;
  GRANT USAGE, SELECT, UPDATE ON ALL SEQUENCES IN SCHEMA public TO revright_app;
  ALTER DEFAULT PRIVILEGES IN SCHEMA public GRANT SELECT, INSERT, UPDATE, DELETE ON TABLES TO revright_app;
  ALTER DEFAULT PRIVILEGES IN SCHEMA public GRANT USAGE, SELECT, UPDATE ON SEQUENCES TO revright_app;
  REVOKE INSERT, UPDATE, DELETE ON audit_entry FROM revright_app;
  REVOKE UPDATE, DELETE ON verdict_change FROM revright_app;
  IF to_regclass('_prisma_migrations') IS NOT NULL THEN REVOKE ALL ON _prisma_migrations FROM revright_app; END IF;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;
