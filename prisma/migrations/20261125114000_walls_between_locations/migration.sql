-- A second wall between locations. The programs ask for what a person may see; here the database refuses the rest, whatever
-- they ask for. Every transaction says in the setting revright.sight whose eyes it looks with: a location's id, 'all', or
-- nothing, and then nothing is seen.

-- What pages list in bulk carries its location itself, so that the wall is one comparison of a column. Who loads a whole
-- shop or mends one in a migration is not written into the trail row by row.
SELECT set_config('revright.loading', 'on', true), set_config('revright.sight', 'all', true);

-- AlterTable
ALTER TABLE "unit" ADD COLUMN     "location_id" INTEGER;
ALTER TABLE "install" ADD COLUMN     "location_id" INTEGER;
ALTER TABLE "flag" ADD COLUMN     "location_id" INTEGER;
ALTER TABLE "callback" ADD COLUMN     "location_id" INTEGER;

UPDATE "unit" u SET "location_id" = o."location_id" FROM "owner" o WHERE o."id" = u."owner_id";
UPDATE "install" i SET "location_id" = u."location_id" FROM "unit" u WHERE u."id" = i."unit_id";
UPDATE "flag" f SET "location_id" = t."location_id" FROM "ticket" t WHERE t."id" = f."ticket_id";
UPDATE "callback" c SET "location_id" = o."location_id" FROM "owner" o WHERE o."id" = c."owner_id";

ALTER TABLE "unit" ALTER COLUMN "location_id" SET NOT NULL;
ALTER TABLE "install" ALTER COLUMN "location_id" SET NOT NULL;
ALTER TABLE "flag" ALTER COLUMN "location_id" SET NOT NULL;
ALTER TABLE "callback" ALTER COLUMN "location_id" SET NOT NULL;

-- The board counts open flags from this index alone.
DROP INDEX "flag_one_open_per_place";
CREATE UNIQUE INDEX "flag_one_open_per_place" ON "flag" ("ticket_id", "position_id", "place") INCLUDE ("location_id")
  WHERE state = 'open';

-- Filled in where it is not given; a unit goes where its owner is, and what it holds goes with it.
CREATE FUNCTION fill_location() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.location_id := CASE TG_TABLE_NAME
    WHEN 'install' THEN (SELECT u.location_id FROM unit u WHERE u.id = (to_jsonb(NEW)->>'unit_id')::int)
    WHEN 'flag' THEN (SELECT t.location_id FROM ticket t WHERE t.id = (to_jsonb(NEW)->>'ticket_id')::int)
    ELSE (SELECT o.location_id FROM owner o WHERE o.id = (to_jsonb(NEW)->>'owner_id')::int)
  END;
  RETURN NEW;
END $$;
CREATE FUNCTION move_installs() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE install SET location_id = NEW.location_id WHERE unit_id = NEW.id;
  RETURN NULL;
END $$;
CREATE TRIGGER location BEFORE INSERT ON unit FOR EACH ROW WHEN (NEW.location_id IS NULL) EXECUTE FUNCTION fill_location();
CREATE TRIGGER location BEFORE INSERT ON install FOR EACH ROW WHEN (NEW.location_id IS NULL) EXECUTE FUNCTION fill_location();
CREATE TRIGGER location BEFORE INSERT ON flag FOR EACH ROW WHEN (NEW.location_id IS NULL) EXECUTE FUNCTION fill_location();
CREATE TRIGGER location BEFORE INSERT ON callback FOR EACH ROW WHEN (NEW.location_id IS NULL) EXECUTE FUNCTION fill_location();
CREATE TRIGGER other_location BEFORE UPDATE OF owner_id ON unit
  FOR EACH ROW WHEN (NEW.owner_id <> OLD.owner_id) EXECUTE FUNCTION fill_location();
CREATE TRIGGER other_location_of_installs AFTER UPDATE OF owner_id ON unit
  FOR EACH ROW WHEN (NEW.location_id <> OLD.location_id) EXECUTE FUNCTION move_installs();

-- Whose eyes. In a policy they stand in a SELECT of their own, so that they are asked once for a statement, not for a row.
CREATE FUNCTION sees_all() RETURNS boolean LANGUAGE sql STABLE PARALLEL SAFE AS $$
  SELECT coalesce(current_setting('revright.sight', true) = 'all', false)
