-- Why a ticket went back a stage, and why its owner was erased, stands in no other row than that of its history: so that
-- row stands in the trail. All else that the history says is in the rows it speaks of.
CREATE CONSTRAINT TRIGGER audit AFTER INSERT ON "ticket_event" DEFERRABLE INITIALLY DEFERRED FOR EACH ROW
  WHEN (NEW."kind" IN ('moved-back', 'owner-erased') AND audit_wanted()) EXECUTE FUNCTION audit_row();
