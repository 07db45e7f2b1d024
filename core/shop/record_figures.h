// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/assessment.h>
#include <shop/builds.h>
#include <string>
#include <vector>

namespace caprail {

/// One banded quantity of one build, as it stood at the build's end or stands now.
struct BandedFigure {
    std::int64_t build = 1;
    std::string band;  ///< a name of band_names.h or the shop's own
    std::string place; ///< "main-3", "3R", "1"
    Length value;
    CheckState state = CheckState::notDone;
    std::optional<Band> limits = {}; ///< that the build judged it by; none: its record set no such band
    friend bool operator==(const BandedFigure&, const BandedFigure&) = default;
};

/// How often one fastener was pulled by one person with one wrench in the verify rounds of all builds.
struct PullFigure {
    std::string fastener, wrench, person;
    std::int64_t pulled = 0, moved = 0;
    Angle largest; ///< of the movements
    friend bool operator==(const PullFigure&, const PullFigure&) = default;
};

/// An instrument as a record knows it, with when its calibration falls due.
struct InstrumentFigure {
    std::string name, serial;
    InstrumentType type = InstrumentType::micrometer;
    std::optional<Date> calibrated;
    std::optional<Date> due; ///< for wrenches without one: a year after the calibration (ISO 6789)
    std::optional<std::int64_t> dueCycles;
    std::int64_t cycles = 0; ///< before this record and in it
    friend bool operator==(const InstrumentFigure&, const InstrumentFigure&) = default;
};

/// What one record adds to the comparison of many.
struct RecordFigures {
    std::vector<BandedFigure> banded;
    std::vector<PullFigure> pulls;
    std::vector<InstrumentFigure> instruments;
    friend bool operator==(const RecordFigures&, const RecordFigures&) = default;
};

RecordFigures figuresOf(const Ledger& ledger);
/// The same where the builds are known (builds.h) and the last of them is assessed.
RecordFigures figuresOf(const Ledger& ledger, const std::vector<Build>& builds, const Assessment& last);

} // namespace caprail