$$;
CREATE FUNCTION sees_location() RETURNS int LANGUAGE sql STABLE PARALLEL SAFE AS $$
  SELECT CASE WHEN current_setting('revright.sight', true) ~ '^[0-9]{1,9}$' THEN current_setting('revright.sight', true)::int END
$$;

DO $$
DECLARE
  walled text;
  parent text;
  link text;
BEGIN
  FOREACH walled IN ARRAY ARRAY['owner', 'unit', 'install', 'ticket', 'flag', 'callback'] LOOP
    EXECUTE format('CREATE POLICY wall ON %I USING ((SELECT sees_all()) OR location_id = (SELECT sees_location()))', walled);
  END LOOP;
  -- What hangs on one of those is seen where that one is.
  FOR walled, parent, link IN VALUES
    ('evidence', 'unit', 'unit_id'), ('unit_note', 'unit', 'unit_id'),
    ('place_record', 'ticket', 'ticket_id'), ('pick', 'ticket', 'ticket_id'), ('ticket_event', 'ticket', 'ticket_id'),
    ('verdict_change', 'ticket', 'ticket_id'),
    ('callback_reason', 'callback', 'callback_id'), ('callback_attempt', 'callback', 'callback_id')
  LOOP
    EXECUTE format('CREATE POLICY wall ON %I USING ((SELECT sees_all()) OR EXISTS (SELECT FROM %I p WHERE p.id = %I))',
      walled, parent, link);
  END LOOP;
  FOREACH walled IN ARRAY ARRAY['owner', 'unit', 'install', 'ticket', 'flag', 'callback', 'evidence', 'unit_note',
    'place_record', 'pick', 'ticket_event', 'verdict_change', 'callback_reason', 'callback_attempt'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', walled);
  END LOOP;
END $$;

-- The trail holds rows of every location. Not forced: the functions that write it must see its end.
CREATE POLICY wall ON audit_entry USING ((SELECT sees_all()));
CREATE POLICY wall ON audit_batch USING ((SELECT sees_all()));
ALTER TABLE audit_entry ENABLE ROW LEVEL SECURITY;
ALTER TABLE audit_batch ENABLE ROW LEVEL SECURITY;

-- Numbers of tickets run through the whole shop, so the last one is asked for past the wall, and nothing else.
CREATE FUNCTION next_ticket_number(prefix text) RETURNS text LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = public, pg_temp AS $$
  SELECT prefix || lpad((coalesce(max(substr(last.number, 4)::int), 0) + 1)::text, 4, '0')
  FROM (SELECT number FROM ticket ORDER BY id DESC LIMIT 1) last
  WHERE starts_with(last.number, prefix) AND substr(last.number, 4) ~ '^[0-9]{1,8}$'
$$;

-- A policy keeps PostgreSQL from asking an index with an operator that might tell what it was asked about, and that is
-- every one by which a name is found by a piece of it. So tickets are found past the wall, by a function that looks to it
-- itself that it answers for no other location than may be seen. It answers ids; what is read by them stands behind
-- the wall again. Patterns are as LIKE takes them; one that is null finds nothing.
CREATE FUNCTION find_tickets(wanted_bare text, wanted_number text, wanted_serial text, wanted_name text,
                             wanted_digits text, wanted_parts text[], wanted_location int, most int)
RETURNS TABLE (id int, matched text, rank int) LANGUAGE plpgsql STABLE SECURITY DEFINER ROWS 20
SET search_path = public, pg_temp SET plan_cache_mode = 'force_custom_plan' AS $$
BEGIN
  IF NOT sees_all() AND wanted_location IS DISTINCT FROM sees_location() THEN RETURN; END IF;
  RETURN QUERY
    (SELECT t.id, 'number', 1 FROM ticket t
     WHERE (replace(t.number, '-', '') = wanted_bare OR t.number = wanted_number) AND t.location_id = wanted_location
     LIMIT most)
    UNION ALL
    (SELECT t.id, 'serial', 2 FROM unit u JOIN ticket t ON t.unit_id = u.id
     WHERE u.serial_search LIKE wanted_serial AND t.location_id = wanted_location ORDER BY t.id DESC LIMIT most)
    UNION ALL
    -- How many names hold a piece is guessed badly. One of three letters is looked up in the index, apart from the tickets;
    -- a shorter one, which no index knows and very many names hold, is met soon by going from the newest ticket back.
    (WITH named AS MATERIALIZED (
       SELECT o.id FROM owner o WHERE o.name ILIKE wanted_name AND length(wanted_name) >= length('%...%'))
     SELECT t.id, 'owner', 3 FROM named JOIN ticket t ON t.owner_id = named.id
     WHERE t.location_id = wanted_location ORDER BY t.id DESC LIMIT most)
    UNION ALL
    (SELECT t.id, 'owner', 3 FROM owner o JOIN ticket t ON t.owner_id = o.id
     WHERE o.name ILIKE wanted_name AND length(wanted_name) < length('%...%') AND t.location_id = wanted_location
     ORDER BY t.id DESC LIMIT most)
    UNION ALL
    (WITH called AS MATERIALIZED (
       SELECT o.id FROM owner o WHERE regexp_replace(o.phone, '[^0-9]', '', 'g') LIKE wanted_digits)
     SELECT t.id, 'phone', 4 FROM called JOIN ticket t ON t.owner_id = called.id
     WHERE t.location_id = wanted_location ORDER BY t.id DESC LIMIT most)
    UNION ALL
    (WITH held AS MATERIALIZED (
       SELECT DISTINCT r.ticket_id FROM part p JOIN place_record r ON r.part_id = p.id WHERE p.key = ANY(wanted_parts))
     SELECT own.id, 'part', 5 FROM held, LATERAL (
       -- Fenced off, or every ticket would be walked from the newest on.
       SELECT t.id FROM ticket t WHERE t.id = held.ticket_id AND t.location_id = wanted_location OFFSET 0) own
     ORDER BY own.id DESC LIMIT most);
END $$;
REVOKE EXECUTE ON FUNCTION next_ticket_number(text), find_tickets(text, text, text, text, text, text[], int, int) FROM PUBLIC;

-- The two functions belong to a role that may read these tables and nothing else, and to whom alone the wall is open.
-- Where no roles may be made they stay the owner's: behind the wall too, and slower.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_search') THEN
    CREATE ROLE revright_search NOLOGIN;
  END IF;
