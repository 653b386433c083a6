-- A number with five digits and more is written whole; lpad would cut it to four, so that the ten-thousandth ticket of a
-- year could not be opened. Numbers brought in by hand are followed up to seven digits.
CREATE OR REPLACE FUNCTION next_ticket_number(prefix text) RETURNS text LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = public, pg_temp AS $$
  SELECT prefix || lpad(n::text, greatest(4, length(n::text)), '0')
  FROM (SELECT coalesce(max(substr(last.number, 4)::int), 0) + 1 AS n
        FROM ticket last
        WHERE last.number LIKE prefix || '%' AND substr(last.number, 4) ~ '^[0-9]{1,7}$') following
$$;
