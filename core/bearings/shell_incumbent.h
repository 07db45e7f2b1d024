// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The best selection for one family so far, and the search that betters it. Private to this folder.
#include <bearings/shell_problem.h>
#include <packing/work_clock.h>
#include <random>
#include <tuple>

namespace caprail {

/// What a selection is judged by, in the order of importance; less is better.
struct ShellFigures {
    std::size_t notInBand = 0;
    std::size_t without = 0;
    std::int64_t cost = 0; ///< Σ |clearance − target|
    std::int64_t spread = 0;
    friend auto operator<=>(const ShellFigures&, const ShellFigures&) = default;
};
ShellFigures figuresOf(const std::vector<ShellChoice>& chosen);

class ShellIncumbent {
public:
    /// Begins with no bearing fitted.
    explicit ShellIncumbent(const ShellFamily& family)
        : m_chosen(family.bearings.size()), m_figures(figuresOf(m_chosen)) {}

    /// Keeps the selection if it is better than the best so far.
    void offer(const std::vector<ShellChoice>& chosen);
    [[nodiscard]] ShellFigures figures() const { return m_figures; }
    [[nodiscard]] const std::vector<ShellChoice>& chosen() const { return m_chosen; }
    /// How often it has got better.
    [[nodiscard]] std::size_t revision() const { return m_revision; }

private:
    std::vector<ShellChoice> m_chosen; ///< by bearing
    ShellFigures m_figures;
    std::size_t m_revision = 0;
};

/// Large-neighbourhood search over the bearings of a family: the shells of two to four bearings go back on the shelf,
/// and those bearings get the best pairs that the shelf then has for them all, by a small branch and bound. What comes
/// out stays unless it is worse by more than a threshold, which falls to nothing and rises again (Shaw 1998; Schrimpf,
/// Schneider, Stamm-Wilbrandt, Dueck 2000; Dueck and Scheuer, “Threshold accepting”, Journal of Computational Physics
/// 90 (1990); from memory, see shims/solver/README.md). It proves nothing.
class ShellImprover {
public:
    ShellImprover(const ShellFamily& family, ShellIncumbent& incumbent, packing::WorkClock& clock);

    /// Goes on until so much more is booked on the clock.
    void runFor(std::int64_t work);
    [[nodiscard]] std::int64_t work() const { return m_work; }
    /// Work booked when it last bettered the incumbent.
    [[nodiscard]] std::int64_t lastBetter() const { return m_lastBetter; }

private:
    /// What a bearing's choice weighs: out of band, then without shells, then off target.
    static std::int64_t weightOf(const ShellChoice& choice);
    void load(const std::vector<ShellChoice>& chosen);
    [[nodiscard]] const ShellChoice& firstInStock(std::size_t bearing) const;
    void step();
    void ruin();
    void listChoices();
    void recreate(std::size_t depth, std::int64_t weight);
    void put(std::size_t bearing, const ShellChoice& choice, int sign);
    [[nodiscard]] bool isInStock(const ShellChoice& choice) const;
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(m_random() % n); }

    const ShellFamily& m_family;
    ShellIncumbent& m_incumbent;
    packing::WorkClock& m_clock;
    std::vector<std::vector<ShellChoice>> m_choices; ///< per bearing, those in band first, nearest to target first
    std::vector<ShellChoice> m_now;
    std::vector<int> m_stock;
    std::int64_t m_steps = 0;
    // One ruin: the bearings, what each can have, the least that those from it on weigh, and the best so far.
    std::vector<std::size_t> m_ruins;
    std::vector<std::vector<const ShellChoice*>> m_lists;
    std::vector<std::int64_t> m_leastFrom;
    std::vector<ShellChoice> m_trial, m_best;
    std::int64_t m_bestWeight = 0;
    int m_nodes = 0;
    std::int64_t m_work = 0;
    std::int64_t m_lastBetter = 0;
    std::mt19937_64 m_random; ///< as the standard seeds it: the same lots in every run
};

} // namespace caprail
