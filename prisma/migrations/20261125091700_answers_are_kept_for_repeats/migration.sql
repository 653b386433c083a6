-- CreateTable
CREATE TABLE "kept_answer" (
    "person_id" INTEGER NOT NULL,
    "key" TEXT NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "begun_at" TIMESTAMPTZ(3) NOT NULL,
    "status" INTEGER,
    "body" JSONB,

    CONSTRAINT "kept_answer_pkey" PRIMARY KEY ("person_id","key")
);

-- CreateIndex
CREATE INDEX "kept_answer_begun_at_idx" ON "kept_answer"("begun_at");
