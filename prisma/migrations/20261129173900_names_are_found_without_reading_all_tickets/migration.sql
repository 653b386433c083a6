-- A name or a piece of a phone number that many owners share made the planner read all tickets from end to end. Now each
-- owner's tickets are looked up by their index, fenced off from the guess; and where more owners match than that is worth,
-- the newest ticket of one of them is near the end, so it is met soon by going back from there. Otherwise as it was.
CREATE OR REPLACE FUNCTION find_tickets(wanted_bare text, wanted_number text, wanted_serial text, wanted_name text,
                             wanted_digits text, wanted_parts text[], wanted_location int, most int)
RETURNS TABLE (id int, matched text, rank int) LANGUAGE plpgsql STABLE SECURITY DEFINER ROWS 20
SET search_path = public, pg_temp SET plan_cache_mode = 'force_custom_plan' AS $$
DECLARE
  many CONSTANT int := 2000;
  named int[];
  called int[];
BEGIN
  IF NOT sees_all() AND wanted_location IS DISTINCT FROM sees_location() THEN RETURN; END IF;
  RETURN QUERY
    (SELECT t.id, 'number', 1 FROM ticket t
     WHERE (replace(t.number, '-', '') = wanted_bare OR t.number = wanted_number) AND t.location_id = wanted_location
     LIMIT most)
    UNION ALL
    (SELECT t.id, 'serial', 2 FROM unit u JOIN ticket t ON t.unit_id = u.id
     WHERE u.serial_search LIKE wanted_serial AND t.location_id = wanted_location ORDER BY t.id DESC LIMIT most)
    UNION ALL
    -- Of each part the newest tickets, in the order of its index; a join would walk all tickets or all records.
    (SELECT DISTINCT held.ticket_id, 'part', 5
     FROM part p, LATERAL (
       SELECT r.ticket_id FROM place_record r
       WHERE r.part_id = p.id AND (SELECT t.location_id FROM ticket t WHERE t.id = r.ticket_id) = wanted_location
       GROUP BY r.ticket_id ORDER BY r.ticket_id DESC LIMIT most) held
     WHERE p.key = ANY(wanted_parts) ORDER BY held.ticket_id DESC LIMIT most);
  -- No index knows a piece of fewer than three letters.
  IF length(wanted_name) >= length('%...%') THEN
    named := ARRAY(SELECT o.id FROM owner o WHERE o.name ILIKE wanted_name LIMIT many);
  END IF;
  IF cardinality(named) < many THEN
    RETURN QUERY
      SELECT own.id, 'owner', 3 FROM unnest(named) AS o(id), LATERAL (
        SELECT t.id FROM ticket t WHERE t.owner_id = o.id AND t.location_id = wanted_location OFFSET 0) own
      ORDER BY own.id DESC LIMIT most;
  ELSE
    RETURN QUERY
      SELECT t.id, 'owner', 3 FROM ticket t JOIN owner o ON o.id = t.owner_id
      WHERE o.name ILIKE wanted_name AND t.location_id = wanted_location ORDER BY t.id DESC LIMIT most;
  END IF;
  IF wanted_digits IS NOT NULL THEN
    called := ARRAY(SELECT o.id FROM owner o WHERE regexp_replace(o.phone, '[^0-9]', '', 'g') LIKE wanted_digits LIMIT many);
  END IF;
  IF cardinality(called) < many THEN
    RETURN QUERY
      SELECT own.id, 'phone', 4 FROM unnest(called) AS o(id), LATERAL (
        SELECT t.id FROM ticket t WHERE t.owner_id = o.id AND t.location_id = wanted_location OFFSET 0) own
      ORDER BY own.id DESC LIMIT most;
  ELSIF wanted_digits IS NOT NULL THEN
    RETURN QUERY
      SELECT t.id, 'phone', 4 FROM ticket t JOIN owner o ON o.id = t.owner_id
      WHERE regexp_replace(o.phone, '[^0-9]', '', 'g') LIKE wanted_digits AND t.location_id = wanted_location
      ORDER BY t.id DESC LIMIT most;
  END IF;
END $$;
