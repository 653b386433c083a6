-- An owner can be forgotten: what is known of the person goes, the row and all that was done about the machines stay.

-- AlterTable
ALTER TABLE "owner" ADD COLUMN     "erased_at" TIMESTAMPTZ(3);
