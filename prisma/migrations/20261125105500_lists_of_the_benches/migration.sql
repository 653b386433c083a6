-- Each bench has an ordered list of what waits on it. A ticket names its bench and its rank there in its own row, so
-- that it stands on one list at most, once, whatever happens at the same time.

-- AlterTable
ALTER TABLE "bench" ADD COLUMN     "day_minutes" INTEGER NOT NULL DEFAULT 420;

-- AlterTable
ALTER TABLE "person" ADD COLUMN     "bench_id" INTEGER;

-- AlterTable
ALTER TABLE "ticket" ADD COLUMN     "bench_rank" BIGINT;

-- AddForeignKey
ALTER TABLE "person" ADD CONSTRAINT "person_bench_id_fkey" FOREIGN KEY ("bench_id") REFERENCES "bench"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- Tickets that are on a bench already keep the order they were shown in: the day promised, then age.
UPDATE "ticket" t SET "bench_rank" = n.rank * 1048576
FROM (SELECT "id", row_number() OVER (PARTITION BY "bench_id" ORDER BY "promised_on" NULLS LAST, "id") AS rank
      FROM "ticket" WHERE "bench_id" IS NOT NULL) n
WHERE t."id" = n."id";

-- On a bench there is a rank, off it there is none; no two open tickets share one.
ALTER TABLE "ticket" ADD CONSTRAINT "ticket_bench_has_rank" CHECK (("bench_id" IS NULL) = ("bench_rank" IS NULL));
CREATE UNIQUE INDEX "ticket_bench_order" ON "ticket" ("bench_id", "bench_rank") WHERE "closed_at" IS NULL;
ALTER TABLE "bench" ADD CONSTRAINT "bench_day" CHECK ("day_minutes" BETWEEN 0 AND 1440);
