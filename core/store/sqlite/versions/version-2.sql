CREATE TABLE entry(
  sequence INTEGER PRIMARY KEY,
  time TEXT NOT NULL,
  person TEXT NOT NULL,
  kind TEXT NOT NULL,
  seal BLOB NOT NULL CHECK(length(seal) = 32)
) STRICT;

CREATE TABLE engine_described(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  shop TEXT NOT NULL,
  customer TEXT NOT NULL,
  engine TEXT NOT NULL,
  serial TEXT NOT NULL,
  note TEXT NOT NULL,
  address TEXT,
  telephone TEXT
) STRICT;

CREATE TABLE layout_set(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  caps INTEGER NOT NULL,
  fasteners_per_cap INTEGER NOT NULL,
  girdle_ring TEXT NOT NULL CHECK(girdle_ring IN ('inner', 'outer')),
  tied_first INTEGER NOT NULL,
  tied_last INTEGER NOT NULL,
  rods INTEGER NOT NULL,
  throws INTEGER NOT NULL,
  cap_spacing_nm INTEGER NOT NULL,
  stud_span_nm INTEGER NOT NULL,
  outer_stud_span_nm INTEGER NOT NULL,
  rail_span_nm INTEGER NOT NULL,
  pickup_cap INTEGER NOT NULL,
  pickup_side TEXT NOT NULL CHECK(pickup_side IN ('left', 'right')),
  dipstick_cap INTEGER NOT NULL,
  dipstick_side TEXT NOT NULL CHECK(dipstick_side IN ('left', 'right')),
  source TEXT NOT NULL,
  plate_thickness_nm INTEGER,
  plate_metal TEXT CHECK(plate_metal IN ('steel', 'aluminium')),
  plate_modulus INTEGER,
  plate_poisson INTEGER,
  window_along_nm INTEGER,
  window_across_nm INTEGER,
  plate_overhang_nm INTEGER
) STRICT;

CREATE TABLE band_set(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  band TEXT NOT NULL,
  lo_nm INTEGER NOT NULL,
  lo_typed TEXT NOT NULL,
  hi_nm INTEGER NOT NULL,
  hi_typed TEXT NOT NULL,
  target_nm INTEGER,
  target_typed TEXT,
  source TEXT NOT NULL,
  why TEXT
) STRICT;

CREATE TABLE rules_set(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  decision TEXT NOT NULL CHECK(decision IN ('guarded', 'simple')),
  coverage TEXT NOT NULL CHECK(coverage IN ('k = 2', 'Student''s t')),
  repeat_limit_nm INTEGER NOT NULL,
  minimum_passes INTEGER NOT NULL,
  kit_tolerance_nm INTEGER NOT NULL,
  largest_stack INTEGER NOT NULL,
  objective TEXT NOT NULL CHECK(objective IN ('smallest residual', 'least twist', 'least load')),
  torque_scatter_percent INTEGER NOT NULL,
  counterweight_minimum_nm INTEGER NOT NULL,
  source TEXT NOT NULL,
  temperature_spread_mdegC INTEGER,
  second_person_verifies INTEGER,
  second_person_signs INTEGER,
  pickup_tube_minimum_nm INTEGER,
  dipstick_minimum_nm INTEGER,
  turning_rise_mNm INTEGER,
  why TEXT
) STRICT;

CREATE TABLE fastener_group_set(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  fastener_group TEXT NOT NULL CHECK(fastener_group IN ('main', 'rod', 'girdle', 'pan', 'front', 'rear')),
  ring TEXT CHECK(ring IN ('inner', 'outer')),
  count INTEGER NOT NULL,
  thread TEXT NOT NULL,
  grade TEXT NOT NULL,
  lubricant TEXT NOT NULL,
  method TEXT NOT NULL CHECK(method IN ('torque', 'torque and angle', 'stretch', 'torque and angle to yield')),
  torque_mNm INTEGER,
  torque_typed TEXT,
  angle_mdeg INTEGER,
  angle_typed TEXT,
  stretch_nm INTEGER,
  stretch_typed TEXT,
  steps INTEGER NOT NULL,
  tightening_order TEXT NOT NULL,
  source TEXT NOT NULL,
  group_name TEXT,
  places TEXT,
  piece TEXT CHECK(piece IN ('stud with nut', 'bolt')),
  verified_by TEXT CHECK(verified_by IN ('torque', 'length', 'witness mark')),
  is_single_use INTEGER,
  stretch_tolerance_nm INTEGER,
  stretch_tolerance_typed TEXT,
  grip_nm INTEGER,
  grip_typed TEXT,
  shank_nm INTEGER,
  shank_typed TEXT,
  thread_in_grip_nm INTEGER,
  thread_in_grip_typed TEXT,
  clamped TEXT,
  why TEXT
) STRICT;

CREATE TABLE person_added(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  name TEXT NOT NULL,
  role TEXT NOT NULL
) STRICT;

CREATE TABLE instrument_added(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  instrument TEXT NOT NULL,
  type TEXT NOT NULL CHECK(type IN ('micrometer', 'bore gauge', 'feeler gauge', 'straightedge', 'depth gauge', 'dial indicator', 'gauging strip', 'torque wrench', 'angle gauge', 'stretch gauge', 'calliper')),
  maker TEXT NOT NULL,
  serial TEXT NOT NULL,
  limit_of_error_nm INTEGER,
  limit_of_error_typed TEXT,
  smallest_torque_mNm INTEGER,
  smallest_torque_typed TEXT,
  largest_torque_mNm INTEGER,
  largest_torque_typed TEXT,
  calibrated TEXT,
  due TEXT,
  due_cycles INTEGER,
  cycles INTEGER,
  step_nm INTEGER,
  step_typed TEXT,
  set_with TEXT,
  corrects TEXT
) STRICT;

CREATE TABLE journal_reading(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  journal TEXT NOT NULL,
  station INTEGER NOT NULL,
  direction INTEGER NOT NULL,
  diameter_nm INTEGER NOT NULL,
  diameter_typed TEXT NOT NULL,
  instrument TEXT NOT NULL,
  part_temperature_mdegC INTEGER,
  part_temperature_typed TEXT
) STRICT;

CREATE TABLE bore_reading(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  journal TEXT NOT NULL,
  method TEXT NOT NULL CHECK(method IN ('bore with shells', 'housing', 'gauging strip')),
  station INTEGER NOT NULL,
  value_nm INTEGER NOT NULL,
  value_typed TEXT NOT NULL,
  instrument TEXT NOT NULL,
  part_temperature_mdegC INTEGER,
  part_temperature_typed TEXT
) STRICT;

CREATE TABLE shell_measured(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  shell TEXT NOT NULL,
  fits TEXT NOT NULL CHECK(fits IN ('main', 'rod')),
  half TEXT NOT NULL CHECK(half IN ('either', 'upper', 'lower')),
  thickness_nm INTEGER NOT NULL,
  thickness_typed TEXT NOT NULL,
  is_marked INTEGER NOT NULL,
  instrument TEXT NOT NULL,
  part_temperature_mdegC INTEGER,
  part_temperature_typed TEXT
) STRICT;

CREATE TABLE shells_fitted(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  journal TEXT NOT NULL,
  upper TEXT NOT NULL,
  lower TEXT NOT NULL,
  why TEXT
) STRICT;

CREATE TABLE fit_reading(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  fit TEXT NOT NULL,
  place INTEGER NOT NULL,
  value_nm INTEGER NOT NULL,
  value_typed TEXT NOT NULL,
  instrument TEXT NOT NULL,
  part_temperature_mdegC INTEGER,
  part_temperature_typed TEXT
) STRICT;

CREATE TABLE part_changed(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  part TEXT NOT NULL CHECK(part IN ('nut and washer', 'pan rail', 'shells', 'crank', 'pan', 'gasket', 'girdle plate', 'pickup')),
  place TEXT NOT NULL,
  what TEXT NOT NULL
) STRICT;

CREATE TABLE fastener_tightened(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  fastener TEXT NOT NULL,
  torque_mNm INTEGER,
  torque_typed TEXT,
  angle_mdeg INTEGER,
  angle_typed TEXT,
  stretch_nm INTEGER,
  stretch_typed TEXT,
  instrument TEXT NOT NULL,
  is_new INTEGER
) STRICT;

CREATE TABLE fastener_loosened(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  fastener TEXT NOT NULL,
  why TEXT NOT NULL
) STRICT;

CREATE TABLE round_begun(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  round INTEGER NOT NULL,
  instrument TEXT NOT NULL
) STRICT;

CREATE TABLE round_outcome(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  round INTEGER NOT NULL,
  fastener TEXT NOT NULL,
  outcome TEXT NOT NULL CHECK(outcome IN ('held', 'moved')),
  angle_mdeg INTEGER,
  angle_typed TEXT,
  torque_mNm INTEGER,
  torque_typed TEXT,
  instrument TEXT NOT NULL,
  verified_by TEXT CHECK(verified_by IN ('torque', 'length', 'witness mark')),
  stretch_nm INTEGER,
  stretch_typed TEXT
) STRICT;

