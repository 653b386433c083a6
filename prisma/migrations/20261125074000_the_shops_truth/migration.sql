CREATE EXTENSION IF NOT EXISTS btree_gist;

-- CreateTable
CREATE TABLE "location" (
    "id" SERIAL NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "location_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "bench" (
    "id" SERIAL NOT NULL,
    "location_id" INTEGER NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "bench_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "id" SERIAL NOT NULL,
    "login" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "location_id" INTEGER NOT NULL,
    "password_hash" TEXT,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "session" (
    "token_hash" TEXT NOT NULL,
    "person_id" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "last_seen_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "session_pkey" PRIMARY KEY ("token_hash")
);

-- CreateTable
CREATE TABLE "setting" (
    "key" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_by" INTEGER,

    CONSTRAINT "setting_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "maker" (
    "id" SERIAL NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "number_rules" JSONB NOT NULL,

    CONSTRAINT "maker_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "product_line" (
    "id" SERIAL NOT NULL,
    "code" TEXT NOT NULL,
    "maker_id" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "options" JSONB NOT NULL DEFAULT '[]',
    "sketch" TEXT NOT NULL DEFAULT '',
    "produced_from" DATE NOT NULL,
    "produced_until" DATE,

    CONSTRAINT "product_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "model" (
    "id" SERIAL NOT NULL,
    "line_id" INTEGER NOT NULL,
    "number" TEXT NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "model_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "position" (
    "id" SERIAL NOT NULL,
    "line_id" INTEGER NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "assembly" TEXT NOT NULL,
    "places" INTEGER NOT NULL DEFAULT 1,
    "place_names" TEXT[],
    "sort_order" INTEGER NOT NULL,
    "joint" JSONB,
    "sketch_x" DOUBLE PRECISION NOT NULL DEFAULT 0,
    "sketch_y" DOUBLE PRECISION NOT NULL DEFAULT 0,

    CONSTRAINT "position_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "part" (
    "id" SERIAL NOT NULL,
    "key" TEXT NOT NULL,
    "maker_id" INTEGER NOT NULL,
    "number" TEXT NOT NULL,
    "canonical" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "listed" BOOLEAN NOT NULL DEFAULT true,
    "fastener" JSONB,
    "price_minor" INTEGER,

    CONSTRAINT "part_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "supersession" (
    "id" SERIAL NOT NULL,
    "from_key" TEXT NOT NULL,
    "to_key" TEXT,
    "direction" TEXT NOT NULL,
    "known_from" TIMESTAMPTZ(3) NOT NULL,
    "known_to" TIMESTAMPTZ(3),

    CONSTRAINT "supersession_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "serial_scheme" (
    "id" SERIAL NOT NULL,
    "maker_id" INTEGER NOT NULL,
    "code" TEXT NOT NULL,
    "scheme" JSONB NOT NULL,

    CONSTRAINT "serial_scheme_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "standard_edition" (
    "id" SERIAL NOT NULL,
    "standard" TEXT NOT NULL,
    "edition" TEXT NOT NULL,
    "data" JSONB NOT NULL,

    CONSTRAINT "standard_edition_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "source" (
    "id" SERIAL NOT NULL,
    "key" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "publisher" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "summary" TEXT NOT NULL DEFAULT '',
    "issued" DATE NOT NULL,
    "effective" DATE,
    "received" DATE NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'draft',
    "draft" JSONB,
    "published_at" TIMESTAMPTZ(3),
    "withdrawn_at" TIMESTAMPTZ(3),
    "withdrawn_why" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "source_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "fit_rule" (
    "id" SERIAL NOT NULL,
    "key" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "line_id" INTEGER NOT NULL,
    "source_id" INTEGER NOT NULL,
    "built" daterange NOT NULL,
    "in_force" daterange NOT NULL,
    "known" tstzrange NOT NULL,
    "rule" JSONB NOT NULL,
    "opened_by" INTEGER NOT NULL,
    "closed_by" INTEGER,

    CONSTRAINT "fit_rule_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rulebook_revision" (
    "id" SERIAL NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "cause" TEXT NOT NULL,
    "source_id" INTEGER,
    "person_id" INTEGER,

    CONSTRAINT "rulebook_revision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "owner" (
    "id" SERIAL NOT NULL,
    "location_id" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "phone" TEXT NOT NULL DEFAULT '',
    "email" TEXT NOT NULL DEFAULT '',
    "address" TEXT NOT NULL DEFAULT '',
    "consent" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "owner_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "unit" (
    "id" SERIAL NOT NULL,
    "owner_id" INTEGER NOT NULL,
    "line_id" INTEGER,
    "model_id" INTEGER,
    "serial" TEXT,
    "serial_absent" TEXT,
    "serial_search" TEXT,
    "serial_scheme" TEXT,
    "serial_key" TEXT,
    "options" JSONB NOT NULL DEFAULT '{}',
    "plate" TEXT NOT NULL DEFAULT '',
    "built" int4multirange NOT NULL,
    "built_from" INTEGER NOT NULL,
    "built_to" INTEGER NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "unit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "evidence" (
    "id" SERIAL NOT NULL,
    "unit_id" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "data" JSONB NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "recorded_by" INTEGER,
    "set_aside_why" TEXT,
    "set_aside_by" INTEGER,
    "set_aside_at" TIMESTAMPTZ(3),

    CONSTRAINT "evidence_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ticket" (
    "id" SERIAL NOT NULL,
    "number" TEXT NOT NULL,
    "location_id" INTEGER NOT NULL,
    "unit_id" INTEGER NOT NULL,
    "owner_id" INTEGER NOT NULL,
    "bench_id" INTEGER,
    "stage" TEXT NOT NULL DEFAULT 'intake',
    "complaint" TEXT NOT NULL DEFAULT '',
    "promised_on" DATE,
    "hold_reason" TEXT,
    "cancel_reason" TEXT,
    "opened_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "closed_at" TIMESTAMPTZ(3),
    "handed_over" BOOLEAN NOT NULL DEFAULT false,
    "labour_minutes" INTEGER NOT NULL DEFAULT 0,
    "labour_minor" INTEGER NOT NULL DEFAULT 0,
    "authorisation" JSONB,
    "safety_checks" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "ticket_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ticket_event" (
    "id" SERIAL NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "person_id" INTEGER,
    "kind" TEXT NOT NULL,
    "data" JSONB NOT NULL DEFAULT '{}',

    CONSTRAINT "ticket_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "place_record" (
    "id" SERIAL NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "unit_id" INTEGER NOT NULL,
    "position_id" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "side" TEXT NOT NULL,
    "part_id" INTEGER,
    "part_text" TEXT,
    "pack" INTEGER,
    "marks" JSONB,
    "candidates" INTEGER[] DEFAULT ARRAY[]::INTEGER[],
    "condition" TEXT,
    "fitted_on" DATE,
    "left_out_why" TEXT,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "recorded_by" INTEGER,

    CONSTRAINT "place_record_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "install" (
    "unit_id" INTEGER NOT NULL,
    "position_id" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "record_id" INTEGER NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "line_id" INTEGER NOT NULL,
    "part_id" INTEGER,
    "candidates" INTEGER[] DEFAULT ARRAY[]::INTEGER[],
    "fitted_on" INTEGER,
    "built_from" INTEGER NOT NULL,
    "built_to" INTEGER NOT NULL,
    "verdict" TEXT,
    "judgement" JSONB,
    "judged_revision" INTEGER,

    CONSTRAINT "install_pkey" PRIMARY KEY ("unit_id","position_id","place")
);

-- CreateTable
CREATE TABLE "verdict_change" (
    "id" SERIAL NOT NULL,
    "unit_id" INTEGER NOT NULL,
    "position_id" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "part_id" INTEGER,
    "from_verdict" TEXT,
    "to_verdict" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "recheck_id" INTEGER,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "verdict_change_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "pick" (
    "id" SERIAL NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "position_id" INTEGER,
    "part_id" INTEGER NOT NULL,
    "quantity" INTEGER NOT NULL,
    "purpose" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'picked',
    "price_minor" INTEGER NOT NULL DEFAULT 0,
    "exception_reason" TEXT,
    "exception_by" INTEGER,
    "picked_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "picked_by" INTEGER,

    CONSTRAINT "pick_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "flag" (
    "id" SERIAL NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "unit_id" INTEGER NOT NULL,
    "position_id" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "part_id" INTEGER,
    "verdict" TEXT NOT NULL,
    "severity" INTEGER NOT NULL,
    "reason" JSONB NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'open',
    "opened_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "recheck_id" INTEGER,
    "decided_by" INTEGER,
    "decided_at" TIMESTAMPTZ(3),
    "decision_why" TEXT,
    "accepted_until" DATE,
    "decided_revision" INTEGER,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "flag_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "callback" (
    "id" SERIAL NOT NULL,
    "unit_id" INTEGER NOT NULL,
    "owner_id" INTEGER NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'open',
    "urgent" BOOLEAN NOT NULL DEFAULT false,
    "opened_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "recheck_id" INTEGER,
    "closed_at" TIMESTAMPTZ(3),
    "closed_why" TEXT,
    "ticket_id" INTEGER,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "callback_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "callback_reason" (
    "id" SERIAL NOT NULL,
    "callback_id" INTEGER NOT NULL,
    "source_id" INTEGER NOT NULL,
    "position_id" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "part_id" INTEGER,
    "verdict" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "detail" JSONB NOT NULL,
    "opened_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawn_at" TIMESTAMPTZ(3),
    "withdrawn_why" TEXT,

    CONSTRAINT "callback_reason_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "callback_attempt" (
    "id" SERIAL NOT NULL,
    "callback_id" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "person_id" INTEGER,
    "how" TEXT NOT NULL,
    "outcome" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "callback_attempt_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "unit_note" (
    "id" SERIAL NOT NULL,
    "unit_id" INTEGER NOT NULL,
    "source_id" INTEGER NOT NULL,
    "position_id" INTEGER NOT NULL,
    "place" INTEGER NOT NULL,
    "detail" JSONB NOT NULL,
    "opened_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "closed_at" TIMESTAMPTZ(3),
    "closed_why" TEXT,

    CONSTRAINT "unit_note_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recheck" (
    "id" SERIAL NOT NULL,
    "cause" TEXT NOT NULL,
    "source_id" INTEGER,
    "revision" INTEGER NOT NULL,
    "scope" JSONB NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'planned',
    "planned" INTEGER NOT NULL DEFAULT 0,
    "judged" INTEGER NOT NULL DEFAULT 0,
    "changed" INTEGER NOT NULL DEFAULT 0,
    "flags_raised" INTEGER NOT NULL DEFAULT 0,
    "flags_cleared" INTEGER NOT NULL DEFAULT 0,
    "callbacks_opened" INTEGER NOT NULL DEFAULT 0,
    "callbacks_closed" INTEGER NOT NULL DEFAULT 0,
    "set_aside" INTEGER NOT NULL DEFAULT 0,
    "requested_by" INTEGER,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_at" TIMESTAMPTZ(3),
    "finished_at" TIMESTAMPTZ(3),

    CONSTRAINT "recheck_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "recheck_chunk" (
    "id" SERIAL NOT NULL,
    "recheck_id" INTEGER NOT NULL,
    "n" INTEGER NOT NULL,
    "from_unit" INTEGER NOT NULL,
    "to_unit" INTEGER NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "tries" INTEGER NOT NULL DEFAULT 0,
    "leased_until" TIMESTAMPTZ(3),
    "judged" INTEGER NOT NULL DEFAULT 0,
    "changed" INTEGER NOT NULL DEFAULT 0,
    "problem" TEXT,
    "done_at" TIMESTAMPTZ(3),

    CONSTRAINT "recheck_chunk_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "outbox" (
    "id" SERIAL NOT NULL,
    "topic" TEXT NOT NULL,
    "payload" JSONB NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "leased_until" TIMESTAMPTZ(3),
    "dispatched_at" TIMESTAMPTZ(3),
    "tries" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "outbox_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "location_code_key" ON "location"("code");

-- CreateIndex
CREATE UNIQUE INDEX "bench_location_id_code_key" ON "bench"("location_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "person_login_key" ON "person"("login");

-- CreateIndex
CREATE INDEX "session_person_id_idx" ON "session"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "maker_code_key" ON "maker"("code");

-- CreateIndex
CREATE UNIQUE INDEX "product_line_code_key" ON "product_line"("code");

-- CreateIndex
CREATE UNIQUE INDEX "model_line_id_number_key" ON "model"("line_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "position_line_id_code_key" ON "position"("line_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "part_key_key" ON "part"("key");

-- CreateIndex
CREATE INDEX "part_canonical_idx" ON "part"("canonical");

-- CreateIndex
CREATE INDEX "supersession_from_key_idx" ON "supersession"("from_key");

-- CreateIndex
CREATE UNIQUE INDEX "serial_scheme_code_key" ON "serial_scheme"("code");

-- CreateIndex
CREATE UNIQUE INDEX "standard_edition_standard_edition_key" ON "standard_edition"("standard", "edition");

-- CreateIndex
CREATE UNIQUE INDEX "source_key_key" ON "source"("key");

-- CreateIndex
CREATE INDEX "fit_rule_line_id_idx" ON "fit_rule"("line_id");

-- CreateIndex
CREATE INDEX "fit_rule_source_id_idx" ON "fit_rule"("source_id");

-- CreateIndex
CREATE UNIQUE INDEX "fit_rule_key_version_key" ON "fit_rule"("key", "version");

-- CreateIndex
CREATE INDEX "owner_location_id_idx" ON "owner"("location_id");

-- CreateIndex
CREATE INDEX "unit_owner_id_idx" ON "unit"("owner_id");

-- CreateIndex
CREATE INDEX "unit_serial_search_idx" ON "unit"("serial_search");

-- CreateIndex
CREATE INDEX "unit_line_id_built_from_idx" ON "unit"("line_id", "built_from");

-- CreateIndex
CREATE INDEX "evidence_unit_id_idx" ON "evidence"("unit_id");

-- CreateIndex
CREATE UNIQUE INDEX "ticket_number_key" ON "ticket"("number");

-- CreateIndex
CREATE INDEX "ticket_unit_id_idx" ON "ticket"("unit_id");

-- CreateIndex
CREATE INDEX "ticket_owner_id_idx" ON "ticket"("owner_id");

-- CreateIndex
CREATE INDEX "ticket_bench_id_idx" ON "ticket"("bench_id");

-- CreateIndex
CREATE INDEX "ticket_closed_at_idx" ON "ticket"("closed_at");

-- CreateIndex
CREATE INDEX "ticket_event_ticket_id_idx" ON "ticket_event"("ticket_id");

-- CreateIndex
CREATE INDEX "place_record_unit_id_idx" ON "place_record"("unit_id");

-- CreateIndex
CREATE UNIQUE INDEX "place_record_ticket_id_position_id_place_side_key" ON "place_record"("ticket_id", "position_id", "place", "side");

-- CreateIndex
CREATE INDEX "install_line_id_position_id_built_from_idx" ON "install"("line_id", "position_id", "built_from");

-- CreateIndex
CREATE INDEX "install_ticket_id_idx" ON "install"("ticket_id");

-- CreateIndex
CREATE INDEX "verdict_change_unit_id_idx" ON "verdict_change"("unit_id");

-- CreateIndex
CREATE INDEX "verdict_change_recheck_id_idx" ON "verdict_change"("recheck_id");

-- CreateIndex
CREATE INDEX "pick_ticket_id_idx" ON "pick"("ticket_id");

-- CreateIndex
CREATE INDEX "flag_ticket_id_idx" ON "flag"("ticket_id");

-- CreateIndex
CREATE INDEX "flag_state_idx" ON "flag"("state");

-- CreateIndex
CREATE INDEX "callback_state_idx" ON "callback"("state");

-- CreateIndex
CREATE INDEX "callback_unit_id_idx" ON "callback"("unit_id");

-- CreateIndex
CREATE UNIQUE INDEX "callback_reason_callback_id_source_id_position_id_place_key" ON "callback_reason"("callback_id", "source_id", "position_id", "place");

-- CreateIndex
CREATE INDEX "callback_attempt_callback_id_idx" ON "callback_attempt"("callback_id");

-- CreateIndex
CREATE UNIQUE INDEX "unit_note_unit_id_source_id_position_id_place_key" ON "unit_note"("unit_id", "source_id", "position_id", "place");

-- CreateIndex
CREATE INDEX "recheck_state_idx" ON "recheck"("state");

-- CreateIndex
CREATE UNIQUE INDEX "recheck_chunk_recheck_id_n_key" ON "recheck_chunk"("recheck_id", "n");

-- AddForeignKey
ALTER TABLE "bench" ADD CONSTRAINT "bench_location_id_fkey" FOREIGN KEY ("location_id") REFERENCES "location"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "person" ADD CONSTRAINT "person_location_id_fkey" FOREIGN KEY ("location_id") REFERENCES "location"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "product_line" ADD CONSTRAINT "product_line_maker_id_fkey" FOREIGN KEY ("maker_id") REFERENCES "maker"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "model" ADD CONSTRAINT "model_line_id_fkey" FOREIGN KEY ("line_id") REFERENCES "product_line"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "position" ADD CONSTRAINT "position_line_id_fkey" FOREIGN KEY ("line_id") REFERENCES "product_line"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part" ADD CONSTRAINT "part_maker_id_fkey" FOREIGN KEY ("maker_id") REFERENCES "maker"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "serial_scheme" ADD CONSTRAINT "serial_scheme_maker_id_fkey" FOREIGN KEY ("maker_id") REFERENCES "maker"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fit_rule" ADD CONSTRAINT "fit_rule_line_id_fkey" FOREIGN KEY ("line_id") REFERENCES "product_line"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fit_rule" ADD CONSTRAINT "fit_rule_source_id_fkey" FOREIGN KEY ("source_id") REFERENCES "source"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "owner" ADD CONSTRAINT "owner_location_id_fkey" FOREIGN KEY ("location_id") REFERENCES "location"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "unit" ADD CONSTRAINT "unit_owner_id_fkey" FOREIGN KEY ("owner_id") REFERENCES "owner"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "unit" ADD CONSTRAINT "unit_line_id_fkey" FOREIGN KEY ("line_id") REFERENCES "product_line"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "unit" ADD CONSTRAINT "unit_model_id_fkey" FOREIGN KEY ("model_id") REFERENCES "model"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "evidence" ADD CONSTRAINT "evidence_unit_id_fkey" FOREIGN KEY ("unit_id") REFERENCES "unit"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ticket" ADD CONSTRAINT "ticket_location_id_fkey" FOREIGN KEY ("location_id") REFERENCES "location"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ticket" ADD CONSTRAINT "ticket_unit_id_fkey" FOREIGN KEY ("unit_id") REFERENCES "unit"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ticket" ADD CONSTRAINT "ticket_owner_id_fkey" FOREIGN KEY ("owner_id") REFERENCES "owner"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ticket" ADD CONSTRAINT "ticket_bench_id_fkey" FOREIGN KEY ("bench_id") REFERENCES "bench"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ticket_event" ADD CONSTRAINT "ticket_event_ticket_id_fkey" FOREIGN KEY ("ticket_id") REFERENCES "ticket"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "place_record" ADD CONSTRAINT "place_record_ticket_id_fkey" FOREIGN KEY ("ticket_id") REFERENCES "ticket"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "place_record" ADD CONSTRAINT "place_record_unit_id_fkey" FOREIGN KEY ("unit_id") REFERENCES "unit"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "place_record" ADD CONSTRAINT "place_record_position_id_fkey" FOREIGN KEY ("position_id") REFERENCES "position"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "install" ADD CONSTRAINT "install_unit_id_fkey" FOREIGN KEY ("unit_id") REFERENCES "unit"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "install" ADD CONSTRAINT "install_position_id_fkey" FOREIGN KEY ("position_id") REFERENCES "position"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "pick" ADD CONSTRAINT "pick_ticket_id_fkey" FOREIGN KEY ("ticket_id") REFERENCES "ticket"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "pick" ADD CONSTRAINT "pick_position_id_fkey" FOREIGN KEY ("position_id") REFERENCES "position"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "flag" ADD CONSTRAINT "flag_ticket_id_fkey" FOREIGN KEY ("ticket_id") REFERENCES "ticket"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "flag" ADD CONSTRAINT "flag_unit_id_fkey" FOREIGN KEY ("unit_id") REFERENCES "unit"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "callback" ADD CONSTRAINT "callback_unit_id_fkey" FOREIGN KEY ("unit_id") REFERENCES "unit"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "callback" ADD CONSTRAINT "callback_owner_id_fkey" FOREIGN KEY ("owner_id") REFERENCES "owner"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "callback_reason" ADD CONSTRAINT "callback_reason_callback_id_fkey" FOREIGN KEY ("callback_id") REFERENCES "callback"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "callback_reason" ADD CONSTRAINT "callback_reason_source_id_fkey" FOREIGN KEY ("source_id") REFERENCES "source"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "callback_attempt" ADD CONSTRAINT "callback_attempt_callback_id_fkey" FOREIGN KEY ("callback_id") REFERENCES "callback"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recheck" ADD CONSTRAINT "recheck_source_id_fkey" FOREIGN KEY ("source_id") REFERENCES "source"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "recheck_chunk" ADD CONSTRAINT "recheck_chunk_recheck_id_fkey" FOREIGN KEY ("recheck_id") REFERENCES "recheck"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the schema language has no words for.

-- Spans that are never empty, and one known version of a rule at any instant.
ALTER TABLE "fit_rule"
  ADD CONSTRAINT "fit_rule_built_not_empty" CHECK (NOT isempty("built")),
  ADD CONSTRAINT "fit_rule_in_force_not_empty" CHECK (NOT isempty("in_force")),
  ADD CONSTRAINT "fit_rule_known_not_empty" CHECK (NOT isempty("known")),
  ADD CONSTRAINT "fit_rule_known_once" EXCLUDE USING gist ("key" WITH =, "known" WITH &&);
CREATE INDEX "fit_rule_known_now" ON "fit_rule" ("line_id") WHERE upper_inf("known");

-- One open ticket, one open flag per place, one open callback per unit: the guards of "exactly once".
CREATE UNIQUE INDEX "ticket_one_open_per_unit" ON "ticket" ("unit_id") WHERE "closed_at" IS NULL;
CREATE UNIQUE INDEX "flag_one_open_per_place" ON "flag" ("ticket_id", "position_id", "place") WHERE "state" = 'open';
CREATE UNIQUE INDEX "callback_one_open_per_unit" ON "callback" ("unit_id") WHERE "state" IN ('open', 'booked');

-- The board reads open tickets only; the relay, undispatched bells only; a worker, waiting chunks only.
CREATE INDEX "ticket_open_by_stage" ON "ticket" ("stage", "promised_on") WHERE "closed_at" IS NULL;
CREATE INDEX "outbox_waiting" ON "outbox" ("id") WHERE "dispatched_at" IS NULL;
CREATE INDEX "recheck_chunk_waiting" ON "recheck_chunk" ("recheck_id", "n") WHERE "state" = 'waiting';

-- Words that a column may hold.
ALTER TABLE "person" ADD CONSTRAINT "person_role" CHECK ("role" IN ('technician', 'counter', 'manager', 'administrator'));
ALTER TABLE "ticket" ADD CONSTRAINT "ticket_stage" CHECK ("stage" IN ('intake', 'inspection', 'parts-selection', 'repair', 'handover'));
ALTER TABLE "source" ADD CONSTRAINT "source_state" CHECK ("state" IN ('draft', 'published', 'withdrawn'));
ALTER TABLE "place_record"
  ADD CONSTRAINT "place_record_side" CHECK ("side" IN ('found', 'left')),
  ADD CONSTRAINT "place_record_place" CHECK ("place" >= 1);
ALTER TABLE "install"
  ADD CONSTRAINT "install_verdict" CHECK ("verdict" IN ('right', 'allowed', 'outdated', 'wrong', 'undecided', 'disputed'));
ALTER TABLE "pick" ADD CONSTRAINT "pick_quantity" CHECK ("quantity" >= 1);
ALTER TABLE "flag" ADD CONSTRAINT "flag_state" CHECK ("state" IN ('open', 'accepted', 'sent-back', 'callback', 'cleared'));
ALTER TABLE "callback" ADD CONSTRAINT "callback_state" CHECK ("state" IN ('open', 'booked', 'settled', 'withdrawn'));
ALTER TABLE "recheck" ADD CONSTRAINT "recheck_state" CHECK ("state" IN ('planned', 'running', 'done'));
ALTER TABLE "recheck_chunk" ADD CONSTRAINT "recheck_chunk_state" CHECK ("state" IN ('waiting', 'done', 'set-aside'));

-- Verdicts change in bulk; room on the page keeps those updates in place.
ALTER TABLE "install" SET (fillfactor = 80);
