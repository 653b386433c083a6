-- CreateTable
CREATE TABLE "second_factor" (
    "id" SERIAL NOT NULL,
    "person_id" INTEGER NOT NULL,
    "sealed" TEXT NOT NULL,
    "on_since" TIMESTAMPTZ(3),
    "last_step" INTEGER,

    CONSTRAINT "second_factor_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recovery_code" (
    "person_id" INTEGER NOT NULL,
    "code_hash" TEXT NOT NULL,

    CONSTRAINT "recovery_code_pkey" PRIMARY KEY ("person_id","code_hash")
);

-- CreateTable
CREATE TABLE "sign_in_step" (
    "token_hash" TEXT NOT NULL,
    "person_id" INTEGER NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_in_step_pkey" PRIMARY KEY ("token_hash")
);

-- CreateTable
CREATE TABLE "sign_in_try" (
    "key" TEXT NOT NULL,
    "tries" INTEGER NOT NULL,
    "last_at" TIMESTAMPTZ(3) NOT NULL,
    "until" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_in_try_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "known_device" (
    "token_hash" TEXT NOT NULL,
    "person_id" INTEGER NOT NULL,
    "seen_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "known_device_pkey" PRIMARY KEY ("token_hash","person_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "second_factor_person_id_key" ON "second_factor"("person_id");

-- CreateIndex
CREATE INDEX "sign_in_step_person_id_idx" ON "sign_in_step"("person_id");

-- CreateIndex
CREATE INDEX "sign_in_try_last_at_idx" ON "sign_in_try"("last_at");

-- CreateIndex
CREATE INDEX "known_device_person_id_idx" ON "known_device"("person_id");

-- AddForeignKey
ALTER TABLE "second_factor" ADD CONSTRAINT "second_factor_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recovery_code" ADD CONSTRAINT "recovery_code_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_in_step" ADD CONSTRAINT "sign_in_step_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "known_device" ADD CONSTRAINT "known_device_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- That somebody's second factor was begun, turned on or taken away stands in the trail; the secret does not, nor does
-- every code that was taken.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OF sealed, on_since OR DELETE ON second_factor
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row('sealed');
