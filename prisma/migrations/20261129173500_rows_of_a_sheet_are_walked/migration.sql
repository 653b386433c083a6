-- outside a transaction
-- Rows of a spreadsheet are walked once from end to end; keeping them in order all the while cost more than that walk.
DROP INDEX CONCURRENTLY IF EXISTS "sheet_row_sheet_id_key_n_idx";
