-- What the owner was asked to agree to. A revised estimate is a new row; the old one stays as it was.

-- AlterTable
ALTER TABLE "ticket" ADD COLUMN     "labour_lines" JSONB NOT NULL DEFAULT '[]';

-- CreateTable
CREATE TABLE "estimate" (
    "id" SERIAL NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "revision" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "person_id" INTEGER,
    "lines" JSONB NOT NULL,
    "currency" TEXT NOT NULL,
    "tax_name" TEXT NOT NULL,
    "tax_basis_points" INTEGER NOT NULL,
    "tax_included" BOOLEAN NOT NULL,
    "net_minor" INTEGER NOT NULL,
    "tax_minor" INTEGER NOT NULL,
    "total_minor" INTEGER NOT NULL,

    CONSTRAINT "estimate_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "estimate_ticket_id_revision_key" ON "estimate"("ticket_id", "revision");

-- AddForeignKey
ALTER TABLE "estimate" ADD CONSTRAINT "estimate_ticket_id_fkey" FOREIGN KEY ("ticket_id") REFERENCES "ticket"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Labour that was written down as one figure becomes one line.
UPDATE "ticket" SET "labour_lines" = jsonb_build_array(jsonb_build_object(
    'kind', 'labour', 'what', 'Labour', 'minutes', "labour_minutes", 'minor', "labour_minor"))
WHERE "labour_minutes" > 0 OR "labour_minor" > 0;

ALTER TABLE "estimate" ADD CONSTRAINT "estimate_adds_up" CHECK ("net_minor" + "tax_minor" = "total_minor" AND "net_minor" >= 0 AND "tax_minor" >= 0);
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON "estimate"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row();
CREATE TRIGGER only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON "estimate"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- Tables made by another user than the one who gave the first grants get them here.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  GRANT SELECT, INSERT ON "estimate" TO revright_app;
  REVOKE UPDATE, DELETE ON "estimate" FROM revright_app;
  GRANT USAGE, SELECT, UPDATE ON SEQUENCE "estimate_id_seq" TO revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;
