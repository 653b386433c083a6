-- A note for the next visit can be settled by a person, with a reason.

-- AlterTable
ALTER TABLE "unit_note" ADD COLUMN     "closed_by" INTEGER,
ADD COLUMN     "settled_part_id" INTEGER;

ALTER TABLE "unit_note" ADD CONSTRAINT "unit_note_settled" CHECK ("closed_by" IS NULL OR "closed_at" IS NOT NULL);

-- Rechecks write notes by the hundred thousand, and what they rest on is in the trail; what a person did stands in it
-- for itself.
CREATE CONSTRAINT TRIGGER audit AFTER UPDATE ON "unit_note" DEFERRABLE INITIALLY DEFERRED FOR EACH ROW
  WHEN (OLD."closed_by" IS DISTINCT FROM NEW."closed_by" AND audit_wanted()) EXECUTE FUNCTION audit_row();
