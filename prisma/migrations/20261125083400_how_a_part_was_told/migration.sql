-- AlterTable
ALTER TABLE "place_record" ADD COLUMN     "told" TEXT;
