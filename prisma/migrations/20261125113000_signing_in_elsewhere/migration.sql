-- CreateTable
CREATE TABLE "outside_identity" (
    "id" SERIAL NOT NULL,
    "person_id" INTEGER NOT NULL,
    "email" TEXT NOT NULL,
    "issuer" TEXT,
    "subject" TEXT,

    CONSTRAINT "outside_identity_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "outside_identity_person_id_key" ON "outside_identity"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "outside_identity_email_key" ON "outside_identity"("email");

-- CreateIndex
CREATE UNIQUE INDEX "outside_identity_issuer_subject_key" ON "outside_identity"("issuer", "subject");

-- AddForeignKey
ALTER TABLE "outside_identity" ADD CONSTRAINT "outside_identity_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Who may come in as whom stands in the trail; the address itself does not.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON outside_identity
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row('email');
