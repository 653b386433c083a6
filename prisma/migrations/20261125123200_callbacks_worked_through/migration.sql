-- AlterTable
ALTER TABLE "callback" ADD COLUMN     "next_on" DATE;

-- AlterTable
ALTER TABLE "callback_attempt" ADD COLUMN     "batch" TEXT;

-- AlterTable
ALTER TABLE "owner" ADD COLUMN     "declined" TEXT[] DEFAULT ARRAY[]::TEXT[];

-- CreateTable
CREATE TABLE "callback_mail" (
    "id" SERIAL NOT NULL,
    "callback_id" INTEGER NOT NULL,
    "wording" TEXT NOT NULL,
    "recipient" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "html" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'queued',
    "tries" INTEGER NOT NULL DEFAULT 0,
    "next_try_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "leased_until" TIMESTAMPTZ(3),
    "problem" TEXT,
    "queued_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "queued_by" INTEGER,
    "sent_at" TIMESTAMPTZ(3),

    CONSTRAINT "callback_mail_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "callback_mail_callback_id_wording_key" ON "callback_mail"("callback_id", "wording");

-- CreateIndex
CREATE INDEX "callback_attempt_batch_idx" ON "callback_attempt"("batch");

-- AddForeignKey
ALTER TABLE "callback_mail" ADD CONSTRAINT "callback_mail_callback_id_fkey" FOREIGN KEY ("callback_id") REFERENCES "callback"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "callback_mail" ADD CONSTRAINT "callback_mail_state"
  CHECK ("state" IN ('queued', 'sending', 'sent', 'failed', 'unclear', 'cancelled'));
ALTER TABLE "owner" ADD CONSTRAINT "owner_declined" CHECK ("declined" <@ ARRAY['phone', 'letter', 'email']);

-- Few mails wait among very many that were sent.
CREATE INDEX "callback_mail_waiting" ON "callback_mail" ("next_try_at") WHERE "state" IN ('queued', 'sending');

-- What a mail says and to whom is personal; the trail keeps that there was one, and what became of it.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON "callback_mail"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted())
  EXECUTE FUNCTION audit_row('recipient', 'subject', 'text', 'html', 'problem');

-- A mail is seen where its callback is.
CREATE POLICY wall ON "callback_mail"
  USING ((SELECT sees_all()) OR EXISTS (SELECT FROM "callback" p WHERE p.id = "callback_id"));
ALTER TABLE "callback_mail" ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY;
