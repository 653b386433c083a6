-- AlterTable
ALTER TABLE "install" ALTER COLUMN "record_id" DROP NOT NULL;

-- AlterTable
ALTER TABLE "pick" ADD COLUMN     "came_from" TEXT NOT NULL DEFAULT 'shelf',
ADD COLUMN     "spare_for" INTEGER[] DEFAULT ARRAY[]::INTEGER[];

-- CreateTable
CREATE TABLE "shelf_item" (
    "id" SERIAL NOT NULL,
    "location_id" INTEGER NOT NULL,
    "part_id" INTEGER NOT NULL,
    "bin" TEXT NOT NULL DEFAULT '',
    "on_hand" INTEGER NOT NULL DEFAULT 0,
    "reserved" INTEGER NOT NULL DEFAULT 0,
    "reorder_point" INTEGER,
    "order_quantity" INTEGER,
    "supplier" TEXT NOT NULL DEFAULT '',
    "pack_size" INTEGER NOT NULL DEFAULT 1,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "shelf_item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "shelf_movement" (
    "id" SERIAL NOT NULL,
    "item_id" INTEGER NOT NULL,
    "location_id" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "pieces" INTEGER NOT NULL DEFAULT 0,
    "reserved" INTEGER NOT NULL DEFAULT 0,
    "packs" INTEGER,
    "pack_size" INTEGER,
    "reason" TEXT NOT NULL DEFAULT '',
    "ticket_id" INTEGER,
    "pick_id" INTEGER,
    "order_id" INTEGER,
    "person_id" INTEGER,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "shelf_movement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "shelf_order" (
    "id" SERIAL NOT NULL,
    "item_id" INTEGER NOT NULL,
    "location_id" INTEGER NOT NULL,
    "supplier" TEXT NOT NULL DEFAULT '',
    "pieces" INTEGER NOT NULL,
    "received" INTEGER NOT NULL DEFAULT 0,
    "expected_on" DATE,
    "state" TEXT NOT NULL DEFAULT 'open',
    "ordered_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ordered_by" INTEGER,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "shelf_order_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "part_wait" (
    "id" SERIAL NOT NULL,
    "ticket_id" INTEGER NOT NULL,
    "location_id" INTEGER NOT NULL,
    "part_id" INTEGER NOT NULL,
    "position_id" INTEGER,
    "pieces" INTEGER NOT NULL,
    "since" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "asked_by" INTEGER,
    "woken_at" TIMESTAMPTZ(3),
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "part_wait_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "part_notice" (
    "id" SERIAL NOT NULL,
    "source_id" INTEGER NOT NULL,
    "part_id" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "since" DATE,
    "still_good" BOOLEAN NOT NULL,
    "sentences" TEXT[],

    CONSTRAINT "part_notice_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "shelf_pull" (
    "id" SERIAL NOT NULL,
    "notice_id" INTEGER NOT NULL,
    "item_id" INTEGER NOT NULL,
    "location_id" INTEGER NOT NULL,
    "pieces" INTEGER NOT NULL,
    "bin" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "done_by" INTEGER,
    "done_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "shelf_pull_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "shelf_item_part_id_idx" ON "shelf_item"("part_id");

-- CreateIndex
CREATE UNIQUE INDEX "shelf_item_location_id_part_id_key" ON "shelf_item"("location_id", "part_id");

-- CreateIndex
CREATE INDEX "shelf_movement_item_id_id_idx" ON "shelf_movement"("item_id", "id");

-- CreateIndex
CREATE INDEX "shelf_movement_ticket_id_idx" ON "shelf_movement"("ticket_id");

-- CreateIndex
CREATE INDEX "shelf_order_item_id_idx" ON "shelf_order"("item_id");

-- CreateIndex
CREATE INDEX "part_wait_ticket_id_idx" ON "part_wait"("ticket_id");

-- CreateIndex
CREATE INDEX "part_notice_part_id_idx" ON "part_notice"("part_id");

-- CreateIndex
CREATE UNIQUE INDEX "part_notice_source_id_part_id_key" ON "part_notice"("source_id", "part_id");

-- CreateIndex
CREATE UNIQUE INDEX "shelf_pull_notice_id_item_id_key" ON "shelf_pull"("notice_id", "item_id");

-- AddForeignKey
ALTER TABLE "shelf_item" ADD CONSTRAINT "shelf_item_location_id_fkey" FOREIGN KEY ("location_id") REFERENCES "location"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shelf_item" ADD CONSTRAINT "shelf_item_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shelf_movement" ADD CONSTRAINT "shelf_movement_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "shelf_item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shelf_order" ADD CONSTRAINT "shelf_order_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "shelf_item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part_wait" ADD CONSTRAINT "part_wait_ticket_id_fkey" FOREIGN KEY ("ticket_id") REFERENCES "ticket"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part_wait" ADD CONSTRAINT "part_wait_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part_notice" ADD CONSTRAINT "part_notice_source_id_fkey" FOREIGN KEY ("source_id") REFERENCES "source"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part_notice" ADD CONSTRAINT "part_notice_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shelf_pull" ADD CONSTRAINT "shelf_pull_notice_id_fkey" FOREIGN KEY ("notice_id") REFERENCES "part_notice"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shelf_pull" ADD CONSTRAINT "shelf_pull_item_id_fkey" FOREIGN KEY ("item_id") REFERENCES "shelf_item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What neither a program nor a hand may bring about: less than nothing on a shelf, or more promised than is there.
ALTER TABLE "shelf_item"
  ADD CONSTRAINT "shelf_item_never_negative" CHECK ("on_hand" >= 0 AND "reserved" >= 0 AND "reserved" <= "on_hand"),
  ADD CONSTRAINT "shelf_item_figures" CHECK ("reorder_point" >= 0 AND "order_quantity" >= 1 AND "pack_size" >= 1);
ALTER TABLE "shelf_movement"
  ADD CONSTRAINT "shelf_movement_kind"
    CHECK ("kind" IN ('opening', 'receive', 'count', 'pick', 'return', 'fit', 'take-out', 'give')),
  ADD CONSTRAINT "shelf_movement_counted" CHECK ("kind" <> 'count' OR length("reason") >= 3);
ALTER TABLE "shelf_order"
  ADD CONSTRAINT "shelf_order_state" CHECK ("state" IN ('open', 'received', 'cancelled')),
  ADD CONSTRAINT "shelf_order_pieces" CHECK ("pieces" >= 1 AND "received" >= 0);
ALTER TABLE "part_wait" ADD CONSTRAINT "part_wait_pieces" CHECK ("pieces" >= 1);
ALTER TABLE "part_notice" ADD CONSTRAINT "part_notice_kind" CHECK ("kind" IN ('barred', 'ended'));
ALTER TABLE "pick" ADD CONSTRAINT "pick_came_from" CHECK ("came_from" IN ('shelf', 'owner', 'bought'));
CREATE UNIQUE INDEX "part_wait_once" ON "part_wait" ("ticket_id", "part_id") WHERE "ended_at" IS NULL;
CREATE INDEX "part_wait_asleep" ON "part_wait" ("location_id", "part_id") WHERE "ended_at" IS NULL AND "woken_at" IS NULL;
CREATE INDEX "shelf_order_open" ON "shelf_order" ("item_id") WHERE "state" = 'open';

-- The stock is the sum of the movements: the database adds each one up itself, in the transaction that wrote it.
CREATE FUNCTION shelf_follows() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$
BEGIN
  UPDATE public.shelf_item SET on_hand = on_hand + NEW.pieces, reserved = reserved + NEW.reserved WHERE id = NEW.item_id;
  RETURN NULL;
END $$;
CREATE TRIGGER shelf_follows AFTER INSERT ON "shelf_movement" FOR EACH ROW EXECUTE FUNCTION shelf_follows();

-- Nobody writes the sums but that.
CREATE FUNCTION only_movements_change_stock() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF pg_trigger_depth() > 1 THEN RETURN NEW; END IF;
  RAISE EXCEPTION 'stock changes by a movement' USING ERRCODE = 'insufficient_privilege';
END $$;
CREATE TRIGGER only_movements BEFORE UPDATE OF "on_hand", "reserved" ON "shelf_item" FOR EACH ROW
  WHEN ((OLD."on_hand", OLD."reserved") IS DISTINCT FROM (NEW."on_hand", NEW."reserved"))
  EXECUTE FUNCTION only_movements_change_stock();
CREATE TRIGGER starts_empty BEFORE INSERT ON "shelf_item" FOR EACH ROW
  WHEN (NEW."on_hand" <> 0 OR NEW."reserved" <> 0) EXECUTE FUNCTION only_movements_change_stock();
CREATE TRIGGER only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON "shelf_movement"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- The trail: every movement, and what was settled about an item; its sums are the movements' over again.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OF "bin", "reorder_point", "order_quantity", "supplier", "pack_size"
  ON "shelf_item" DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row();
DO $$
DECLARE
  watched text;
BEGIN
  FOREACH watched IN ARRAY ARRAY['shelf_movement', 'shelf_order', 'part_wait', 'part_notice', 'shelf_pull'] LOOP
    EXECUTE format('CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR UPDATE OR DELETE ON %I
      DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row()', watched);
  END LOOP;
END $$;

DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'revright_app') THEN RETURN; END IF;
  REVOKE UPDATE, DELETE ON "shelf_movement" FROM revright_app;
  REVOKE UPDATE, DELETE ON "shelf_item" FROM revright_app;
  GRANT UPDATE ("bin", "reorder_point", "order_quantity", "supplier", "pack_size", "version") ON "shelf_item" TO revright_app;
EXCEPTION WHEN insufficient_privilege THEN RAISE NOTICE 'The role revright_app is there, but not ours to use.';
END $$;

-- What a place is called. A loose part's place is the id of its pick, with a minus before it.
CREATE FUNCTION place_word(names text[], place int) RETURNS text LANGUAGE sql STABLE AS $$
  SELECT CASE
    WHEN place > 0 THEN coalesce(names[place], place::text)
    ELSE coalesce((SELECT CASE k.purpose WHEN 'spare' THEN 'spare' ELSE 'picked' END FROM pick k WHERE k.id = -place), 'picked')
  END
$$;

-- Who holds pieces of a part: what lies on the benches, not all that was ever picked.
CREATE INDEX "pick_on_bench" ON "pick" ("part_id") WHERE "state" = 'picked';

-- A shelf is seen at its own location.
DO $$
DECLARE
  walled text;
BEGIN
  FOREACH walled IN ARRAY ARRAY['shelf_item', 'shelf_movement', 'shelf_order', 'shelf_pull', 'part_wait'] LOOP
    EXECUTE format('CREATE POLICY wall ON %I USING ((SELECT sees_all()) OR location_id = (SELECT sees_location()))', walled);
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY, FORCE ROW LEVEL SECURITY', walled);
  END LOOP;
END $$;
