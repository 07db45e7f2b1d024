-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a list of records reads, and what engines are compared by: worked out from each record by the program that
-- published it, and made anew with each publication. Days are counted from 1970-01-01, moments in milliseconds from then
-- (UTC), and the words of a state by their number, as in the index of a folder: 004_views.sql has them for people.

-- What texts are sorted by: letter case set aside, numbers in them by their value.
CREATE COLLATION natural_order (provider = icu, locale = 'und-u-kn-true-ks-level2');

CREATE TABLE listing (
  id bigint PRIMARY KEY REFERENCES record ON DELETE CASCADE,
  path text NOT NULL,
  size bigint NOT NULL,
  modified bigint NOT NULL,
  changed bigint NOT NULL,
  inode bigint NOT NULL,
  reading bigint NOT NULL,
  sentence text NOT NULL,
  customer text NOT NULL,
  engine text NOT NULL,
  serial text NOT NULL,
  build bigint NOT NULL,
  state bigint NOT NULL,
  round bigint NOT NULL,
  round_result bigint NOT NULL,
  pulled bigint NOT NULL,
  moved bigint NOT NULL,
  "out" bigint NOT NULL,
  stale bigint NOT NULL,
  last_entry bigint NOT NULL,
  entries bigint NOT NULL,
  who text NOT NULL,
  calibration_due bigint,
  template text NOT NULL,
  layout text NOT NULL,
  people text NOT NULL,
  identity text NOT NULL UNIQUE,
  head text NOT NULL,
  published timestamptz NOT NULL,
  publisher text NOT NULL
);
-- A list is shown in the order of any of its columns, a page at a time.
CREATE INDEX listing_customer ON listing (customer COLLATE natural_order, id);
CREATE INDEX listing_engine ON listing (engine COLLATE natural_order, serial COLLATE natural_order, build, id);
CREATE INDEX listing_path ON listing (path COLLATE natural_order, id);
CREATE INDEX listing_round ON listing (round, round_result, id);
CREATE INDEX listing_who ON listing (who COLLATE natural_order, id);
CREATE INDEX listing_serial ON listing (lower(serial));
CREATE INDEX listing_state ON listing (state, id);
CREATE INDEX listing_out ON listing ("out", id);
CREATE INDEX listing_stale ON listing (stale, id);
CREATE INDEX listing_last_entry ON listing (last_entry, id);
CREATE INDEX listing_calibration_due ON listing (calibration_due, id);
COMMENT ON TABLE listing IS 'One row a record, as its last publication left it.';
COMMENT ON COLUMN listing.path IS 'name that the file had when it was published';
COMMENT ON COLUMN listing.identity IS 'seal of the first entry, 64 hexadecimal digits';
COMMENT ON COLUMN listing.head IS 'seal of the last entry, 64 hexadecimal digits';

CREATE TABLE found (
  id bigint PRIMARY KEY REFERENCES record ON DELETE CASCADE,
  words tsvector NOT NULL
);
COMMENT ON TABLE found IS 'The words that a record is found by: small letters, without accents, as the program folds them.';
CREATE INDEX found_words ON found USING gin (words);

CREATE TABLE banded (
  listing bigint NOT NULL REFERENCES record ON DELETE CASCADE,
  build bigint NOT NULL,
  band text NOT NULL,
  place text NOT NULL,
  place_order text COLLATE "C" NOT NULL,
  value_nm bigint NOT NULL,
  state bigint NOT NULL,
  lower_nm bigint,
  upper_nm bigint
);
COMMENT ON TABLE banded IS 'One row a value of a banded quantity, as it stood at the end of its build or stands now.';
CREATE INDEX banded_listing ON banded (listing);
-- Holds all that a spread asks for, in its order.
CREATE INDEX banded_band ON banded (band, place_order, value_nm, place, state, lower_nm, upper_nm, listing);

CREATE TABLE movement (
  listing bigint NOT NULL REFERENCES record ON DELETE CASCADE,
  fastener text NOT NULL,
  wrench text NOT NULL,
  person text NOT NULL,
  pulled bigint NOT NULL,
  moved bigint NOT NULL,
  largest_mdeg bigint NOT NULL
);
COMMENT ON TABLE movement IS 'How often a person pulled a fastener with a wrench in the verify rounds of all builds.';
CREATE INDEX movement_listing ON movement (listing);

CREATE TABLE instrument (
  listing bigint NOT NULL REFERENCES record ON DELETE CASCADE,
  name text NOT NULL,
  kind bigint NOT NULL,
  serial text NOT NULL,
  calibrated bigint,
  due bigint,
  cycles bigint NOT NULL,
  due_cycles bigint
);
CREATE INDEX instrument_listing ON instrument (listing);
CREATE INDEX instrument_due ON instrument (due);
