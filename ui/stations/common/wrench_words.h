// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <assessment/facts.h>
#include <units/format.h>

namespace caprail {

/// What speaks against an instrument on a day: past its due date or cycles, no calibration on record. Empty when
/// nothing does. A mark, never a refusal.
QString calibrationRemark(const Facts&, const InstrumentAdded&, Date day);
/// What speaks against a wrench for a torque on a day: its range (ISO 6789: from 20 % of its largest value unless
/// marked otherwise) and its calibration. Empty when nothing does, or when no instrument is named.
QString wrenchRemark(const Facts&, const std::string& instrument, std::optional<Torque> torque, Date day, const Units&);
/// The wrench's range in words ("30.0 to 150.0 lbf·ft"); empty for an instrument without one.
QString rangeText(const InstrumentAdded&, const Units&);
/// What was never said of an instrument and would be needed to vouch for it: the calibration's date, a gauge's limit of
/// error. Empty when all of it is there.
QString whatIsNotKnown(const InstrumentAdded&);
/// Today, in UTC.
Date today();

} // namespace caprail
