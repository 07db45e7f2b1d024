-- SPDX-License-Identifier: GPL-3.0-or-later
-- How a bench publishes: five functions that only add, and judge what they are given. They run with the rights of their
-- owner, so that a bench needs none on the tables. What they refuse has a code of its own:
--   CPR01  the entries do not follow those that are here
--   CPR02  an entry does not fit its seal
--   CPR03  bytes do not fit the hash and size of their attachment
--   CPR04  what the list is to say is not that of the record as it is here, or has other fields

-- How far a record is known here: how many entries, and the seal of the entry "number". No row: it is not known.
CREATE FUNCTION known(of_identity bytea, at_number bigint)
RETURNS TABLE (id bigint, entries bigint, head bytea, seal bytea)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
  SELECT r.id, r.entries, r.head, e.seal
  FROM record AS r LEFT JOIN entry AS e ON e.record = r.id AND e.number = at_number
  WHERE r.identity = of_identity
$$;

-- Makes a record known, and holds it until the transaction ends: two that publish it wait for each other.
CREATE FUNCTION hold_record(of_identity bytea) RETURNS TABLE (id bigint, entries bigint, head bytea)
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
BEGIN
  INSERT INTO record (identity, head, entries) VALUES (of_identity, decode(repeat('00', 32), 'hex'), 0)
    ON CONFLICT (identity) DO NOTHING;
  RETURN QUERY SELECT r.id, r.entries, r.head FROM record AS r WHERE r.identity = of_identity FOR UPDATE;
END $$;

-- Adds entries from number "first" on: "lines" one below the other, "seals" one behind the other, 32 bytes each. Every
-- seal is worked out again here.
CREATE FUNCTION add_entries(to_record bigint, first bigint, lines text, seals bytea) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
DECLARE
  held record%ROWTYPE;
  given bigint := length(seals) / 32;
  fitting bigint;
  chain bytea; -- the seal before the first line, then theirs
BEGIN
  SELECT * INTO held FROM record AS r WHERE r.id = to_record FOR UPDATE;
  IF NOT FOUND OR held.entries + 1 <> first OR given = 0 THEN
    RAISE EXCEPTION 'the entries from % on do not follow the % that are here', first, held.entries USING ERRCODE = 'CPR01';
  END IF;
  chain := held.head || seals;
  INSERT INTO entry (record, number, seal, kind, made_at, person, line)
    SELECT to_record, first + s.n - 1, s.seal, s.said ->> 'kind', (s.said ->> 'time')::timestamptz, s.said ->> 'person', s.line
    FROM (SELECT g.line, g.n, substring(chain FROM g.n::integer * 32 + 1 FOR 32) AS seal, g.line::jsonb AS said
          FROM string_to_table(lines, E'\n') WITH ORDINALITY AS g (line, n) OFFSET 0) AS s -- each worked out once
    WHERE s.seal = sha256(substring(chain FROM s.n::integer * 32 - 31 FOR 32) || convert_to(s.line, 'UTF8'))
      AND (s.said ->> 'sequence')::bigint = first + s.n - 1;
  GET DIAGNOSTICS fitting = ROW_COUNT;
  IF fitting <> given OR length(seals) <> 32 * given THEN
    RAISE EXCEPTION 'an entry from % on does not fit its seal', first USING ERRCODE = 'CPR02';
  END IF;
  IF held.entries = 0 AND substring(seals FROM 1 FOR 32) <> held.identity THEN
    RAISE EXCEPTION 'the first seal is not that of this record' USING ERRCODE = 'CPR02';
  END IF;
  UPDATE record AS r SET head = substring(seals FROM (32 * (given - 1) + 1)::integer FOR 32), entries = first + given - 1
    WHERE r.id = to_record;
END $$;

-- Begins an attachment of a record; true when its bytes are to follow, false when somebody else has brought them.
CREATE FUNCTION begin_attachment(to_record bigint, of_sha256 bytea, of_size bigint) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
DECLARE
  added bigint;
BEGIN
  INSERT INTO attachment (sha256, size) VALUES (of_sha256, of_size) ON CONFLICT DO NOTHING;
  GET DIAGNOSTICS added = ROW_COUNT;
  INSERT INTO record_attachment (record, sha256) VALUES (to_record, of_sha256) ON CONFLICT DO NOTHING;
  RETURN added = 1;
END $$;

-- Adds the next piece; the last one judges the whole.
CREATE FUNCTION add_piece(of_sha256 bytea, at_piece bigint, of_bytes bytea, is_last boolean) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
DECLARE
  whole bytea;
BEGIN
  IF EXISTS (SELECT FROM attachment AS a WHERE a.sha256 = of_sha256 AND a.xmin <> pg_current_xact_id()::xid) THEN
    RAISE EXCEPTION 'these bytes are here already' USING ERRCODE = 'CPR03';
  END IF;
  INSERT INTO attachment_piece (sha256, piece, bytes) VALUES (of_sha256, at_piece, of_bytes);
  IF is_last THEN
    SELECT string_agg(p.bytes, ''::bytea ORDER BY p.piece) INTO whole FROM attachment_piece AS p WHERE p.sha256 = of_sha256;
    IF sha256(whole) <> of_sha256 OR length(whole) <> (SELECT a.size FROM attachment AS a WHERE a.sha256 = of_sha256) THEN
      RAISE EXCEPTION 'the bytes do not fit their hash' USING ERRCODE = 'CPR03';
    END IF;
  END IF;