CREATE TABLE gap_reading(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  position TEXT NOT NULL,
  pass INTEGER NOT NULL,
  gap_nm INTEGER NOT NULL,
  gap_typed TEXT NOT NULL,
  instrument TEXT NOT NULL,
  does_not_go_nm INTEGER,
  does_not_go_typed TEXT,
  straightedge TEXT
) STRICT;

CREATE TABLE shim_added(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  shim TEXT NOT NULL,
  marked_nm INTEGER NOT NULL,
  marked_typed TEXT NOT NULL,
  bag TEXT NOT NULL
) STRICT;

CREATE TABLE shim_measured(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  shim TEXT NOT NULL,
  thickness_nm INTEGER NOT NULL,
  thickness_typed TEXT NOT NULL,
  instrument TEXT NOT NULL,
  part_temperature_mdegC INTEGER,
  part_temperature_typed TEXT
) STRICT;

CREATE TABLE shim_set_aside(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  shim TEXT NOT NULL,
  is_aside INTEGER NOT NULL,
  why TEXT NOT NULL
) STRICT;

CREATE TABLE stack_pinned(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  position TEXT NOT NULL,
  is_pinned INTEGER NOT NULL,
  shims TEXT NOT NULL
) STRICT;

CREATE TABLE stack_built(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  position TEXT NOT NULL,
  shims TEXT NOT NULL
) STRICT;

CREATE TABLE stack_moved(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  position TEXT NOT NULL,
  move TEXT NOT NULL CHECK(move IN ('taken off', 'put back', 'taken apart'))
) STRICT;

CREATE TABLE recheck_made(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  position TEXT NOT NULL,
  feel TEXT NOT NULL CHECK(feel IN ('rocks', 'drags', 'loose')),
  instrument TEXT NOT NULL,
  thicker_out TEXT,
  thicker_in TEXT,
  thicker_felt TEXT CHECK(thicker_felt IN ('rocks', 'drags', 'loose')),
  thinner_out TEXT,
  thinner_in TEXT,
  thinner_felt TEXT CHECK(thinner_felt IN ('rocks', 'drags', 'loose'))
) STRICT;

CREATE TABLE judged_again(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  "check" TEXT NOT NULL,
  why TEXT NOT NULL
) STRICT;

CREATE TABLE girdle_way_set(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  face_up TEXT NOT NULL CHECK(face_up IN ('stamped face', 'plain face')),
  cutout_towards TEXT NOT NULL CHECK(cutout_towards IN ('front', 'rear')),
  cutout_side TEXT NOT NULL CHECK(cutout_side IN ('left', 'right'))
) STRICT;

