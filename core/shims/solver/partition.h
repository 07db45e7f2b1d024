// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <optional>
#include <random>
#include <shims/solver/instance.h>
#include <shims/solver/kit_choice.h>
#include <shims/solver/search.h>
#include <vector>

namespace caprail::solver {

/// Shares out all the shims of a kit among all seats: where next to every shim is needed, that is where plans are. It
/// finds plans and proves nothing. Stacks are drawn by lot for all seats but the last few, always from what is left
/// and about as many shims as fall to the seat, the last two shims of each so that the total fits; for the last few
/// seats every way is tried. Since the whole kit is used, the sum of the residuals is known from the start: each stack
/// is drawn so that the rest can still make up that sum, and keep to the limits on |residual|, on the sum of |residual|
/// and on the twist.
class Partition {
public:
    Partition(const Instance& instance, const Limits& limits, WorkClock& clock);

    /// Tries the kits in turn, for up to `steps` stacks. Takes kits of up to 64 shims; the stacks per seat, or none.
    std::optional<std::vector<std::vector<Part>>> find(const std::vector<WholeKit>& kits, std::int64_t steps);

private:
    using Set = std::uint64_t; ///< of shims of the present kit, thick to thin
    /// What is still to be handed out, and to whom.
    struct Rest {
        std::size_t depth = 0; ///< m_order[depth …] are open
        Set left = 0;
        std::int64_t residual = 0; ///< sum over the open seats
        std::int64_t room = 0;     ///< for the sum of |residual| over the open seats
        std::int64_t twist = 0;    ///< of the seats done
    };
    struct Span {
        std::int64_t lo = 0;
        std::int64_t hi = -1;
    };

    void load(const WholeKit& kit);
    bool share(const Rest& rest);
    bool drawStacks(const Rest& rest);
    bool tryAll(const Rest& rest, const Span& totals, std::size_t next, Set chosen, int size, std::int64_t total,
                std::int64_t toCome);
    bool finish(const Rest& rest);
    bool give(const Rest& rest, Set stack, std::int64_t total);
    [[nodiscard]] Span residuals(const Rest& rest) const;
    [[nodiscard]] Span sizes(const Rest& rest) const;
    Set draw(const Rest& rest, const Span& totals, std::int64_t& total);
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(m_random() % n); }
    bool isSpent();

    const Instance& m_instance;
    const Limits& m_limits;
    WorkClock& m_clock;
    std::vector<std::int64_t> m_thickness; ///< of the kit's shims
    std::vector<std::uint16_t> m_class;
    std::vector<std::size_t> m_order;
    std::vector<Set> m_stacks;        ///< per seat
    std::vector<std::size_t> m_loose; ///< scratch
    std::int64_t m_steps = 0;
    std::int64_t m_mostSteps = 0;
    std::mt19937_64 m_random; ///< as the standard seeds it: the same lots in every run, on any machine
};

} // namespace caprail::solver
