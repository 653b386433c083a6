-- AlterTable
ALTER TABLE "audit_entry" ADD COLUMN     "token_id" INTEGER;

-- CreateTable
CREATE TABLE "api_token" (
    "id" SERIAL NOT NULL,
    "name" TEXT NOT NULL,
    "prefix" TEXT NOT NULL,
    "token_hash" TEXT NOT NULL,
    "scopes" TEXT[],
    "person_id" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "last_used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "api_token_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "api_token_token_hash_key" ON "api_token"("token_hash");

-- CreateIndex
CREATE INDEX "api_token_person_id_idx" ON "api_token"("person_id");

-- AddForeignKey
ALTER TABLE "api_token" ADD CONSTRAINT "api_token_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- That a token was made, and that it was revoked, stands in the trail; that it was used is told by what it did.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR DELETE OR UPDATE OF revoked_at, name, scopes, expires_at, person_id ON "api_token"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row('token_hash');

-- What a program did in somebody's name stands in the trail with its token, and the hash is made over that too. Rows
-- without a token hash as before, so that the chain up to now stays what it was.
CREATE OR REPLACE FUNCTION audit_canonical(e audit_entry) RETURNS text LANGUAGE sql STABLE AS $$
  SELECT (jsonb_build_array(e.id, (extract(epoch FROM e.at) * 1000)::bigint, e.person_id, e.act, e.noun, e.row_key,
                            e.unit_id, e.revision, e.change)
          || CASE WHEN e.token_id IS NULL THEN '[]'::jsonb ELSE jsonb_build_array(e.token_id) END)::text
$$;

CREATE OR REPLACE FUNCTION audit_append(act text, noun text, row_key text, unit_id int, change jsonb) RETURNS void
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
  entry.token_id := nullif(current_setting('revright.token', true), '')::int;
  entry.act := act;
  entry.noun := noun;
  entry.row_key := row_key;
  entry.unit_id := unit_id;
  SELECT max(r.id) INTO entry.revision FROM public.rulebook_revision r;
  entry.change := change;
  entry.row_hash := sha256(entry.prev_hash || convert_to(public.audit_canonical(entry), 'UTF8'));
  INSERT INTO public.audit_entry SELECT entry.*;
END $$;