EXCEPTION
  WHEN insufficient_privilege THEN RAISE NOTICE 'No role of its own for the search: this user may not make one.';
  WHEN duplicate_object OR unique_violation THEN NULL;
END $$;
DO $$
DECLARE
  looked_in text;
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_search') THEN RETURN; END IF;
  GRANT revright_search TO CURRENT_USER;
  GRANT USAGE, CREATE ON SCHEMA public TO revright_search;
  GRANT SELECT ON owner, unit, ticket, part, place_record TO revright_search;
  FOREACH looked_in IN ARRAY ARRAY['owner', 'unit', 'ticket', 'place_record'] LOOP
    EXECUTE format('CREATE POLICY search ON %I FOR SELECT TO revright_search USING (true)', looked_in);
  END LOOP;
  ALTER FUNCTION next_ticket_number(text) OWNER TO revright_search;
  ALTER FUNCTION find_tickets(text, text, text, text, text, text[], int, int) OWNER TO revright_search;
  REVOKE CREATE ON SCHEMA public FROM revright_search;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_search is there, but not ours to use.';
END $$;
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  GRANT EXECUTE ON FUNCTION next_ticket_number(text), find_tickets(text, text, text, text, text, text[], int, int)
    TO revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;
-- The programs may have a login that changes no table. It may ask which migrations there are, to refuse to run on others.
CREATE FUNCTION migrations_applied() RETURNS SETOF text LANGUAGE plpgsql STABLE SECURITY DEFINER
SET search_path = public, pg_temp AS $$
BEGIN
  RETURN QUERY SELECT m.migration_name::text FROM _prisma_migrations m WHERE m.finished_at IS NOT NULL AND m.rolled_back_at IS NULL;
END $$;

SELECT audit_append('loaded', 'shop', 'units, flags and callbacks were given their location', NULL, '{}')
WHERE EXISTS (SELECT FROM unit);
