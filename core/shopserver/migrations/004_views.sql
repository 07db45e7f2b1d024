-- SPDX-License-Identifier: GPL-3.0-or-later
-- For a person's own tools: what is here, in words and with the unit in the name. Only what stands is told: entries that
-- a later one struck are left out, except in "entries", which says which one struck them.

CREATE FUNCTION day(days bigint) RETURNS date LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT date '1970-01-01' + days::integer
$$;
CREATE FUNCTION check_word(state bigint) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT (ARRAY['not done', 'good', 'out', 'too close to call', 'not proven', 'stale'])[state + 1]
$$;

CREATE VIEW records AS
  SELECT l.id AS record, l.customer, l.engine, l.serial, l.build,
         (ARRAY['not read yet', 'measuring', 'trial fit open', 'ready to close', 'signed off'])[l.state + 1] AS state,
         nullif(l.round, 0) AS verify_round, (ARRAY['none', 'begun', 'all held', 'moved', 'no longer counts'])[l.round_result + 1] AS verify_round_result,
         l.pulled AS fasteners_pulled, l.moved AS fasteners_moved, l."out" AS checks_out, l.stale AS checks_stale,
         to_timestamp(l.last_entry / 1000.0) AS last_entry_at, l.who AS last_entry_by, l.entries,
         day(l.calibration_due) AS calibration_due, l.template, l.layout, l.path AS file_name, l.identity AS first_seal,
         l.head AS last_seal, l.published AS published_at, l.publisher AS published_by
  FROM listing AS l;
COMMENT ON VIEW records IS 'One row a record, as its last publication left it.';

CREATE VIEW entries AS
  SELECT e.record, e.number, e.kind, e.made_at, e.person, e.line::jsonb AS said,
         (SELECT min(s.number) FROM entry AS s
          WHERE s.record = e.record AND s.kind = 'struck' AND (s.line::jsonb ->> 'entry')::bigint = e.number) AS struck_by,
         encode(e.seal, 'hex') AS seal
  FROM entry AS e;
COMMENT ON VIEW entries IS 'Every entry: what it says as one object, and which entry struck it, if any.';

CREATE VIEW photos AS
  SELECT ra.record, encode(a.sha256, 'hex') AS sha256, a.size AS size_bytes,
         (SELECT string_agg(p.bytes, ''::bytea ORDER BY p.piece) FROM attachment_piece AS p WHERE p.sha256 = a.sha256) AS bytes
  FROM record_attachment AS ra JOIN attachment AS a USING (sha256);

CREATE VIEW banded_values AS
  SELECT b.listing AS record, b.build, b.band, b.place, b.value_nm, b.value_nm / 1e6 AS value_mm, b.lower_nm,
         b.lower_nm / 1e6 AS lower_mm, b.upper_nm, b.upper_nm / 1e6 AS upper_mm, check_word(b.state) AS state
  FROM banded AS b;
COMMENT ON VIEW banded_values IS 'One row a value of a banded quantity, with the band that its build judged it by.';

CREATE VIEW fastener_torques AS
  SELECT e.record, e.number, e.made_at, e.person, e.line::jsonb ->> 'fastener' AS fastener,
         (e.line::jsonb ->> 'torque_mNm')::bigint AS torque_millinewton_metres,
         (e.line::jsonb ->> 'torque_mNm')::bigint / 1e3 AS torque_newton_metres,
         (e.line::jsonb ->> 'angle_mdeg')::bigint AS angle_mdeg, (e.line::jsonb ->> 'stretch_nm')::bigint AS stretch_nm,
         e.line::jsonb ->> 'instrument' AS instrument
  FROM entry AS e
  WHERE e.kind = 'fastener_tightened'
    AND NOT EXISTS (SELECT FROM entry AS s WHERE s.record = e.record AND s.kind = 'struck'
                    AND (s.line::jsonb ->> 'entry')::bigint = e.number);
COMMENT ON VIEW fastener_torques IS 'Each tightening of a fastener that stands.';

CREATE VIEW movements AS
  SELECT m.listing AS record, m.fastener, m.wrench, m.person, m.pulled AS times_pulled, m.moved AS times_moved,
         m.largest_mdeg AS largest_movement_mdeg, m.largest_mdeg / 1e3 AS largest_movement_deg
  FROM movement AS m;

CREATE VIEW instruments_due AS
  SELECT i.name AS instrument, (ARRAY['micrometer', 'bore gauge', 'feeler gauge', 'straightedge', 'depth gauge', 'dial indicator',
                'gauging strip', 'torque wrench', 'angle gauge', 'stretch gauge', 'calliper'])[i.kind + 1] AS kind, i.serial,
         day(max(i.calibrated)) AS calibrated, day(max(i.due)) AS due, max(i.cycles) AS cycles,
         max(i.due_cycles) AS due_cycles, count(DISTINCT i.listing) AS records
  FROM instrument AS i GROUP BY i.name, i.kind, i.serial;
COMMENT ON VIEW instruments_due IS 'Instruments as all records together know them: those of one name, kind and serial are one.';

CREATE VIEW lots AS
  SELECT e.record, e.number, e.made_at, e.person, e.line::jsonb ->> 'lot' AS lot,
         coalesce(e.line::jsonb ->> 'product', e.line::jsonb ->> 'what', e.line::jsonb ->> 'sort', '') AS what,
         e.line::jsonb ->> 'place' AS place, l.customer, l.engine, l.serial
  FROM entry AS e JOIN listing AS l ON l.id = e.record
  WHERE e.kind IN ('part', 'closing_step_done') AND e.line::jsonb ->> 'lot' IS NOT NULL
    AND NOT EXISTS (SELECT FROM entry AS s WHERE s.record = e.record AND s.kind = 'struck'
                    AND (s.line::jsonb ->> 'entry')::bigint = e.number);
COMMENT ON VIEW lots IS 'Lots of parts, sealants and oils, and the engines that have them.';

CREATE VIEW publications AS
  SELECT p.record, p.published AS published_at, p.publisher AS published_by, p.file_name, p.first_number, p.last_number,
         encode(p.head, 'hex') AS last_seal
  FROM publication AS p;

GRANT SELECT ON ALL TABLES IN SCHEMA caprail TO caprail_reader;
GRANT EXECUTE ON FUNCTION day, check_word TO caprail_reader;
