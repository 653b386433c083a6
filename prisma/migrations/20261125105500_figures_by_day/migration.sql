-- CreateIndex
CREATE INDEX "ticket_opened_at_idx" ON "ticket"("opened_at");

-- CreateIndex
CREATE INDEX "flag_opened_at_idx" ON "flag"("opened_at");

-- CreateIndex
CREATE INDEX "callback_opened_at_idx" ON "callback"("opened_at");

-- The ends of a ticket's stays in a stage, by day, among very many other events.
CREATE INDEX "ticket_event_stage_ends" ON "ticket_event" ("at") WHERE "kind" IN ('moved', 'moved-back', 'handed-over');
