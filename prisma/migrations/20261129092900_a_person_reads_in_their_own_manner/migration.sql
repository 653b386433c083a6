-- AlterTable
ALTER TABLE "person" ADD COLUMN     "reading" JSONB;
