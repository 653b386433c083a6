-- Photos of intake, inspection and handover. The pictures themselves lie here too: they are small once scaled, one
-- backup holds everything, a photo and its row come and go in one transaction, and every process sees them.

-- CreateTable
CREATE TABLE "photo" (
    "id" SERIAL NOT NULL,
    "name" TEXT NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "stage" TEXT NOT NULL,
    "position_id" INTEGER,
    "place" INTEGER,
    "caption" TEXT NOT NULL DEFAULT '',
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "sent_sha256" TEXT NOT NULL,
    "on_sheet" BOOLEAN NOT NULL DEFAULT false,
    "taken_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "taken_by" INTEGER,
    "removed_at" TIMESTAMPTZ(3),
    "removed_by" INTEGER,
    "removed_why" TEXT,

    CONSTRAINT "photo_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "photo_file" (
    "photo_id" INTEGER NOT NULL,
    "size" TEXT NOT NULL,
    "data" BYTEA NOT NULL,

    CONSTRAINT "photo_file_pkey" PRIMARY KEY ("photo_id","size")
);

-- CreateIndex
CREATE UNIQUE INDEX "photo_name_key" ON "photo"("name");

-- CreateIndex
CREATE INDEX "photo_ticket_id_idx" ON "photo"("ticket_id");

-- AddForeignKey
ALTER TABLE "photo" ADD CONSTRAINT "photo_ticket_id_fkey" FOREIGN KEY ("ticket_id") REFERENCES "ticket"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "photo" ADD CONSTRAINT "photo_position_id_fkey" FOREIGN KEY ("position_id") REFERENCES "position"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "photo_file" ADD CONSTRAINT "photo_file_photo_id_fkey" FOREIGN KEY ("photo_id") REFERENCES "photo"("id") ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE "photo" ADD CONSTRAINT "photo_stage" CHECK ("stage" IN ('intake', 'inspection', 'handover'));
ALTER TABLE "photo_file" ADD CONSTRAINT "photo_file_size" CHECK ("size" IN ('full', 'thumb'));
-- JPEG is packed already; packing it again costs time and saves nothing.
ALTER TABLE "photo_file" ALTER COLUMN "data" SET STORAGE EXTERNAL;
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON "photo"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row('caption');

DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  GRANT SELECT, INSERT, UPDATE, DELETE ON "photo", "photo_file" TO revright_app;
  GRANT USAGE, SELECT, UPDATE ON SEQUENCE "photo_id_seq" TO revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;

-- Estimates and photos are seen where their ticket is.
CREATE POLICY wall ON "estimate" USING ((SELECT sees_all()) OR EXISTS (SELECT FROM "ticket" p WHERE p."id" = "ticket_id"));
CREATE POLICY wall ON "photo" USING ((SELECT sees_all()) OR EXISTS (SELECT FROM "ticket" p WHERE p."id" = "ticket_id"));
CREATE POLICY wall ON "photo_file" USING ((SELECT sees_all()) OR EXISTS (SELECT FROM "photo" p WHERE p."id" = "photo_id"));
ALTER TABLE "estimate" ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
ALTER TABLE "photo" ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
ALTER TABLE "photo_file" ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
