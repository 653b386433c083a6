-- A part's bag is told by the number in its bar code.

-- CreateTable
CREATE TABLE "part_trade_number" (
    "id" SERIAL NOT NULL,
    "gtin" TEXT NOT NULL,
    "part_id" INTEGER NOT NULL,
    "pack" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "part_trade_number_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "part_trade_number_gtin_key" ON "part_trade_number"("gtin");

-- CreateIndex
CREATE INDEX "part_trade_number_part_id_idx" ON "part_trade_number"("part_id");

-- AddForeignKey
ALTER TABLE "part_trade_number" ADD CONSTRAINT "part_trade_number_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE "part_trade_number" ADD CONSTRAINT "part_trade_number_gtin" CHECK ("gtin" ~ '^[0-9]{14}$');
ALTER TABLE "part_trade_number" ADD CONSTRAINT "part_trade_number_pack" CHECK ("pack" BETWEEN 1 AND 10000);
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON "part_trade_number"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row();

DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  GRANT SELECT, INSERT, UPDATE, DELETE ON "part_trade_number" TO revright_app;
  GRANT USAGE, SELECT, UPDATE ON SEQUENCE "part_trade_number_id_seq" TO revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;