CREATE TABLE trial_fit_result(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  item TEXT NOT NULL CHECK(item IN ('dipstick clear', 'pickup tube clear', 'counterweights clear', 'rod bolts clear', 'two turns by hand, nothing binds', 'keyway agrees at top dead centre')),
  throw_number INTEGER NOT NULL,
  result TEXT NOT NULL CHECK(result IN ('pass', 'fail', 'measured')),
  clearance_nm INTEGER,
  clearance_typed TEXT,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE pickup_reading(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  term TEXT NOT NULL CHECK(term IN ('pan depth', 'compressed gasket', 'girdle plate', 'pickup below rail')),
  value_nm INTEGER NOT NULL,
  value_typed TEXT NOT NULL,
  instrument TEXT NOT NULL,
  part_temperature_mdegC INTEGER,
  part_temperature_typed TEXT
) STRICT;

CREATE TABLE finding_opened(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  finding TEXT NOT NULL,
  place TEXT NOT NULL,
  text TEXT NOT NULL
) STRICT;

CREATE TABLE finding_settled(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  finding TEXT NOT NULL,
  done TEXT NOT NULL
) STRICT;

CREATE TABLE note_added(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  place TEXT NOT NULL,
  text TEXT NOT NULL
) STRICT;

CREATE TABLE attachment_added(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  place TEXT NOT NULL,
  file_name TEXT NOT NULL,
  media_type TEXT NOT NULL,
  caption TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  original_sha256 TEXT NOT NULL,
  size_bytes INTEGER NOT NULL
) STRICT;

CREATE TABLE closing_step_done(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  step TEXT NOT NULL CHECK(step IN ('shims counted back', 'stacks refitted by label', 'sealant bead laid', 'girdle lowered', 'nuts tightened in steps and sequence', 'crank turned through two full turns by hand', 'pan fastened')),
  open_minutes INTEGER,
  note TEXT NOT NULL,
  product TEXT,
  lot TEXT,
  fitted INTEGER,
  aside INTEGER,
  left_over INTEGER
) STRICT;

CREATE TABLE signed_off(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  statement TEXT NOT NULL
) STRICT;

CREATE TABLE build_begun(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  build INTEGER NOT NULL,
  why TEXT NOT NULL
) STRICT;

CREATE TABLE struck(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  entry INTEGER NOT NULL,
  why TEXT NOT NULL
) STRICT;

CREATE TABLE salvaged(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  file_name TEXT NOT NULL,
  size_bytes INTEGER NOT NULL,
  sha256 TEXT NOT NULL,
  last_seal TEXT NOT NULL,
  unsealed TEXT NOT NULL,
  lost TEXT NOT NULL
) STRICT;

CREATE TABLE crank_laid_in(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  is_in INTEGER NOT NULL,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE feel_study_begun(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  study INTEGER NOT NULL,
  whose TEXT NOT NULL,
  straightedge TEXT NOT NULL,
  set_up TEXT NOT NULL
) STRICT;

CREATE TABLE feel_answer(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  study INTEGER NOT NULL,
  height_nm INTEGER NOT NULL,
  height_typed TEXT NOT NULL,
  shims TEXT NOT NULL,
  felt TEXT NOT NULL CHECK(felt IN ('rocks', 'drags', 'loose'))
) STRICT;

CREATE TABLE clamp_checked(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  fastener TEXT NOT NULL,
  torque_on_mNm INTEGER NOT NULL,
  torque_on_typed TEXT NOT NULL,
  torque_off_mNm INTEGER NOT NULL,
  torque_off_typed TEXT NOT NULL,
  instrument TEXT NOT NULL
) STRICT;

CREATE TABLE washer_worked(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  position TEXT NOT NULL,
  work TEXT NOT NULL CHECK(work IN ('turned', 'turned over', 'dressed')),
  note TEXT NOT NULL
) STRICT;

CREATE TABLE turning_torque_read(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  stage TEXT NOT NULL CHECK(stage IN ('before the girdle', 'girdle at torque', 'after the pan')),
  breakaway_mNm INTEGER NOT NULL,
  breakaway_typed TEXT NOT NULL,
  running_mNm INTEGER NOT NULL,
  running_typed TEXT NOT NULL,
  instrument TEXT NOT NULL
) STRICT;

CREATE TABLE own_check_set(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  own_check TEXT NOT NULL,
  words TEXT NOT NULL,
  sort TEXT NOT NULL CHECK(sort IN ('yes or no', 'measured', 'photo')),
  holds TEXT NOT NULL CHECK(holds IN ('the trial fit', 'closing', 'a closing step')),
  step TEXT CHECK(step IN ('shims counted back', 'stacks refitted by label', 'sealant bead laid', 'girdle lowered', 'nuts tightened in steps and sequence', 'crank turned through two full turns by hand', 'pan fastened')),
  places INTEGER NOT NULL,
  lo_nm INTEGER,
  lo_typed TEXT,
  hi_nm INTEGER,
  hi_typed TEXT,
  source TEXT NOT NULL,
  why TEXT
) STRICT;

CREATE TABLE own_check_answered(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  own_check TEXT NOT NULL,
  place INTEGER NOT NULL,
  answer TEXT CHECK(answer IN ('yes', 'no')),
  value_nm INTEGER,
  value_typed TEXT,
  instrument TEXT NOT NULL,
  photo TEXT,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE part(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  sort TEXT NOT NULL CHECK(sort IN ('block', 'crank', 'rods', 'pistons', 'rings', 'main shells', 'rod shells', 'main studs', 'rod bolts', 'other fasteners', 'girdle', 'shim kit', 'oil pan', 'oil pump', 'oil pickup', 'pan gasket', 'rear main seal', 'sealant', 'oil', 'thread lubricant', 'other part')),
  what TEXT NOT NULL,
  place TEXT NOT NULL,
  maker TEXT NOT NULL,
  part_number TEXT NOT NULL,
  serial TEXT,
  lot TEXT NOT NULL,
  stamped TEXT,
  is_new INTEGER,
  times_tightened INTEGER,
  machined TEXT,
  machined_by TEXT,
  machined_on TEXT,
  photo TEXT,
  note TEXT
) STRICT;

CREATE TABLE zero_checked(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  instrument TEXT NOT NULL,
  standard TEXT NOT NULL,
  nominal_nm INTEGER NOT NULL,
  nominal_typed TEXT NOT NULL,
  reading_nm INTEGER NOT NULL,
  reading_typed TEXT NOT NULL,
  temperature_mdegC INTEGER,
  temperature_typed TEXT
) STRICT;

CREATE TABLE value_confirmed(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  value TEXT NOT NULL,
  source TEXT NOT NULL
) STRICT;

CREATE TABLE brought_in(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  file_name TEXT NOT NULL,
  count INTEGER NOT NULL,
  sha256 TEXT NOT NULL,
  date TEXT
) STRICT;

CREATE TABLE signature(
  sequence INTEGER PRIMARY KEY REFERENCES entry(sequence),
  signed_entry INTEGER NOT NULL,
  signed_seal TEXT NOT NULL,
  key_name TEXT NOT NULL,
  public_key TEXT NOT NULL,
  valid_from TEXT,
  valid_until TEXT,
  signature TEXT NOT NULL
) STRICT;

CREATE TABLE attachment(
  sha256 TEXT PRIMARY KEY NOT NULL CHECK(length(sha256) = 64),
  bytes BLOB NOT NULL
) STRICT;

CREATE INDEX struck_by_entry ON struck(entry);

CREATE TRIGGER entry_is_never_updated BEFORE UPDATE ON entry BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER entry_is_only_added_to BEFORE INSERT ON entry
WHEN NEW.sequence IS NOT (SELECT coalesce(max(sequence), 0) + 1 FROM entry) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER engine_described_is_never_updated BEFORE UPDATE ON engine_described BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER engine_described_is_never_deleted BEFORE DELETE ON engine_described BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER engine_described_is_only_added_to BEFORE INSERT ON engine_described
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'engine_described'
  OR EXISTS (SELECT 1 FROM engine_described WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER layout_set_is_never_updated BEFORE UPDATE ON layout_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER layout_set_is_never_deleted BEFORE DELETE ON layout_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER layout_set_is_only_added_to BEFORE INSERT ON layout_set
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'layout_set'
  OR EXISTS (SELECT 1 FROM layout_set WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER band_set_is_never_updated BEFORE UPDATE ON band_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER band_set_is_never_deleted BEFORE DELETE ON band_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER band_set_is_only_added_to BEFORE INSERT ON band_set
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'band_set'
  OR EXISTS (SELECT 1 FROM band_set WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER rules_set_is_never_updated BEFORE UPDATE ON rules_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER rules_set_is_never_deleted BEFORE DELETE ON rules_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER rules_set_is_only_added_to BEFORE INSERT ON rules_set
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'rules_set'
  OR EXISTS (SELECT 1 FROM rules_set WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER fastener_group_set_is_never_updated BEFORE UPDATE ON fastener_group_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fastener_group_set_is_never_deleted BEFORE DELETE ON fastener_group_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fastener_group_set_is_only_added_to BEFORE INSERT ON fastener_group_set
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'fastener_group_set'
  OR EXISTS (SELECT 1 FROM fastener_group_set WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER person_added_is_never_updated BEFORE UPDATE ON person_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER person_added_is_never_deleted BEFORE DELETE ON person_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER person_added_is_only_added_to BEFORE INSERT ON person_added
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'person_added'
  OR EXISTS (SELECT 1 FROM person_added WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER instrument_added_is_never_updated BEFORE UPDATE ON instrument_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER instrument_added_is_never_deleted BEFORE DELETE ON instrument_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER instrument_added_is_only_added_to BEFORE INSERT ON instrument_added
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'instrument_added'
  OR EXISTS (SELECT 1 FROM instrument_added WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER journal_reading_is_never_updated BEFORE UPDATE ON journal_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER journal_reading_is_never_deleted BEFORE DELETE ON journal_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER journal_reading_is_only_added_to BEFORE INSERT ON journal_reading
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'journal_reading'
  OR EXISTS (SELECT 1 FROM journal_reading WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER bore_reading_is_never_updated BEFORE UPDATE ON bore_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER bore_reading_is_never_deleted BEFORE DELETE ON bore_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER bore_reading_is_only_added_to BEFORE INSERT ON bore_reading
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'bore_reading'
  OR EXISTS (SELECT 1 FROM bore_reading WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER shell_measured_is_never_updated BEFORE UPDATE ON shell_measured BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shell_measured_is_never_deleted BEFORE DELETE ON shell_measured BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shell_measured_is_only_added_to BEFORE INSERT ON shell_measured
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'shell_measured'
  OR EXISTS (SELECT 1 FROM shell_measured WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER shells_fitted_is_never_updated BEFORE UPDATE ON shells_fitted BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shells_fitted_is_never_deleted BEFORE DELETE ON shells_fitted BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shells_fitted_is_only_added_to BEFORE INSERT ON shells_fitted
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'shells_fitted'
  OR EXISTS (SELECT 1 FROM shells_fitted WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER fit_reading_is_never_updated BEFORE UPDATE ON fit_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fit_reading_is_never_deleted BEFORE DELETE ON fit_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fit_reading_is_only_added_to BEFORE INSERT ON fit_reading
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'fit_reading'
  OR EXISTS (SELECT 1 FROM fit_reading WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER part_changed_is_never_updated BEFORE UPDATE ON part_changed BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER part_changed_is_never_deleted BEFORE DELETE ON part_changed BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER part_changed_is_only_added_to BEFORE INSERT ON part_changed
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'part_changed'
  OR EXISTS (SELECT 1 FROM part_changed WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER fastener_tightened_is_never_updated BEFORE UPDATE ON fastener_tightened BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fastener_tightened_is_never_deleted BEFORE DELETE ON fastener_tightened BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fastener_tightened_is_only_added_to BEFORE INSERT ON fastener_tightened
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'fastener_tightened'
  OR EXISTS (SELECT 1 FROM fastener_tightened WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER fastener_loosened_is_never_updated BEFORE UPDATE ON fastener_loosened BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fastener_loosened_is_never_deleted BEFORE DELETE ON fastener_loosened BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER fastener_loosened_is_only_added_to BEFORE INSERT ON fastener_loosened
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'fastener_loosened'
  OR EXISTS (SELECT 1 FROM fastener_loosened WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER round_begun_is_never_updated BEFORE UPDATE ON round_begun BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER round_begun_is_never_deleted BEFORE DELETE ON round_begun BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER round_begun_is_only_added_to BEFORE INSERT ON round_begun
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'round_begun'
  OR EXISTS (SELECT 1 FROM round_begun WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER round_outcome_is_never_updated BEFORE UPDATE ON round_outcome BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER round_outcome_is_never_deleted BEFORE DELETE ON round_outcome BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER round_outcome_is_only_added_to BEFORE INSERT ON round_outcome
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'round_outcome'
  OR EXISTS (SELECT 1 FROM round_outcome WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER gap_reading_is_never_updated BEFORE UPDATE ON gap_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER gap_reading_is_never_deleted BEFORE DELETE ON gap_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER gap_reading_is_only_added_to BEFORE INSERT ON gap_reading
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'gap_reading'
  OR EXISTS (SELECT 1 FROM gap_reading WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER shim_added_is_never_updated BEFORE UPDATE ON shim_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shim_added_is_never_deleted BEFORE DELETE ON shim_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shim_added_is_only_added_to BEFORE INSERT ON shim_added
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'shim_added'
  OR EXISTS (SELECT 1 FROM shim_added WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER shim_measured_is_never_updated BEFORE UPDATE ON shim_measured BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shim_measured_is_never_deleted BEFORE DELETE ON shim_measured BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shim_measured_is_only_added_to BEFORE INSERT ON shim_measured
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'shim_measured'
  OR EXISTS (SELECT 1 FROM shim_measured WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER shim_set_aside_is_never_updated BEFORE UPDATE ON shim_set_aside BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shim_set_aside_is_never_deleted BEFORE DELETE ON shim_set_aside BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER shim_set_aside_is_only_added_to BEFORE INSERT ON shim_set_aside
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'shim_set_aside'
  OR EXISTS (SELECT 1 FROM shim_set_aside WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER stack_pinned_is_never_updated BEFORE UPDATE ON stack_pinned BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER stack_pinned_is_never_deleted BEFORE DELETE ON stack_pinned BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER stack_pinned_is_only_added_to BEFORE INSERT ON stack_pinned
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'stack_pinned'
  OR EXISTS (SELECT 1 FROM stack_pinned WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER stack_built_is_never_updated BEFORE UPDATE ON stack_built BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER stack_built_is_never_deleted BEFORE DELETE ON stack_built BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER stack_built_is_only_added_to BEFORE INSERT ON stack_built
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'stack_built'
  OR EXISTS (SELECT 1 FROM stack_built WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER stack_moved_is_never_updated BEFORE UPDATE ON stack_moved BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER stack_moved_is_never_deleted BEFORE DELETE ON stack_moved BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER stack_moved_is_only_added_to BEFORE INSERT ON stack_moved
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'stack_moved'
  OR EXISTS (SELECT 1 FROM stack_moved WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER recheck_made_is_never_updated BEFORE UPDATE ON recheck_made BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER recheck_made_is_never_deleted BEFORE DELETE ON recheck_made BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER recheck_made_is_only_added_to BEFORE INSERT ON recheck_made
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'recheck_made'
  OR EXISTS (SELECT 1 FROM recheck_made WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER judged_again_is_never_updated BEFORE UPDATE ON judged_again BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER judged_again_is_never_deleted BEFORE DELETE ON judged_again BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER judged_again_is_only_added_to BEFORE INSERT ON judged_again
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'judged_again'
  OR EXISTS (SELECT 1 FROM judged_again WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER girdle_way_set_is_never_updated BEFORE UPDATE ON girdle_way_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER girdle_way_set_is_never_deleted BEFORE DELETE ON girdle_way_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER girdle_way_set_is_only_added_to BEFORE INSERT ON girdle_way_set
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'girdle_way_set'
  OR EXISTS (SELECT 1 FROM girdle_way_set WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER trial_fit_result_is_never_updated BEFORE UPDATE ON trial_fit_result BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER trial_fit_result_is_never_deleted BEFORE DELETE ON trial_fit_result BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER trial_fit_result_is_only_added_to BEFORE INSERT ON trial_fit_result
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'trial_fit_result'
  OR EXISTS (SELECT 1 FROM trial_fit_result WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER pickup_reading_is_never_updated BEFORE UPDATE ON pickup_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER pickup_reading_is_never_deleted BEFORE DELETE ON pickup_reading BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER pickup_reading_is_only_added_to BEFORE INSERT ON pickup_reading
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'pickup_reading'
  OR EXISTS (SELECT 1 FROM pickup_reading WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER finding_opened_is_never_updated BEFORE UPDATE ON finding_opened BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER finding_opened_is_never_deleted BEFORE DELETE ON finding_opened BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER finding_opened_is_only_added_to BEFORE INSERT ON finding_opened
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'finding_opened'
  OR EXISTS (SELECT 1 FROM finding_opened WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER finding_settled_is_never_updated BEFORE UPDATE ON finding_settled BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER finding_settled_is_never_deleted BEFORE DELETE ON finding_settled BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER finding_settled_is_only_added_to BEFORE INSERT ON finding_settled
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'finding_settled'
  OR EXISTS (SELECT 1 FROM finding_settled WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER note_added_is_never_updated BEFORE UPDATE ON note_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER note_added_is_never_deleted BEFORE DELETE ON note_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER note_added_is_only_added_to BEFORE INSERT ON note_added
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'note_added'
  OR EXISTS (SELECT 1 FROM note_added WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER attachment_added_is_never_updated BEFORE UPDATE ON attachment_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER attachment_added_is_never_deleted BEFORE DELETE ON attachment_added BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER attachment_added_is_only_added_to BEFORE INSERT ON attachment_added
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'attachment_added'
  OR EXISTS (SELECT 1 FROM attachment_added WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER closing_step_done_is_never_updated BEFORE UPDATE ON closing_step_done BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER closing_step_done_is_never_deleted BEFORE DELETE ON closing_step_done BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER closing_step_done_is_only_added_to BEFORE INSERT ON closing_step_done
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'closing_step_done'
  OR EXISTS (SELECT 1 FROM closing_step_done WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER signed_off_is_never_updated BEFORE UPDATE ON signed_off BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER signed_off_is_never_deleted BEFORE DELETE ON signed_off BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER signed_off_is_only_added_to BEFORE INSERT ON signed_off
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'signed_off'
  OR EXISTS (SELECT 1 FROM signed_off WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER build_begun_is_never_updated BEFORE UPDATE ON build_begun BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER build_begun_is_never_deleted BEFORE DELETE ON build_begun BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER build_begun_is_only_added_to BEFORE INSERT ON build_begun
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'build_begun'
  OR EXISTS (SELECT 1 FROM build_begun WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER struck_is_never_updated BEFORE UPDATE ON struck BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER struck_is_never_deleted BEFORE DELETE ON struck BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER struck_is_only_added_to BEFORE INSERT ON struck
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'struck'
  OR EXISTS (SELECT 1 FROM struck WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER salvaged_is_never_updated BEFORE UPDATE ON salvaged BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER salvaged_is_never_deleted BEFORE DELETE ON salvaged BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER salvaged_is_only_added_to BEFORE INSERT ON salvaged
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'salvaged'
  OR EXISTS (SELECT 1 FROM salvaged WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER crank_laid_in_is_never_updated BEFORE UPDATE ON crank_laid_in BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER crank_laid_in_is_never_deleted BEFORE DELETE ON crank_laid_in BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER crank_laid_in_is_only_added_to BEFORE INSERT ON crank_laid_in
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'crank_laid_in'
  OR EXISTS (SELECT 1 FROM crank_laid_in WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER feel_study_begun_is_never_updated BEFORE UPDATE ON feel_study_begun BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER feel_study_begun_is_never_deleted BEFORE DELETE ON feel_study_begun BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER feel_study_begun_is_only_added_to BEFORE INSERT ON feel_study_begun
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'feel_study_begun'
  OR EXISTS (SELECT 1 FROM feel_study_begun WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER feel_answer_is_never_updated BEFORE UPDATE ON feel_answer BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER feel_answer_is_never_deleted BEFORE DELETE ON feel_answer BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER feel_answer_is_only_added_to BEFORE INSERT ON feel_answer
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'feel_answer'
  OR EXISTS (SELECT 1 FROM feel_answer WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER clamp_checked_is_never_updated BEFORE UPDATE ON clamp_checked BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER clamp_checked_is_never_deleted BEFORE DELETE ON clamp_checked BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER clamp_checked_is_only_added_to BEFORE INSERT ON clamp_checked
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'clamp_checked'
  OR EXISTS (SELECT 1 FROM clamp_checked WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER washer_worked_is_never_updated BEFORE UPDATE ON washer_worked BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER washer_worked_is_never_deleted BEFORE DELETE ON washer_worked BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER washer_worked_is_only_added_to BEFORE INSERT ON washer_worked
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'washer_worked'
  OR EXISTS (SELECT 1 FROM washer_worked WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER turning_torque_read_is_never_updated BEFORE UPDATE ON turning_torque_read BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER turning_torque_read_is_never_deleted BEFORE DELETE ON turning_torque_read BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER turning_torque_read_is_only_added_to BEFORE INSERT ON turning_torque_read
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'turning_torque_read'
  OR EXISTS (SELECT 1 FROM turning_torque_read WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER own_check_set_is_never_updated BEFORE UPDATE ON own_check_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER own_check_set_is_never_deleted BEFORE DELETE ON own_check_set BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER own_check_set_is_only_added_to BEFORE INSERT ON own_check_set
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'own_check_set'
  OR EXISTS (SELECT 1 FROM own_check_set WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER own_check_answered_is_never_updated BEFORE UPDATE ON own_check_answered BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER own_check_answered_is_never_deleted BEFORE DELETE ON own_check_answered BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER own_check_answered_is_only_added_to BEFORE INSERT ON own_check_answered
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'own_check_answered'
  OR EXISTS (SELECT 1 FROM own_check_answered WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER part_is_never_updated BEFORE UPDATE ON part BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER part_is_never_deleted BEFORE DELETE ON part BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER part_is_only_added_to BEFORE INSERT ON part
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'part'
  OR EXISTS (SELECT 1 FROM part WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER zero_checked_is_never_updated BEFORE UPDATE ON zero_checked BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER zero_checked_is_never_deleted BEFORE DELETE ON zero_checked BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER zero_checked_is_only_added_to BEFORE INSERT ON zero_checked
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'zero_checked'
  OR EXISTS (SELECT 1 FROM zero_checked WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER value_confirmed_is_never_updated BEFORE UPDATE ON value_confirmed BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER value_confirmed_is_never_deleted BEFORE DELETE ON value_confirmed BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER value_confirmed_is_only_added_to BEFORE INSERT ON value_confirmed
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'value_confirmed'
  OR EXISTS (SELECT 1 FROM value_confirmed WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER brought_in_is_never_updated BEFORE UPDATE ON brought_in BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER brought_in_is_never_deleted BEFORE DELETE ON brought_in BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER brought_in_is_only_added_to BEFORE INSERT ON brought_in
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'brought_in'
  OR EXISTS (SELECT 1 FROM brought_in WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER signature_is_never_updated BEFORE UPDATE ON signature BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER signature_is_never_deleted BEFORE DELETE ON signature BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER signature_is_only_added_to BEFORE INSERT ON signature
WHEN NEW.sequence IS NOT (SELECT max(sequence) FROM entry)
  OR (SELECT kind FROM entry WHERE sequence = NEW.sequence) IS NOT 'signature'
  OR EXISTS (SELECT 1 FROM signature WHERE sequence = NEW.sequence) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE TRIGGER attachment_is_never_updated BEFORE UPDATE ON attachment BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER attachment_is_never_deleted BEFORE DELETE ON attachment BEGIN
  SELECT RAISE(ABORT, 'A record is only added to: strike the entry with a later one.');
END;

CREATE TRIGGER attachment_is_only_added_to BEFORE INSERT ON attachment
WHEN EXISTS (SELECT 1 FROM attachment WHERE sha256 = NEW.sha256) BEGIN
  SELECT RAISE(ABORT, 'An entry follows the last one, with its details, in one transaction.');
END;

CREATE VIEW present_engine_described AS
SELECT sequence, e.time, e.person, d.shop, d.customer, d.engine, d.serial, d.note, d.address, d.telephone
FROM engine_described AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_layout_set AS
SELECT sequence, e.time, e.person, d.caps, d.fasteners_per_cap, d.girdle_ring, d.tied_first, d.tied_last, d.rods, d.throws, d.cap_spacing_nm, d.stud_span_nm, d.outer_stud_span_nm, d.rail_span_nm, d.pickup_cap, d.pickup_side, d.dipstick_cap, d.dipstick_side, d.source, d.plate_thickness_nm, d.plate_metal, d.plate_modulus, d.plate_poisson, d.window_along_nm, d.window_across_nm, d.plate_overhang_nm
FROM layout_set AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_band_set AS
SELECT sequence, e.time, e.person, d.band, d.lo_nm, d.lo_typed, d.hi_nm, d.hi_typed, d.target_nm, d.target_typed, d.source, d.why
FROM band_set AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_rules_set AS
SELECT sequence, e.time, e.person, d.decision, d.coverage, d.repeat_limit_nm, d.minimum_passes, d.kit_tolerance_nm, d.largest_stack, d.objective, d.torque_scatter_percent, d.counterweight_minimum_nm, d.source, d.temperature_spread_mdegC, d.second_person_verifies, d.second_person_signs, d.pickup_tube_minimum_nm, d.dipstick_minimum_nm, d.turning_rise_mNm, d.why
FROM rules_set AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_fastener_group_set AS
SELECT sequence, e.time, e.person, d.fastener_group, d.ring, d.count, d.thread, d.grade, d.lubricant, d.method, d.torque_mNm, d.torque_typed, d.angle_mdeg, d.angle_typed, d.stretch_nm, d.stretch_typed, d.steps, d.tightening_order, d.source, d.group_name, d.places, d.piece, d.verified_by, d.is_single_use, d.stretch_tolerance_nm, d.stretch_tolerance_typed, d.grip_nm, d.grip_typed, d.shank_nm, d.shank_typed, d.thread_in_grip_nm, d.thread_in_grip_typed, d.clamped, d.why
FROM fastener_group_set AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_person_added AS
SELECT sequence, e.time, e.person, d.name, d.role
FROM person_added AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_instrument_added AS
SELECT sequence, e.time, e.person, d.instrument, d.type, d.maker, d.serial, d.limit_of_error_nm, d.limit_of_error_typed, d.smallest_torque_mNm, d.smallest_torque_typed, d.largest_torque_mNm, d.largest_torque_typed, d.calibrated, d.due, d.due_cycles, d.cycles, d.step_nm, d.step_typed, d.set_with, d.corrects
FROM instrument_added AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_journal_reading AS
SELECT sequence, e.time, e.person, d.journal, d.station, d.direction, d.diameter_nm, d.diameter_typed, d.instrument, d.part_temperature_mdegC, d.part_temperature_typed
FROM journal_reading AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_bore_reading AS
SELECT sequence, e.time, e.person, d.journal, d.method, d.station, d.value_nm, d.value_typed, d.instrument, d.part_temperature_mdegC, d.part_temperature_typed
FROM bore_reading AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_shell_measured AS
SELECT sequence, e.time, e.person, d.shell, d.fits, d.half, d.thickness_nm, d.thickness_typed, d.is_marked, d.instrument, d.part_temperature_mdegC, d.part_temperature_typed
FROM shell_measured AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_shells_fitted AS
SELECT sequence, e.time, e.person, d.journal, d.upper, d.lower, d.why
FROM shells_fitted AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_fit_reading AS
SELECT sequence, e.time, e.person, d.fit, d.place, d.value_nm, d.value_typed, d.instrument, d.part_temperature_mdegC, d.part_temperature_typed
FROM fit_reading AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_part_changed AS
SELECT sequence, e.time, e.person, d.part, d.place, d.what
FROM part_changed AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_fastener_tightened AS
SELECT sequence, e.time, e.person, d.fastener, d.torque_mNm, d.torque_typed, d.angle_mdeg, d.angle_typed, d.stretch_nm, d.stretch_typed, d.instrument, d.is_new
FROM fastener_tightened AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_fastener_loosened AS
SELECT sequence, e.time, e.person, d.fastener, d.why
FROM fastener_loosened AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_round_begun AS
SELECT sequence, e.time, e.person, d.round, d.instrument
FROM round_begun AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_round_outcome AS
SELECT sequence, e.time, e.person, d.round, d.fastener, d.outcome, d.angle_mdeg, d.angle_typed, d.torque_mNm, d.torque_typed, d.instrument, d.verified_by, d.stretch_nm, d.stretch_typed
FROM round_outcome AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_gap_reading AS
SELECT sequence, e.time, e.person, d.position, d.pass, d.gap_nm, d.gap_typed, d.instrument, d.does_not_go_nm, d.does_not_go_typed, d.straightedge
FROM gap_reading AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_shim_added AS
SELECT sequence, e.time, e.person, d.shim, d.marked_nm, d.marked_typed, d.bag
FROM shim_added AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_shim_measured AS
SELECT sequence, e.time, e.person, d.shim, d.thickness_nm, d.thickness_typed, d.instrument, d.part_temperature_mdegC, d.part_temperature_typed
FROM shim_measured AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_shim_set_aside AS
SELECT sequence, e.time, e.person, d.shim, d.is_aside, d.why
FROM shim_set_aside AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_stack_pinned AS
SELECT sequence, e.time, e.person, d.position, d.is_pinned, d.shims
FROM stack_pinned AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_stack_built AS
SELECT sequence, e.time, e.person, d.position, d.shims
FROM stack_built AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_stack_moved AS
SELECT sequence, e.time, e.person, d.position, d.move
FROM stack_moved AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_recheck_made AS
SELECT sequence, e.time, e.person, d.position, d.feel, d.instrument, d.thicker_out, d.thicker_in, d.thicker_felt, d.thinner_out, d.thinner_in, d.thinner_felt
FROM recheck_made AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_judged_again AS
SELECT sequence, e.time, e.person, d."check", d.why
FROM judged_again AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_girdle_way_set AS
SELECT sequence, e.time, e.person, d.face_up, d.cutout_towards, d.cutout_side
FROM girdle_way_set AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_trial_fit_result AS
SELECT sequence, e.time, e.person, d.item, d.throw_number, d.result, d.clearance_nm, d.clearance_typed, d.note
FROM trial_fit_result AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_pickup_reading AS
SELECT sequence, e.time, e.person, d.term, d.value_nm, d.value_typed, d.instrument, d.part_temperature_mdegC, d.part_temperature_typed
FROM pickup_reading AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_finding_opened AS
SELECT sequence, e.time, e.person, d.finding, d.place, d.text
FROM finding_opened AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_finding_settled AS
SELECT sequence, e.time, e.person, d.finding, d.done
FROM finding_settled AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_note_added AS
SELECT sequence, e.time, e.person, d.place, d.text
FROM note_added AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_attachment_added AS
SELECT sequence, e.time, e.person, d.place, d.file_name, d.media_type, d.caption, d.sha256, d.original_sha256, d.size_bytes
FROM attachment_added AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_closing_step_done AS
SELECT sequence, e.time, e.person, d.step, d.open_minutes, d.note, d.product, d.lot, d.fitted, d.aside, d.left_over
FROM closing_step_done AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_signed_off AS
SELECT sequence, e.time, e.person, d.statement
FROM signed_off AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_build_begun AS
SELECT sequence, e.time, e.person, d.build, d.why
FROM build_begun AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_struck AS
SELECT sequence, e.time, e.person, d.entry, d.why
FROM struck AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_salvaged AS
SELECT sequence, e.time, e.person, d.file_name, d.size_bytes, d.sha256, d.last_seal, d.unsealed, d.lost
FROM salvaged AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_crank_laid_in AS
SELECT sequence, e.time, e.person, d.is_in, d.note
FROM crank_laid_in AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_feel_study_begun AS
SELECT sequence, e.time, e.person, d.study, d.whose, d.straightedge, d.set_up
FROM feel_study_begun AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_feel_answer AS
SELECT sequence, e.time, e.person, d.study, d.height_nm, d.height_typed, d.shims, d.felt
FROM feel_answer AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_clamp_checked AS
SELECT sequence, e.time, e.person, d.fastener, d.torque_on_mNm, d.torque_on_typed, d.torque_off_mNm, d.torque_off_typed, d.instrument
FROM clamp_checked AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_washer_worked AS
SELECT sequence, e.time, e.person, d.position, d.work, d.note
FROM washer_worked AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_turning_torque_read AS
SELECT sequence, e.time, e.person, d.stage, d.breakaway_mNm, d.breakaway_typed, d.running_mNm, d.running_typed, d.instrument
FROM turning_torque_read AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_own_check_set AS
SELECT sequence, e.time, e.person, d.own_check, d.words, d.sort, d.holds, d.step, d.places, d.lo_nm, d.lo_typed, d.hi_nm, d.hi_typed, d.source, d.why
FROM own_check_set AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_own_check_answered AS
SELECT sequence, e.time, e.person, d.own_check, d.place, d.answer, d.value_nm, d.value_typed, d.instrument, d.photo, d.note
FROM own_check_answered AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_part AS
SELECT sequence, e.time, e.person, d.sort, d.what, d.place, d.maker, d.part_number, d.serial, d.lot, d.stamped, d.is_new, d.times_tightened, d.machined, d.machined_by, d.machined_on, d.photo, d.note
FROM part AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_zero_checked AS
SELECT sequence, e.time, e.person, d.instrument, d.standard, d.nominal_nm, d.nominal_typed, d.reading_nm, d.reading_typed, d.temperature_mdegC, d.temperature_typed
FROM zero_checked AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_value_confirmed AS
SELECT sequence, e.time, e.person, d.value, d.source
FROM value_confirmed AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_brought_in AS
SELECT sequence, e.time, e.person, d.file_name, d.count, d.sha256, d.date
FROM brought_in AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW present_signature AS
SELECT sequence, e.time, e.person, d.signed_entry, d.signed_seal, d.key_name, d.public_key, d.valid_from, d.valid_until, d.signature
FROM signature AS d JOIN entry AS e USING (sequence)
WHERE sequence NOT IN (SELECT entry FROM struck)
ORDER BY sequence;

CREATE VIEW struck_entries AS
SELECT e.sequence, e.time, e.person, e.kind, s.sequence AS struck_by,
  by_entry.time AS struck_time, by_entry.person AS struck_person, s.why
FROM struck AS s JOIN entry AS e ON e.sequence = s.entry
  JOIN entry AS by_entry ON by_entry.sequence = s.sequence
ORDER BY e.sequence;

CREATE VIEW history AS
SELECT e.sequence, e.time, e.person, e.kind,
  trim(CASE e.kind
    WHEN 'engine_described' THEN (SELECT iif(shop = '', '', ' shop=' || shop) || iif(customer = '', '', ' customer=' || customer) || iif(engine = '', '', ' engine=' || engine) || iif(serial = '', '', ' serial=' || serial) || iif(note = '', '', ' note=' || note) || coalesce(' address=' || address, '') || coalesce(' telephone=' || telephone, '') FROM engine_described AS d WHERE d.sequence = e.sequence)
    WHEN 'layout_set' THEN (SELECT ' caps=' || caps || ' fasteners_per_cap=' || fasteners_per_cap || iif(girdle_ring = '', '', ' girdle_ring=' || girdle_ring) || ' tied_first=' || tied_first || ' tied_last=' || tied_last || ' rods=' || rods || ' throws=' || throws || ' cap_spacing_nm=' || cap_spacing_nm || ' stud_span_nm=' || stud_span_nm || ' outer_stud_span_nm=' || outer_stud_span_nm || ' rail_span_nm=' || rail_span_nm || ' pickup_cap=' || pickup_cap || iif(pickup_side = '', '', ' pickup_side=' || pickup_side) || ' dipstick_cap=' || dipstick_cap || iif(dipstick_side = '', '', ' dipstick_side=' || dipstick_side) || iif(source = '', '', ' source=' || source) || coalesce(' plate_thickness_nm=' || plate_thickness_nm, '') || coalesce(' plate_metal=' || plate_metal, '') || coalesce(' plate_modulus=' || plate_modulus, '') || coalesce(' plate_poisson=' || plate_poisson, '') || coalesce(' window_along_nm=' || window_along_nm, '') || coalesce(' window_across_nm=' || window_across_nm, '') || coalesce(' plate_overhang_nm=' || plate_overhang_nm, '') FROM layout_set AS d WHERE d.sequence = e.sequence)
    WHEN 'band_set' THEN (SELECT iif(band = '', '', ' band=' || band) || ' lo_nm=' || lo_nm || iif(lo_typed = '', '', ' lo_typed=' || lo_typed) || ' hi_nm=' || hi_nm || iif(hi_typed = '', '', ' hi_typed=' || hi_typed) || coalesce(' target_nm=' || target_nm, '') || coalesce(' target_typed=' || target_typed, '') || iif(source = '', '', ' source=' || source) || coalesce(' why=' || why, '') FROM band_set AS d WHERE d.sequence = e.sequence)
    WHEN 'rules_set' THEN (SELECT iif(decision = '', '', ' decision=' || decision) || iif(coverage = '', '', ' coverage=' || coverage) || ' repeat_limit_nm=' || repeat_limit_nm || ' minimum_passes=' || minimum_passes || ' kit_tolerance_nm=' || kit_tolerance_nm || ' largest_stack=' || largest_stack || iif(objective = '', '', ' objective=' || objective) || ' torque_scatter_percent=' || torque_scatter_percent || ' counterweight_minimum_nm=' || counterweight_minimum_nm || iif(source = '', '', ' source=' || source) || coalesce(' temperature_spread_mdegC=' || temperature_spread_mdegC, '') || coalesce(' second_person_verifies=' || second_person_verifies, '') || coalesce(' second_person_signs=' || second_person_signs, '') || coalesce(' pickup_tube_minimum_nm=' || pickup_tube_minimum_nm, '') || coalesce(' dipstick_minimum_nm=' || dipstick_minimum_nm, '') || coalesce(' turning_rise_mNm=' || turning_rise_mNm, '') || coalesce(' why=' || why, '') FROM rules_set AS d WHERE d.sequence = e.sequence)
    WHEN 'fastener_group_set' THEN (SELECT iif(fastener_group = '', '', ' fastener_group=' || fastener_group) || coalesce(' ring=' || ring, '') || ' count=' || count || iif(thread = '', '', ' thread=' || thread) || iif(grade = '', '', ' grade=' || grade) || iif(lubricant = '', '', ' lubricant=' || lubricant) || iif(method = '', '', ' method=' || method) || coalesce(' torque_mNm=' || torque_mNm, '') || coalesce(' torque_typed=' || torque_typed, '') || coalesce(' angle_mdeg=' || angle_mdeg, '') || coalesce(' angle_typed=' || angle_typed, '') || coalesce(' stretch_nm=' || stretch_nm, '') || coalesce(' stretch_typed=' || stretch_typed, '') || ' steps=' || steps || iif(tightening_order = '', '', ' tightening_order=' || tightening_order) || iif(source = '', '', ' source=' || source) || coalesce(' group_name=' || group_name, '') || coalesce(' places=' || places, '') || coalesce(' piece=' || piece, '') || coalesce(' verified_by=' || verified_by, '') || coalesce(' is_single_use=' || is_single_use, '') || coalesce(' stretch_tolerance_nm=' || stretch_tolerance_nm, '') || coalesce(' stretch_tolerance_typed=' || stretch_tolerance_typed, '') || coalesce(' grip_nm=' || grip_nm, '') || coalesce(' grip_typed=' || grip_typed, '') || coalesce(' shank_nm=' || shank_nm, '') || coalesce(' shank_typed=' || shank_typed, '') || coalesce(' thread_in_grip_nm=' || thread_in_grip_nm, '') || coalesce(' thread_in_grip_typed=' || thread_in_grip_typed, '') || coalesce(' clamped=' || clamped, '') || coalesce(' why=' || why, '') FROM fastener_group_set AS d WHERE d.sequence = e.sequence)
    WHEN 'person_added' THEN (SELECT iif(name = '', '', ' name=' || name) || iif(role = '', '', ' role=' || role) FROM person_added AS d WHERE d.sequence = e.sequence)
    WHEN 'instrument_added' THEN (SELECT iif(instrument = '', '', ' instrument=' || instrument) || iif(type = '', '', ' type=' || type) || iif(maker = '', '', ' maker=' || maker) || iif(serial = '', '', ' serial=' || serial) || coalesce(' limit_of_error_nm=' || limit_of_error_nm, '') || coalesce(' limit_of_error_typed=' || limit_of_error_typed, '') || coalesce(' smallest_torque_mNm=' || smallest_torque_mNm, '') || coalesce(' smallest_torque_typed=' || smallest_torque_typed, '') || coalesce(' largest_torque_mNm=' || largest_torque_mNm, '') || coalesce(' largest_torque_typed=' || largest_torque_typed, '') || coalesce(' calibrated=' || calibrated, '') || coalesce(' due=' || due, '') || coalesce(' due_cycles=' || due_cycles, '') || coalesce(' cycles=' || cycles, '') || coalesce(' step_nm=' || step_nm, '') || coalesce(' step_typed=' || step_typed, '') || coalesce(' set_with=' || set_with, '') || coalesce(' corrects=' || corrects, '') FROM instrument_added AS d WHERE d.sequence = e.sequence)
    WHEN 'journal_reading' THEN (SELECT iif(journal = '', '', ' journal=' || journal) || ' station=' || station || ' direction=' || direction || ' diameter_nm=' || diameter_nm || iif(diameter_typed = '', '', ' diameter_typed=' || diameter_typed) || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' part_temperature_mdegC=' || part_temperature_mdegC, '') || coalesce(' part_temperature_typed=' || part_temperature_typed, '') FROM journal_reading AS d WHERE d.sequence = e.sequence)
    WHEN 'bore_reading' THEN (SELECT iif(journal = '', '', ' journal=' || journal) || iif(method = '', '', ' method=' || method) || ' station=' || station || ' value_nm=' || value_nm || iif(value_typed = '', '', ' value_typed=' || value_typed) || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' part_temperature_mdegC=' || part_temperature_mdegC, '') || coalesce(' part_temperature_typed=' || part_temperature_typed, '') FROM bore_reading AS d WHERE d.sequence = e.sequence)
    WHEN 'shell_measured' THEN (SELECT iif(shell = '', '', ' shell=' || shell) || iif(fits = '', '', ' fits=' || fits) || iif(half = '', '', ' half=' || half) || ' thickness_nm=' || thickness_nm || iif(thickness_typed = '', '', ' thickness_typed=' || thickness_typed) || ' is_marked=' || is_marked || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' part_temperature_mdegC=' || part_temperature_mdegC, '') || coalesce(' part_temperature_typed=' || part_temperature_typed, '') FROM shell_measured AS d WHERE d.sequence = e.sequence)
    WHEN 'shells_fitted' THEN (SELECT iif(journal = '', '', ' journal=' || journal) || iif(upper = '', '', ' upper=' || upper) || iif(lower = '', '', ' lower=' || lower) || coalesce(' why=' || why, '') FROM shells_fitted AS d WHERE d.sequence = e.sequence)
    WHEN 'fit_reading' THEN (SELECT iif(fit = '', '', ' fit=' || fit) || ' place=' || place || ' value_nm=' || value_nm || iif(value_typed = '', '', ' value_typed=' || value_typed) || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' part_temperature_mdegC=' || part_temperature_mdegC, '') || coalesce(' part_temperature_typed=' || part_temperature_typed, '') FROM fit_reading AS d WHERE d.sequence = e.sequence)
    WHEN 'part_changed' THEN (SELECT iif(part = '', '', ' part=' || part) || iif(place = '', '', ' place=' || place) || iif(what = '', '', ' what=' || what) FROM part_changed AS d WHERE d.sequence = e.sequence)
    WHEN 'fastener_tightened' THEN (SELECT iif(fastener = '', '', ' fastener=' || fastener) || coalesce(' torque_mNm=' || torque_mNm, '') || coalesce(' torque_typed=' || torque_typed, '') || coalesce(' angle_mdeg=' || angle_mdeg, '') || coalesce(' angle_typed=' || angle_typed, '') || coalesce(' stretch_nm=' || stretch_nm, '') || coalesce(' stretch_typed=' || stretch_typed, '') || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' is_new=' || is_new, '') FROM fastener_tightened AS d WHERE d.sequence = e.sequence)
    WHEN 'fastener_loosened' THEN (SELECT iif(fastener = '', '', ' fastener=' || fastener) || iif(why = '', '', ' why=' || why) FROM fastener_loosened AS d WHERE d.sequence = e.sequence)
    WHEN 'round_begun' THEN (SELECT ' round=' || round || iif(instrument = '', '', ' instrument=' || instrument) FROM round_begun AS d WHERE d.sequence = e.sequence)
    WHEN 'round_outcome' THEN (SELECT ' round=' || round || iif(fastener = '', '', ' fastener=' || fastener) || iif(outcome = '', '', ' outcome=' || outcome) || coalesce(' angle_mdeg=' || angle_mdeg, '') || coalesce(' angle_typed=' || angle_typed, '') || coalesce(' torque_mNm=' || torque_mNm, '') || coalesce(' torque_typed=' || torque_typed, '') || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' verified_by=' || verified_by, '') || coalesce(' stretch_nm=' || stretch_nm, '') || coalesce(' stretch_typed=' || stretch_typed, '') FROM round_outcome AS d WHERE d.sequence = e.sequence)
    WHEN 'gap_reading' THEN (SELECT iif(position = '', '', ' position=' || position) || ' pass=' || pass || ' gap_nm=' || gap_nm || iif(gap_typed = '', '', ' gap_typed=' || gap_typed) || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' does_not_go_nm=' || does_not_go_nm, '') || coalesce(' does_not_go_typed=' || does_not_go_typed, '') || coalesce(' straightedge=' || straightedge, '') FROM gap_reading AS d WHERE d.sequence = e.sequence)
    WHEN 'shim_added' THEN (SELECT iif(shim = '', '', ' shim=' || shim) || ' marked_nm=' || marked_nm || iif(marked_typed = '', '', ' marked_typed=' || marked_typed) || iif(bag = '', '', ' bag=' || bag) FROM shim_added AS d WHERE d.sequence = e.sequence)
    WHEN 'shim_measured' THEN (SELECT iif(shim = '', '', ' shim=' || shim) || ' thickness_nm=' || thickness_nm || iif(thickness_typed = '', '', ' thickness_typed=' || thickness_typed) || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' part_temperature_mdegC=' || part_temperature_mdegC, '') || coalesce(' part_temperature_typed=' || part_temperature_typed, '') FROM shim_measured AS d WHERE d.sequence = e.sequence)
    WHEN 'shim_set_aside' THEN (SELECT iif(shim = '', '', ' shim=' || shim) || ' is_aside=' || is_aside || iif(why = '', '', ' why=' || why) FROM shim_set_aside AS d WHERE d.sequence = e.sequence)
    WHEN 'stack_pinned' THEN (SELECT iif(position = '', '', ' position=' || position) || ' is_pinned=' || is_pinned || iif(shims = '', '', ' shims=' || shims) FROM stack_pinned AS d WHERE d.sequence = e.sequence)
    WHEN 'stack_built' THEN (SELECT iif(position = '', '', ' position=' || position) || iif(shims = '', '', ' shims=' || shims) FROM stack_built AS d WHERE d.sequence = e.sequence)
    WHEN 'stack_moved' THEN (SELECT iif(position = '', '', ' position=' || position) || iif(move = '', '', ' move=' || move) FROM stack_moved AS d WHERE d.sequence = e.sequence)
    WHEN 'recheck_made' THEN (SELECT iif(position = '', '', ' position=' || position) || iif(feel = '', '', ' feel=' || feel) || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' thicker_out=' || thicker_out, '') || coalesce(' thicker_in=' || thicker_in, '') || coalesce(' thicker_felt=' || thicker_felt, '') || coalesce(' thinner_out=' || thinner_out, '') || coalesce(' thinner_in=' || thinner_in, '') || coalesce(' thinner_felt=' || thinner_felt, '') FROM recheck_made AS d WHERE d.sequence = e.sequence)
    WHEN 'judged_again' THEN (SELECT iif("check" = '', '', ' check=' || "check") || iif(why = '', '', ' why=' || why) FROM judged_again AS d WHERE d.sequence = e.sequence)
    WHEN 'girdle_way_set' THEN (SELECT iif(face_up = '', '', ' face_up=' || face_up) || iif(cutout_towards = '', '', ' cutout_towards=' || cutout_towards) || iif(cutout_side = '', '', ' cutout_side=' || cutout_side) FROM girdle_way_set AS d WHERE d.sequence = e.sequence)
    WHEN 'trial_fit_result' THEN (SELECT iif(item = '', '', ' item=' || item) || ' throw_number=' || throw_number || iif(result = '', '', ' result=' || result) || coalesce(' clearance_nm=' || clearance_nm, '') || coalesce(' clearance_typed=' || clearance_typed, '') || iif(note = '', '', ' note=' || note) FROM trial_fit_result AS d WHERE d.sequence = e.sequence)
    WHEN 'pickup_reading' THEN (SELECT iif(term = '', '', ' term=' || term) || ' value_nm=' || value_nm || iif(value_typed = '', '', ' value_typed=' || value_typed) || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' part_temperature_mdegC=' || part_temperature_mdegC, '') || coalesce(' part_temperature_typed=' || part_temperature_typed, '') FROM pickup_reading AS d WHERE d.sequence = e.sequence)
    WHEN 'finding_opened' THEN (SELECT iif(finding = '', '', ' finding=' || finding) || iif(place = '', '', ' place=' || place) || iif(text = '', '', ' text=' || text) FROM finding_opened AS d WHERE d.sequence = e.sequence)
    WHEN 'finding_settled' THEN (SELECT iif(finding = '', '', ' finding=' || finding) || iif(done = '', '', ' done=' || done) FROM finding_settled AS d WHERE d.sequence = e.sequence)
    WHEN 'note_added' THEN (SELECT iif(place = '', '', ' place=' || place) || iif(text = '', '', ' text=' || text) FROM note_added AS d WHERE d.sequence = e.sequence)
    WHEN 'attachment_added' THEN (SELECT iif(place = '', '', ' place=' || place) || iif(file_name = '', '', ' file_name=' || file_name) || iif(media_type = '', '', ' media_type=' || media_type) || iif(caption = '', '', ' caption=' || caption) || iif(sha256 = '', '', ' sha256=' || sha256) || iif(original_sha256 = '', '', ' original_sha256=' || original_sha256) || ' size_bytes=' || size_bytes FROM attachment_added AS d WHERE d.sequence = e.sequence)
    WHEN 'closing_step_done' THEN (SELECT iif(step = '', '', ' step=' || step) || coalesce(' open_minutes=' || open_minutes, '') || iif(note = '', '', ' note=' || note) || coalesce(' product=' || product, '') || coalesce(' lot=' || lot, '') || coalesce(' fitted=' || fitted, '') || coalesce(' aside=' || aside, '') || coalesce(' left_over=' || left_over, '') FROM closing_step_done AS d WHERE d.sequence = e.sequence)
    WHEN 'signed_off' THEN (SELECT iif(statement = '', '', ' statement=' || statement) FROM signed_off AS d WHERE d.sequence = e.sequence)
    WHEN 'build_begun' THEN (SELECT ' build=' || build || iif(why = '', '', ' why=' || why) FROM build_begun AS d WHERE d.sequence = e.sequence)
    WHEN 'struck' THEN (SELECT ' entry=' || entry || iif(why = '', '', ' why=' || why) FROM struck AS d WHERE d.sequence = e.sequence)
    WHEN 'salvaged' THEN (SELECT iif(file_name = '', '', ' file_name=' || file_name) || ' size_bytes=' || size_bytes || iif(sha256 = '', '', ' sha256=' || sha256) || iif(last_seal = '', '', ' last_seal=' || last_seal) || iif(unsealed = '', '', ' unsealed=' || unsealed) || iif(lost = '', '', ' lost=' || lost) FROM salvaged AS d WHERE d.sequence = e.sequence)
    WHEN 'crank_laid_in' THEN (SELECT ' is_in=' || is_in || iif(note = '', '', ' note=' || note) FROM crank_laid_in AS d WHERE d.sequence = e.sequence)
    WHEN 'feel_study_begun' THEN (SELECT ' study=' || study || iif(whose = '', '', ' whose=' || whose) || iif(straightedge = '', '', ' straightedge=' || straightedge) || iif(set_up = '', '', ' set_up=' || set_up) FROM feel_study_begun AS d WHERE d.sequence = e.sequence)
    WHEN 'feel_answer' THEN (SELECT ' study=' || study || ' height_nm=' || height_nm || iif(height_typed = '', '', ' height_typed=' || height_typed) || iif(shims = '', '', ' shims=' || shims) || iif(felt = '', '', ' felt=' || felt) FROM feel_answer AS d WHERE d.sequence = e.sequence)
    WHEN 'clamp_checked' THEN (SELECT iif(fastener = '', '', ' fastener=' || fastener) || ' torque_on_mNm=' || torque_on_mNm || iif(torque_on_typed = '', '', ' torque_on_typed=' || torque_on_typed) || ' torque_off_mNm=' || torque_off_mNm || iif(torque_off_typed = '', '', ' torque_off_typed=' || torque_off_typed) || iif(instrument = '', '', ' instrument=' || instrument) FROM clamp_checked AS d WHERE d.sequence = e.sequence)
    WHEN 'washer_worked' THEN (SELECT iif(position = '', '', ' position=' || position) || iif(work = '', '', ' work=' || work) || iif(note = '', '', ' note=' || note) FROM washer_worked AS d WHERE d.sequence = e.sequence)
    WHEN 'turning_torque_read' THEN (SELECT iif(stage = '', '', ' stage=' || stage) || ' breakaway_mNm=' || breakaway_mNm || iif(breakaway_typed = '', '', ' breakaway_typed=' || breakaway_typed) || ' running_mNm=' || running_mNm || iif(running_typed = '', '', ' running_typed=' || running_typed) || iif(instrument = '', '', ' instrument=' || instrument) FROM turning_torque_read AS d WHERE d.sequence = e.sequence)
    WHEN 'own_check_set' THEN (SELECT iif(own_check = '', '', ' own_check=' || own_check) || iif(words = '', '', ' words=' || words) || iif(sort = '', '', ' sort=' || sort) || iif(holds = '', '', ' holds=' || holds) || coalesce(' step=' || step, '') || ' places=' || places || coalesce(' lo_nm=' || lo_nm, '') || coalesce(' lo_typed=' || lo_typed, '') || coalesce(' hi_nm=' || hi_nm, '') || coalesce(' hi_typed=' || hi_typed, '') || iif(source = '', '', ' source=' || source) || coalesce(' why=' || why, '') FROM own_check_set AS d WHERE d.sequence = e.sequence)
    WHEN 'own_check_answered' THEN (SELECT iif(own_check = '', '', ' own_check=' || own_check) || ' place=' || place || coalesce(' answer=' || answer, '') || coalesce(' value_nm=' || value_nm, '') || coalesce(' value_typed=' || value_typed, '') || iif(instrument = '', '', ' instrument=' || instrument) || coalesce(' photo=' || photo, '') || iif(note = '', '', ' note=' || note) FROM own_check_answered AS d WHERE d.sequence = e.sequence)
    WHEN 'part' THEN (SELECT iif(sort = '', '', ' sort=' || sort) || iif(what = '', '', ' what=' || what) || iif(place = '', '', ' place=' || place) || iif(maker = '', '', ' maker=' || maker) || iif(part_number = '', '', ' part_number=' || part_number) || coalesce(' serial=' || serial, '') || iif(lot = '', '', ' lot=' || lot) || coalesce(' stamped=' || stamped, '') || coalesce(' is_new=' || is_new, '') || coalesce(' times_tightened=' || times_tightened, '') || coalesce(' machined=' || machined, '') || coalesce(' machined_by=' || machined_by, '') || coalesce(' machined_on=' || machined_on, '') || coalesce(' photo=' || photo, '') || coalesce(' note=' || note, '') FROM part AS d WHERE d.sequence = e.sequence)
    WHEN 'zero_checked' THEN (SELECT iif(instrument = '', '', ' instrument=' || instrument) || iif(standard = '', '', ' standard=' || standard) || ' nominal_nm=' || nominal_nm || iif(nominal_typed = '', '', ' nominal_typed=' || nominal_typed) || ' reading_nm=' || reading_nm || iif(reading_typed = '', '', ' reading_typed=' || reading_typed) || coalesce(' temperature_mdegC=' || temperature_mdegC, '') || coalesce(' temperature_typed=' || temperature_typed, '') FROM zero_checked AS d WHERE d.sequence = e.sequence)
    WHEN 'value_confirmed' THEN (SELECT iif(value = '', '', ' value=' || value) || iif(source = '', '', ' source=' || source) FROM value_confirmed AS d WHERE d.sequence = e.sequence)
    WHEN 'brought_in' THEN (SELECT iif(file_name = '', '', ' file_name=' || file_name) || ' count=' || count || iif(sha256 = '', '', ' sha256=' || sha256) || coalesce(' date=' || date, '') FROM brought_in AS d WHERE d.sequence = e.sequence)
    WHEN 'signature' THEN (SELECT ' signed_entry=' || signed_entry || iif(signed_seal = '', '', ' signed_seal=' || signed_seal) || iif(key_name = '', '', ' key_name=' || key_name) || iif(public_key = '', '', ' public_key=' || public_key) || coalesce(' valid_from=' || valid_from, '') || coalesce(' valid_until=' || valid_until, '') || iif(signature = '', '', ' signature=' || signature) FROM signature AS d WHERE d.sequence = e.sequence)
  END) AS says,
  (SELECT min(s.sequence) FROM struck AS s WHERE s.entry = e.sequence) AS struck_by,
  lower(hex(e.seal)) AS seal
FROM entry AS e
ORDER BY e.sequence;

