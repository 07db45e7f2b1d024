// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>

namespace caprail {

/// Whether the things that an entry names exist in a record; each refusal is one sentence that names what is missing
/// and what there is. Private to this folder.
class KnownItems {
public:
    explicit KnownItems(const Facts& facts) : m_facts(facts) {}
    [[nodiscard]] Result<void> layoutKnown() const;
    [[nodiscard]] Result<void> position(Position p) const;
    [[nodiscard]] Result<void> journal(JournalId j) const;
    [[nodiscard]] Result<void> fastener(FastenerId f) const;
    [[nodiscard]] Result<void> instrument(const std::string& instrumentName) const;
    [[nodiscard]] Result<void> shim(const std::string& shimName) const;
    /// A layout set in mid-build must still have every place that something was recorded for.
    [[nodiscard]] Result<void> noPlaceIsLost(const EngineLayout& next) const;

protected:
    const Facts& m_facts;
};

} // namespace caprail
