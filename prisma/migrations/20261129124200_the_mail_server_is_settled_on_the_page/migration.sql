-- CreateTable
CREATE TABLE "mail_server" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "host" TEXT,
    "port" INTEGER NOT NULL,
    "security" TEXT NOT NULL,
    "login" TEXT NOT NULL,
    "sealed" TEXT,
    "sender_name" TEXT NOT NULL,
    "sender_address" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "mail_server_pkey" PRIMARY KEY ("id")
);

ALTER TABLE "mail_server"
  ADD CONSTRAINT "mail_server_one" CHECK ("id" = 1),
  ADD CONSTRAINT "mail_server_security" CHECK ("security" IN ('tls', 'starttls', 'none')),
  ADD CONSTRAINT "mail_server_port" CHECK ("port" BETWEEN 1 AND 65535);

-- Who settled it stands in the trail, and that the password changed; the password does not, under no seal either.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON "mail_server"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row('sealed');
