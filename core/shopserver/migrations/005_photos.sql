-- SPDX-License-Identifier: GPL-3.0-or-later
-- Photos are whole or not there: what is missing of one is asked for again, and what comes is judged when its transaction
-- ends, so that nobody leaves a hash without its bytes or adds to bytes that are here.

ALTER TABLE attachment ADD CONSTRAINT attachment_largest CHECK (size <= 60 * 1024 * 1024) NOT VALID; -- as in a record
ALTER TABLE attachment_piece ADD CONSTRAINT attachment_piece_largest CHECK (length(bytes) <= 1024 * 1024) NOT VALID;

-- As many bytes as there should be, in pieces without a gap. Their hash is not worked out: that is what verifying does.
CREATE FUNCTION is_whole(of_sha256 bytea) RETURNS boolean
LANGUAGE sql STABLE SET search_path = caprail, pg_temp AS $$
  SELECT count(*) = max(p.piece) + 1 AND sum(length(p.bytes)) = (SELECT a.size FROM attachment AS a WHERE a.sha256 = of_sha256)
  FROM attachment_piece AS p WHERE p.sha256 = of_sha256
$$;

-- Which of these attachments, a hash of 32 bytes behind the other, are not whole here or not the record's.
CREATE FUNCTION lacking(of_record bigint, hashes bytea) RETURNS TABLE (sha256 bytea)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
  SELECT named.sha256
  FROM (SELECT substring(hashes FROM n * 32 + 1 FOR 32) AS sha256 FROM generate_series(0, length(hashes) / 32 - 1) AS n) AS named
  WHERE NOT EXISTS (SELECT FROM record_attachment AS ra WHERE ra.record = of_record AND ra.sha256 = named.sha256)
     OR is_whole(named.sha256) IS NOT TRUE
$$;

-- Begins an attachment of a record; true when its bytes are to follow, from piece 0 on.
CREATE OR REPLACE FUNCTION begin_attachment(to_record bigint, of_sha256 bytea, of_size bigint) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
DECLARE
  added bigint;
BEGIN
  INSERT INTO attachment (sha256, size) VALUES (of_sha256, of_size) ON CONFLICT DO NOTHING;
  GET DIAGNOSTICS added = ROW_COUNT;
  INSERT INTO record_attachment (record, sha256) VALUES (to_record, of_sha256) ON CONFLICT DO NOTHING;
  IF added = 1 THEN
    RETURN true;
  END IF;
  IF is_whole(of_sha256) THEN
    RETURN false;
  END IF;
  PERFORM FROM attachment AS a WHERE a.sha256 = of_sha256 FOR UPDATE; -- somebody else may be bringing it
  IF is_whole(of_sha256) THEN
    RETURN false;
  END IF;
  DELETE FROM attachment_piece AS p WHERE p.sha256 = of_sha256;
  RETURN true;
END $$;

-- Adds the next piece; all but the last have a mebibyte. is_last has no meaning any more.
CREATE OR REPLACE FUNCTION add_piece(of_sha256 bytea, at_piece bigint, of_bytes bytea, is_last boolean) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
BEGIN
  IF at_piece = 0 AND EXISTS (SELECT FROM attachment_piece AS p WHERE p.sha256 = of_sha256) THEN
    RAISE EXCEPTION 'these bytes are here already' USING ERRCODE = 'CPR03';
  END IF;
  IF at_piece < 0 OR (at_piece > 0 AND (length(of_bytes) = 0 OR NOT EXISTS (
       SELECT FROM attachment_piece AS p
       WHERE p.sha256 = of_sha256 AND p.piece = at_piece - 1 AND p.xmin = pg_current_xact_id()::xid
         AND length(p.bytes) = 1024 * 1024)))
     OR at_piece * 1024 * 1024 + length(of_bytes) > (SELECT a.size FROM attachment AS a WHERE a.sha256 = of_sha256)
  THEN
    RAISE EXCEPTION 'this piece does not follow those that came' USING ERRCODE = 'CPR03';
  END IF;
  INSERT INTO attachment_piece (sha256, piece, bytes) VALUES (of_sha256, at_piece, of_bytes);
END $$;

CREATE FUNCTION bytes_fit() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
DECLARE
  held_size bigint;
  whole bytea;
BEGIN
  SELECT a.size INTO held_size FROM attachment AS a WHERE a.sha256 = NEW.sha256;
  IF NOT FOUND THEN
    RETURN NULL; -- taken away again
  END IF;
  SELECT string_agg(p.bytes, ''::bytea ORDER BY p.piece) INTO whole FROM attachment_piece AS p WHERE p.sha256 = NEW.sha256;
  IF whole IS NULL OR length(whole) <> held_size OR sha256(whole) <> NEW.sha256 THEN
    RAISE EXCEPTION 'the bytes do not fit their hash' USING ERRCODE = 'CPR03';
  END IF;
  RETURN NULL;
END $$;
CREATE FUNCTION bytes_came() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = caprail, pg_temp AS $$
BEGIN
  IF NOT EXISTS (SELECT FROM attachment_piece AS p WHERE p.sha256 = NEW.sha256)
     AND EXISTS (SELECT FROM attachment AS a WHERE a.sha256 = NEW.sha256) THEN
    RAISE EXCEPTION 'the bytes of an attachment did not come' USING ERRCODE = 'CPR03';
  END IF;
  RETURN NULL;
END $$;
-- Of each photo once: after the first piece no other can be added but those that follow it.
CREATE CONSTRAINT TRIGGER bytes_fit AFTER INSERT ON attachment_piece DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (NEW.piece = 0) EXECUTE FUNCTION bytes_fit();
CREATE CONSTRAINT TRIGGER bytes_came AFTER INSERT ON attachment DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION bytes_came();

REVOKE ALL ON FUNCTION is_whole, lacking, bytes_fit, bytes_came FROM PUBLIC;
GRANT EXECUTE ON FUNCTION lacking TO caprail_bench, caprail_reader;
