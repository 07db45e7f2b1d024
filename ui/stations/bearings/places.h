// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <planview/plan_content.h>
#include <session/record_session.h>
#include <text/label.h>

namespace caprail {

/// What is measured at the bearings. The first four go over the journals; the rest have pages of their own.
enum class BearingsMode { journals, bores, housings, strip, fits, shells, warm };
constexpr bool isPass(BearingsMode mode) {
    return mode <= BearingsMode::strip;
}

/// One reading that a pass wants: a journal, a station along it and, for journals, a direction around it.
struct BearingSlot {
    JournalId journal;
    std::int64_t station = 1, direction = 1;
    friend bool operator==(const BearingSlot&, const BearingSlot&) = default;
};

/// How many stations and directions a pass has (the job: two by two at least; one place for a gauging strip).
struct SlotCounts {
    std::int64_t stations = 2, directions = 2;
};
/// Every slot of a pass: mains, then rods; station by station, at each station around. Empty without a layout.
std::vector<BearingSlot> bearingSlots(const Facts& facts, BearingsMode mode, SlotCounts counts);

/// The check of a journal's clearance; null while its band is not set.
const Check* clearanceCheckOf(const Assessment& assessment, JournalId journal);
/// The last reading that stands in a slot; nothing when it still wants one. A reading stands as long as the journal's
/// check rests on it.
std::optional<Entered<Length>> currentAt(const Facts& facts, const Assessment& assessment, BearingsMode mode,
                                         const BearingSlot& slot);
/// The next slot without a current reading, from `here` on and around; nothing when every one has one.
std::optional<BearingSlot> nextOpenSlot(const Facts& facts, const Assessment& assessment, BearingsMode mode,
                                        const std::vector<BearingSlot>& order, const BearingSlot& here);

BoreMethod methodOf(BearingsMode mode);
/// "station 1 (front), vertical"
QString slotName(BearingsMode mode, const BearingSlot& slot, SlotCounts counts);
/// A reading of a journal in few words, for a list that is about that journal alone.
QString bearingLine(const Entry& entry, const Units& units);
/// The slots of a journal as a small table, the asked one marked.
std::vector<std::vector<TableCell>> slotTable(const RecordSession& session, BearingsMode mode, const BearingSlot& asked,
                                              SlotCounts counts);
/// What a journal's readings come to, as a small table; empty when its band is not set, which `noBandSentence` says.
std::vector<std::vector<TableCell>> clearanceTable(const RecordSession& session, JournalId journal);
QString noBandSentence();

/// The diagram of a mode: each journal's clearance with the state of its check, or the throws with the rod side
/// clearance. Needs a layout.
PlanContent bearingsContent(const RecordSession& session, BearingsMode mode, SlotCounts counts);

} // namespace caprail
