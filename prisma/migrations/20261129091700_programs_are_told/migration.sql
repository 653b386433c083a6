-- CreateTable
CREATE TABLE "webhook" (
    "id" SERIAL NOT NULL,
    "url" TEXT NOT NULL,
    "events" TEXT[],
    "sealed" TEXT NOT NULL,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "fails" INTEGER NOT NULL DEFAULT 0,
    "quiet_until" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by" INTEGER,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "webhook_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "webhook_event" (
    "id" SERIAL NOT NULL,
    "type" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "data" JSONB NOT NULL,

    CONSTRAINT "webhook_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "webhook_delivery" (
    "id" SERIAL NOT NULL,
    "webhook_id" INTEGER NOT NULL,
    "event_id" INTEGER NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "tries" INTEGER NOT NULL DEFAULT 0,
    "next_try_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "leased_until" TIMESTAMPTZ(3),
    "status" INTEGER,
    "problem" TEXT,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "webhook_delivery_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "webhook_event_at_idx" ON "webhook_event"("at");

-- CreateIndex
CREATE UNIQUE INDEX "webhook_delivery_event_id_webhook_id_key" ON "webhook_delivery"("event_id", "webhook_id");

-- CreateIndex
CREATE INDEX "webhook_delivery_webhook_id_id_idx" ON "webhook_delivery"("webhook_id", "id");

-- AddForeignKey
ALTER TABLE "webhook_delivery" ADD CONSTRAINT "webhook_delivery_webhook_id_fkey" FOREIGN KEY ("webhook_id") REFERENCES "webhook"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "webhook_delivery" ADD CONSTRAINT "webhook_delivery_event_id_fkey" FOREIGN KEY ("event_id") REFERENCES "webhook_event"("id") ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE "webhook_delivery" ADD CONSTRAINT "webhook_delivery_state"
  CHECK ("state" IN ('waiting', 'sending', 'delivered', 'set-aside'));
-- Few wait among very many that were delivered.
CREATE INDEX "webhook_delivery_waiting" ON "webhook_delivery" ("next_try_at") WHERE "state" IN ('waiting', 'sending');

-- Who is told of what stands in the trail; the address may hold a secret of the receiver's.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT OR DELETE OR UPDATE OF url, events, active, sealed ON "webhook"
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (audit_wanted()) EXECUTE FUNCTION audit_row('url', 'sealed');

-- The events are written by the database itself, as the trail is, in the transaction of what happened: no program can
-- forget one, and none is told of what was rolled back. A statement at a time, since a recheck writes by the thousand.
-- What nobody asked to be told of is not written.
CREATE FUNCTION webhook_wanted(wanted text) RETURNS boolean LANGUAGE sql STABLE AS $$
  SELECT EXISTS (SELECT FROM webhook h WHERE h.active AND wanted = ANY (h.events))
$$;

CREATE FUNCTION webhook_flags() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT webhook_wanted('flag.raised') AND NOT webhook_wanted('flag.closed') THEN RETURN NULL; END IF;
  IF TG_OP = 'INSERT' THEN
    INSERT INTO webhook_event (type, data) SELECT 'flag.raised', webhook_flag(w) FROM written w
    WHERE w.state = 'open' AND webhook_wanted('flag.raised') ORDER BY w.id;
  ELSE
    INSERT INTO webhook_event (type, data) SELECT t.type, webhook_flag(w)
    FROM written w JOIN was o ON o.id = w.id,
         LATERAL (SELECT CASE WHEN w.state = 'open' THEN 'flag.raised' ELSE 'flag.closed' END AS type) t
    WHERE (w.state = 'open') <> (o.state = 'open') AND webhook_wanted(t.type) ORDER BY w.id;
  END IF;
  RETURN NULL;
END $$;
CREATE FUNCTION webhook_flag(f flag) RETURNS jsonb LANGUAGE sql IMMUTABLE AS $$
  SELECT jsonb_build_object('flagId', f.id, 'ticketId', f.ticket_id, 'unitId', f.unit_id, 'locationId', f.location_id,
                            'verdict', f.verdict, 'severity', f.severity, 'state', f.state, 'recheckId', f.recheck_id)
$$;

CREATE FUNCTION webhook_callbacks() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT webhook_wanted('callback.opened') AND NOT webhook_wanted('callback.closed') THEN RETURN NULL; END IF;
  IF TG_OP = 'INSERT' THEN
    INSERT INTO webhook_event (type, data) SELECT 'callback.opened', webhook_callback(w) FROM written w
    WHERE w.closed_at IS NULL AND webhook_wanted('callback.opened') ORDER BY w.id;
  ELSE
    INSERT INTO webhook_event (type, data) SELECT t.type, webhook_callback(w)
    FROM written w JOIN was o ON o.id = w.id,
         LATERAL (SELECT CASE WHEN w.closed_at IS NULL THEN 'callback.opened' ELSE 'callback.closed' END AS type) t
    WHERE (w.closed_at IS NULL) <> (o.closed_at IS NULL) AND webhook_wanted(t.type) ORDER BY w.id;
  END IF;
  RETURN NULL;
END $$;
CREATE FUNCTION webhook_callback(c callback) RETURNS jsonb LANGUAGE sql IMMUTABLE AS $$
  SELECT jsonb_build_object('callbackId', c.id, 'unitId', c.unit_id, 'locationId', c.location_id, 'urgent', c.urgent,
                            'state', c.state, 'recheckId', c.recheck_id)
$$;

CREATE FUNCTION webhook_rechecks() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO webhook_event (type, data)
  SELECT 'recheck.finished', jsonb_build_object(
    'recheckId', NEW.id, 'cause', NEW.cause, 'revision', NEW.revision, 'judged', NEW.judged, 'changed', NEW.changed,
    'flagsRaised', NEW.flags_raised, 'flagsCleared', NEW.flags_cleared, 'callbacksOpened', NEW.callbacks_opened,
    'callbacksClosed', NEW.callbacks_closed, 'setAside', NEW.set_aside)
  WHERE webhook_wanted('recheck.finished');
  RETURN NULL;
END $$;

CREATE TRIGGER told_inserted AFTER INSERT ON flag REFERENCING NEW TABLE AS written
  FOR EACH STATEMENT WHEN (audit_wanted()) EXECUTE FUNCTION webhook_flags();
CREATE TRIGGER told_updated AFTER UPDATE ON flag REFERENCING OLD TABLE AS was NEW TABLE AS written
  FOR EACH STATEMENT WHEN (audit_wanted()) EXECUTE FUNCTION webhook_flags();
CREATE TRIGGER told_inserted AFTER INSERT ON callback REFERENCING NEW TABLE AS written
  FOR EACH STATEMENT WHEN (audit_wanted()) EXECUTE FUNCTION webhook_callbacks();
CREATE TRIGGER told_updated AFTER UPDATE ON callback REFERENCING OLD TABLE AS was NEW TABLE AS written
  FOR EACH STATEMENT WHEN (audit_wanted()) EXECUTE FUNCTION webhook_callbacks();
CREATE TRIGGER told_finished AFTER UPDATE OF finished_at ON recheck FOR EACH ROW
  WHEN (OLD.finished_at IS NULL AND NEW.finished_at IS NOT NULL) EXECUTE FUNCTION webhook_rechecks();

-- Each event goes to everybody who asked for its kind.
CREATE FUNCTION webhook_fan_out() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO webhook_delivery (webhook_id, event_id)
  SELECT h.id, w.id FROM written w JOIN webhook h ON h.active AND w.type = ANY (h.events) ORDER BY w.id, h.id;
  RETURN NULL;
END $$;
CREATE TRIGGER fan_out AFTER INSERT ON webhook_event REFERENCING NEW TABLE AS written
  FOR EACH STATEMENT EXECUTE FUNCTION webhook_fan_out();
