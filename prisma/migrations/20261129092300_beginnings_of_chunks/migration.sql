-- Judging that never comes to an end takes its worker with it and can count nothing itself.
ALTER TABLE "recheck_chunk" ADD COLUMN "begun" INTEGER NOT NULL DEFAULT 0;
