-- Search finds owners by a piece of their name or phone number, units by a piece of their serial number, tickets by
-- their number with or without its dash, and tickets by a part that was recorded on them.
CREATE EXTENSION IF NOT EXISTS pg_trgm;

CREATE INDEX "owner_name_pieces" ON "owner" USING GIN ("name" gin_trgm_ops);
CREATE INDEX "unit_serial_pieces" ON "unit" USING GIN ("serial_search" gin_trgm_ops);
CREATE INDEX "place_record_part_id_idx" ON "place_record" ("part_id");

-- What the schema language has no words for: indexes on what a column amounts to.
CREATE INDEX "owner_phone_digits" ON "owner" USING GIN (regexp_replace("phone", '[^0-9]', '', 'g') gin_trgm_ops);
CREATE INDEX "ticket_number_bare" ON "ticket" (replace("number", '-', ''));
