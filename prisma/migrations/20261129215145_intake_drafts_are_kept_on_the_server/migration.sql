-- CreateTable
CREATE TABLE "intake_draft" (
    "person_id" INTEGER NOT NULL,
    "draft" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "intake_draft_pkey" PRIMARY KEY ("person_id")
);

-- AddForeignKey
ALTER TABLE "intake_draft" ADD CONSTRAINT "intake_draft_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Tables made by another user than the one who gave the first grants get them here.
DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  GRANT SELECT, INSERT, UPDATE, DELETE ON "intake_draft" TO revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;
