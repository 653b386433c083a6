-- Installs that are judged alike share one row that says why, so that a bulletin which changes a hundred thousand verdicts
-- writes its reasons down as often as there are different ones. What was kept in the install before stays readable there
-- until the install is judged otherwise.

-- AlterTable
ALTER TABLE "install" ADD COLUMN     "asked_unit" JSONB,
ADD COLUMN     "judgement_id" INTEGER;

-- CreateTable
CREATE TABLE "judgement" (
    "id" SERIAL NOT NULL,
    "body" JSONB NOT NULL,

    CONSTRAINT "judgement_pkey" PRIMARY KEY ("id")
);

-- A judgement was asked with the facts that the unit had then. For as long as they are the unit's they need not be kept
-- with it; when they change, what its installs were judged by is kept first.
CREATE FUNCTION asked_unit_stays() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE install SET asked_unit = jsonb_build_object(
    'model', (SELECT m.number FROM model m WHERE m.id = OLD.model_id), 'options', OLD.options,
    'serialScheme', OLD.serial_scheme, 'serialKey', OLD.serial_key, 'built', OLD.built::text)
  WHERE unit_id = OLD.id AND judgement_id IS NOT NULL AND asked_unit IS NULL;
  RETURN NULL;
END $$;
CREATE TRIGGER asked_unit_stays AFTER UPDATE OF model_id, options, serial_scheme, serial_key, built ON unit
  FOR EACH ROW WHEN ((OLD.model_id, OLD.options, OLD.serial_scheme, OLD.serial_key, OLD.built)
                     IS DISTINCT FROM (NEW.model_id, NEW.options, NEW.serial_scheme, NEW.serial_key, NEW.built))
  EXECUTE FUNCTION asked_unit_stays();

-- Judgements are only ever added, and read by whoever shares them.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  REVOKE UPDATE, DELETE ON "judgement" FROM revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;