END $$;

-- Ends a publication: what the list says of the record (an object of the fields of "listing"), the words it is found by,
-- its figures (an object of the rows of "banded", "movement" and "instrument"). "sent" counts the entries that were added.
CREATE FUNCTION publish(of_record bigint, sent bigint, row_of_list jsonb, words text, figures jsonb) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
DECLARE
  held record%ROWTYPE;
  whole jsonb;
BEGIN
  SELECT * INTO held FROM record AS r WHERE r.id = of_record FOR UPDATE;
  whole := row_of_list || jsonb_build_object('id', of_record, 'identity', encode(held.identity, 'hex'),
    'head', encode(held.head, 'hex'), 'published', now(), 'publisher', session_user);
  IF held.entries IS DISTINCT FROM (row_of_list ->> 'entries')::bigint
     OR EXISTS (SELECT FROM jsonb_object_keys(whole) AS k
                WHERE NOT EXISTS (SELECT FROM pg_attribute WHERE attrelid = 'listing'::regclass AND attname = k AND attnum > 0))
  THEN
    RAISE EXCEPTION 'what the list is to say is not of this record' USING ERRCODE = 'CPR04';
  END IF;
  DELETE FROM listing AS l WHERE l.id = of_record;
  INSERT INTO listing SELECT (jsonb_populate_record(NULL::listing, whole)).*;
  DELETE FROM found AS f WHERE f.id = of_record;
  INSERT INTO found VALUES (of_record, array_to_tsvector(array_remove(string_to_array(words, ' '), '')));
  DELETE FROM banded AS b WHERE b.listing = of_record;
  INSERT INTO banded SELECT (jsonb_populate_record(NULL::banded, v || jsonb_build_object('listing', of_record))).*
    FROM jsonb_array_elements(figures -> 'banded') AS v;
  DELETE FROM movement AS m WHERE m.listing = of_record;
  INSERT INTO movement SELECT (jsonb_populate_record(NULL::movement, v || jsonb_build_object('listing', of_record))).*
    FROM jsonb_array_elements(figures -> 'movement') AS v;
  DELETE FROM instrument AS i WHERE i.listing = of_record;
  INSERT INTO instrument SELECT (jsonb_populate_record(NULL::instrument, v || jsonb_build_object('listing', of_record))).*
    FROM jsonb_array_elements(figures -> 'instrument') AS v;
  INSERT INTO publication (record, file_name, first_number, last_number, head)
    VALUES (of_record, row_of_list ->> 'path', held.entries - sent + 1, held.entries, held.head);
END $$;

-- Takes a whole record away, with the photos that no other record has; false when it is not here. For the keeper.
CREATE FUNCTION take_away(of_identity bytea) RETURNS boolean
LANGUAGE plpgsql SET search_path = caprail, pg_temp AS $$
DECLARE
  gone bigint;
BEGIN
  SELECT r.id INTO gone FROM record AS r WHERE r.identity = of_identity FOR UPDATE;
  IF NOT FOUND THEN
    RETURN false;
  END IF;
  DELETE FROM entry AS e WHERE e.record = gone;
  WITH its AS (DELETE FROM record_attachment AS ra WHERE ra.record = gone RETURNING ra.sha256)
  DELETE FROM attachment AS a USING its
    WHERE a.sha256 = its.sha256
      AND NOT EXISTS (SELECT FROM record_attachment AS o WHERE o.sha256 = a.sha256 AND o.record <> gone);
  DELETE FROM record AS r WHERE r.id = gone;
  RETURN true;
END $$;

-- The first entry of a record that does not fit its seal or is missing; nothing where all fit.
CREATE FUNCTION first_unfit(of_record bigint) RETURNS bigint
LANGUAGE sql STABLE SET search_path = caprail, pg_temp AS $$
  SELECT min(n) FROM (
    SELECT row_number() OVER w AS n, e.number, e.seal,
           sha256(coalesce(lag(e.seal) OVER w, decode(repeat('00', 32), 'hex')) || convert_to(e.line, 'UTF8')) AS fitting
    FROM entry AS e WHERE e.record = of_record WINDOW w AS (ORDER BY e.number)) AS chain
  WHERE chain.number <> chain.n OR chain.seal <> chain.fitting
$$;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA caprail FROM PUBLIC;
GRANT USAGE ON SCHEMA caprail TO caprail_bench, caprail_reader;
GRANT EXECUTE ON FUNCTION known, hold_record, add_entries, begin_attachment, add_piece, publish
  TO caprail_bench;
GRANT EXECUTE ON FUNCTION known, first_unfit TO caprail_reader;
GRANT SELECT ON ALL TABLES IN SCHEMA caprail TO caprail_reader;
GRANT SELECT ON migration TO caprail_bench;
