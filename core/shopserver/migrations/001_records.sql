-- SPDX-License-Identifier: GPL-3.0-or-later
-- What is published: records, their entries as they were sealed, photos once, and who published what when.
-- The owner is caprail_keeper. Nobody else writes into a table: a bench calls the functions of 003_publish.sql.

CREATE TABLE record (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  identity bytea NOT NULL UNIQUE CHECK (length(identity) = 32),
  head bytea NOT NULL CHECK (length(head) = 32),
  entries bigint NOT NULL CHECK (entries >= 0)
);
COMMENT ON TABLE record IS 'One row a record. Two records are the same when their first seal is.';
COMMENT ON COLUMN record.identity IS 'seal of the first entry, 32 bytes';
COMMENT ON COLUMN record.head IS 'seal of the last entry that is here';
COMMENT ON COLUMN record.entries IS 'how many entries are here, counted';

-- No foreign key: a check for each of millions of rows would say again what add_entries has seen to.
CREATE TABLE entry (
  record bigint NOT NULL,
  number bigint NOT NULL,
  seal bytea NOT NULL,
  kind text NOT NULL,
  made_at timestamptz NOT NULL,
  person text NOT NULL,
  line text NOT NULL,
  PRIMARY KEY (record, number)
);
COMMENT ON TABLE entry IS 'The ledgers, entry by entry. Rows are added, and never changed.';
COMMENT ON COLUMN entry.seal IS 'SHA-256 over the seal of the entry before it (32 zero bytes before the first) and line';
COMMENT ON COLUMN entry.line IS 'the entry as it was sealed: one JSON object in the form of RFC 8785';
-- Few entries name a lot, and "which engines have this lot" must not read the rest.
CREATE INDEX entry_lot ON entry ((line::jsonb ->> 'lot')) WHERE kind IN ('part', 'closing_step_done');
CREATE INDEX entry_struck ON entry (record, ((line::jsonb ->> 'entry')::bigint)) WHERE kind = 'struck';

CREATE TABLE attachment (
  sha256 bytea PRIMARY KEY CHECK (length(sha256) = 32),
  size bigint NOT NULL CHECK (size >= 0)
);
COMMENT ON TABLE attachment IS 'Photos and files, each once, however many records have it.';
CREATE TABLE attachment_piece (
  sha256 bytea NOT NULL REFERENCES attachment ON DELETE CASCADE,
  piece bigint NOT NULL,
  bytes bytea NOT NULL,
  PRIMARY KEY (sha256, piece)
);
COMMENT ON TABLE attachment_piece IS 'Their bytes, in pieces of up to a mebibyte, from piece 0.';
ALTER TABLE attachment_piece ALTER COLUMN bytes SET STORAGE EXTERNAL; -- photos are compressed already

CREATE TABLE record_attachment (
  record bigint NOT NULL REFERENCES record ON DELETE CASCADE,
  sha256 bytea NOT NULL REFERENCES attachment,
  PRIMARY KEY (record, sha256)
);
CREATE INDEX record_attachment_sha256 ON record_attachment (sha256);

CREATE TABLE publication (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  record bigint NOT NULL REFERENCES record ON DELETE CASCADE,
  published timestamptz NOT NULL DEFAULT now(),
  publisher text NOT NULL DEFAULT session_user,
  file_name text NOT NULL,
  first_number bigint NOT NULL,
  last_number bigint NOT NULL,
  head bytea NOT NULL
);
COMMENT ON TABLE publication IS 'Who sent which entries when. Rows are added, and never changed.';
CREATE INDEX publication_record ON publication (record, id DESC);

-- Not even the keeper changes what is here by accident; taking a whole record away is take_away in 003_publish.sql.
CREATE FUNCTION only_added() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'rows of caprail.% are only added', TG_TABLE_NAME USING ERRCODE = 'CPR09';
END $$;
CREATE TRIGGER only_added BEFORE UPDATE OR TRUNCATE ON entry FOR EACH STATEMENT EXECUTE FUNCTION only_added();
CREATE TRIGGER only_added BEFORE UPDATE OR TRUNCATE ON publication FOR EACH STATEMENT EXECUTE FUNCTION only_added();
CREATE TRIGGER only_added BEFORE UPDATE OR TRUNCATE ON attachment FOR EACH STATEMENT EXECUTE FUNCTION only_added();
CREATE TRIGGER only_added BEFORE UPDATE OR TRUNCATE ON attachment_piece FOR EACH STATEMENT EXECUTE FUNCTION only_added();
