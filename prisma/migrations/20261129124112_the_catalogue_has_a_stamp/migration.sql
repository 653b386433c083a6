-- CreateTable
CREATE TABLE "catalogue_stamp" (
    "shard" INTEGER NOT NULL,
    "n" BIGINT NOT NULL,

    CONSTRAINT "catalogue_stamp_pkey" PRIMARY KEY ("shard")
);

-- Whoever changes the catalogue counts up one of 64 rows, by his own session's number, so that two who do so at once seldom
-- wait for each other; the count is seen by others with the change itself. A statement that changed no row counts nothing.
CREATE FUNCTION catalogue_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT FROM written) THEN
    INSERT INTO catalogue_stamp AS s (shard, n) VALUES (pg_backend_pid() % 64, 1)
    ON CONFLICT (shard) DO UPDATE SET n = s.n + 1;
  END IF;
  RETURN NULL;
END $$;

DO $$
DECLARE
  stamped text;
BEGIN
  FOREACH stamped IN ARRAY ARRAY['maker', 'product_line', 'model', 'position', 'part', 'serial_scheme', 'standard_edition'] LOOP
    EXECUTE format('CREATE TRIGGER stamp_inserted AFTER INSERT ON %I REFERENCING NEW TABLE AS written
      FOR EACH STATEMENT EXECUTE FUNCTION catalogue_changed()', stamped);
    EXECUTE format('CREATE TRIGGER stamp_updated AFTER UPDATE ON %I REFERENCING NEW TABLE AS written
      FOR EACH STATEMENT EXECUTE FUNCTION catalogue_changed()', stamped);
    EXECUTE format('CREATE TRIGGER stamp_deleted AFTER DELETE ON %I REFERENCING OLD TABLE AS written
      FOR EACH STATEMENT EXECUTE FUNCTION catalogue_changed()', stamped);
  END LOOP;
END $$;
