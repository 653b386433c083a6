-- A chunk of a narrow recheck names its units, so that reading it never costs more than they do.
ALTER TABLE "recheck_chunk" ADD COLUMN     "units" INTEGER[] DEFAULT ARRAY[]::INTEGER[];

-- CreateIndex
CREATE INDEX "flag_unit_id_idx" ON "flag"("unit_id");
