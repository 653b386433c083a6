-- When a unit was bought, and for how many months from then its maker stands for it.

-- AlterTable
ALTER TABLE "unit" ADD COLUMN     "bought_on" DATE,
ADD COLUMN     "warranty_months" INTEGER;

ALTER TABLE "unit" ADD CONSTRAINT "unit_warranty" CHECK (
  ("bought_on" IS NULL) = ("warranty_months" IS NULL) AND ("warranty_months" IS NULL OR "warranty_months" BETWEEN 1 AND 600)
);
