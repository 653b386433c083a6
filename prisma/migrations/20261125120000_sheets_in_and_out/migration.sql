-- CreateTable
CREATE TABLE "sheet" (
    "id" SERIAL NOT NULL,
    "person_id" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "file_name" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'reading',
    "version" INTEGER NOT NULL DEFAULT 1,
    "format" TEXT NOT NULL DEFAULT 'csv',
    "encoding" TEXT,
    "encoding_certain" BOOLEAN NOT NULL DEFAULT true,
    "delimiter" TEXT,
    "headings" JSONB NOT NULL DEFAULT '[]',
    "looks" JSONB NOT NULL DEFAULT '[]',
    "day_order" TEXT,
    "choice" JSONB NOT NULL DEFAULT '{}',
    "rows" INTEGER NOT NULL DEFAULT 0,
    "doing" TEXT,
    "progress" INTEGER NOT NULL DEFAULT 0,
    "outcome" JSONB,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "done_at" TIMESTAMPTZ(3),

    CONSTRAINT "sheet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sheet_row" (
    "sheet_id" INTEGER NOT NULL,
    "n" INTEGER NOT NULL,
    "cells" JSONB NOT NULL,
    "key" TEXT,
    "values" JSONB,
    "outcome" TEXT,
    "problems" JSONB,

    CONSTRAINT "sheet_row_pkey" PRIMARY KEY ("sheet_id","n")
);

-- CreateIndex
CREATE INDEX "sheet_person_id_idx" ON "sheet"("person_id");

-- CreateIndex
CREATE INDEX "sheet_row_sheet_id_key_n_idx" ON "sheet_row"("sheet_id", "key", "n");

-- CreateIndex
CREATE INDEX "ticket_number_start" ON "ticket"("number" text_pattern_ops);

-- AddForeignKey
ALTER TABLE "sheet_row" ADD CONSTRAINT "sheet_row_sheet_id_fkey" FOREIGN KEY ("sheet_id") REFERENCES "sheet"("id") ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE "sheet" ADD CONSTRAINT "sheet_state" CHECK ("state" IN ('reading', 'read', 'looked', 'done'));
ALTER TABLE "sheet_row" ADD CONSTRAINT "sheet_row_outcome" CHECK ("outcome" IN ('add', 'change', 'same'));

-- Rows are worked on and thrown away: they need no log, and a million of them would fill it.
ALTER TABLE "sheet_row" SET UNLOGGED;

-- That a file was brought, looked at and imported stands in the trail, and so does each row of the shop it changed; how
-- far the work is does not.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR DELETE ON "sheet" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row('file_name');
CREATE CONSTRAINT TRIGGER audit_state AFTER UPDATE ON "sheet" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD.state IS DISTINCT FROM NEW.state AND audit_wanted()) EXECUTE FUNCTION audit_row('file_name');

-- Tickets of another book come in under numbers of their own, in any order: the next number of a year follows the highest
-- of that year, not the one that was written last.
CREATE OR REPLACE FUNCTION next_ticket_number(prefix text) RETURNS text LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = public, pg_temp AS $$
  SELECT prefix || lpad((coalesce(max(substr(last.number, 4)::int), 0) + 1)::text, 4, '0')
  FROM ticket last
  WHERE last.number LIKE prefix || '%' AND substr(last.number, 4) ~ '^[0-9]{1,8}$'
$$;
