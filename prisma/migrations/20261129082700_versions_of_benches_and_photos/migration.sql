-- A bench's day and what stands under a photo are changed on the version that was seen.

-- AlterTable
ALTER TABLE "bench" ADD COLUMN     "version" INTEGER NOT NULL DEFAULT 1;

-- AlterTable
ALTER TABLE "photo" ADD COLUMN     "version" INTEGER NOT NULL DEFAULT 1;
