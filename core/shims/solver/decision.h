// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <shims/solver/column_store.h>
#include <shims/solver/incumbent.h>
#include <shims/solver/open_seats.h>
#include <shims/solver/question.h>
#include <shims/solver/search.h>
#include <shims/solver/whole_kits.h>

namespace caprail::solver {

/// Answers the decision problem, by everything there is, from the cheapest to the dearest: bounds, whole kits, a search
/// over the stacks that are listed, prices, and a search to the end over all stacks that the prices leave possible.
class Decision {
public:
    Decision(const OpenSeats& open, ColumnStore& store, WholeKits& kits, Incumbent& incumbent, WorkClock& clock)
        : m_open(open), m_store(store), m_kits(kits), m_incumbent(incumbent), m_clock(clock) {}

    /// Finds such a plan (and offers it to the incumbent), or that there is none; “unknown” where there is no room for
    /// the stacks. `fewestShims`: no plan that leaves out as few has fewer.
    Answer decide(const Question& question, int fewestShims);

    static Limits limitsFor(const Question& question);
    /// Offers what a search has found.
    void offer(const Columns& columns, const Found& found);

    /// Stacks tried in a first search, and short tries at a plan before each longer one.
    static constexpr std::int64_t firstSteps = 1000;
    static constexpr unsigned probes = 2;
    /// Stacks tried in sharing out whole kits.
    static constexpr std::int64_t kitSteps = 30'000;

private:
    [[nodiscard]] bool isAnswered(const Question& question) const;
    Answer fromListed(const Question& question, std::int64_t steps, unsigned probe = 0);
    Answer byPrices(const Question& question, int fewestShims);
    Answer atLength(const Question& question, int fewestShims, std::int64_t steps, std::int64_t mostSteps);

    const OpenSeats& m_open;
    ColumnStore& m_store;
    WholeKits& m_kits;
    Incumbent& m_incumbent;
    WorkClock& m_clock;
    Failures m_failures;
};

} // namespace caprail::solver
