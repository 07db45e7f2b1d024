// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/search.h>

namespace caprail::solver {

namespace {
/// From this many steps on a search is long: nodes are worth prices of their own, failures worth remembering.
constexpr std::int64_t longSearch = 1000;
/// A step that takes more work than this on the average, because there are so many stacks, counts for several.
constexpr std::int64_t dearStep = 10'000;
} // namespace

Search::Search(const Instance& instance, const Columns& columns, const Prices& forShims, const Prices& forResiduals,
               WorkClock& clock)
    : m_instance(instance), m_columns(columns), m_forShims(forShims), m_forResiduals(forResiduals), m_clock(clock),
      m_shimWorth(worthOfKit(instance, forShims, 0)), m_chosen(columns.size(), -1), m_twist(columns) {}

bool Search::isLong() const {
    return m_probe > 0 || m_steps > longSearch;
}

Search::Frame& Search::frameAt(std::size_t depth) {
    while (m_frames.size() <= depth) {
        m_frames.emplace_back();
        m_frames.back().live.resize(m_columns.size());
    }
    Frame& frame = m_frames[depth];
    if (isTwistLimited()) {
        frame.choices.resize(m_columns.size());
    }
    return frame;
}

bool Search::fits(const Column& c) const {
    for (std::uint16_t i = 0; i < c.partCount; ++i) {
        if (m_left[c.parts[i].cls] < c.parts[i].count) {
            return false;
        }
    }
    return true;
}

void Search::use(const Column& c, int sign) {
    for (std::uint16_t i = 0; i < c.partCount; ++i) {
        const Part part = c.parts[i];
        int& left = m_left[part.cls];
        m_kit -= StateKey::of(100'000U + part.cls, static_cast<std::uint64_t>(left));
        left -= sign * part.count;
        m_kit += StateKey::of(100'000U + part.cls, static_cast<std::uint64_t>(left));
    }
}

StateKey Search::stateOf(const Frame& frame) const {
    StateKey key = m_kit;
    for (std::size_t p : m_open) {
        key += StateKey::of(m_kind[p], static_cast<std::uint64_t>(m_barred[p]) + 1);
    }
    key += StateKey::of(1, static_cast<std::uint64_t>(frame.leftOut));
    if (isTwistLimited()) {
        key += StateKey::of(2, static_cast<std::uint64_t>(frame.twist));
    }
    for (std::size_t i = 0; i < frame.forces.size(); ++i) {
        key += StateKey::of(1'000'000U + i, static_cast<std::uint64_t>(frame.forces[i]));
    }
    return key;
}

void Search::seed(Frame& root) {
    m_arena.clear();
    m_open.clear();
    root = Frame{};
    root.live.resize(m_columns.size());
    root.twist = m_instance.fixedTwist;
    root.leftOut = m_limits.leftOut;
    root.forces = areForcesLimited() ? m_instance.fixedLoad : Forces{};
    root.prices = isSumLimited() ? m_forResiduals : m_forShims;
    root.prices.ofClass.resize(m_instance.classes(), 0);
    root.shimPrices = m_forShims;
    root.shimPrices.ofClass.resize(m_instance.classes(), 0);
    m_kind.clear();
    for (std::size_t p = 0; p < m_columns.size(); ++p) {
        Seat at = m_instance.seats[p];
        std::size_t alike = 0;
        for (;; ++alike) {
            Seat other = m_instance.seats[alike];
            if (!isTwistLimited()) {
                other.weight = at.weight;
            }
            if (!areForcesLimited()) {
                other.load = at.load;
            }
            if (other == at) {
                break;
            }
        }
        m_kind.push_back(10U + alike);
    }
    m_barred.assign(m_columns.size(), -1);
    m_once.live.resize(m_columns.size());
    m_once.choices.resize(isTwistLimited() ? m_columns.size() : 0);
    for (std::size_t p = 0; p < m_columns.size(); ++p) {
        m_clock.book(static_cast<std::int64_t>(m_columns[p].size()));
        m_open.push_back(p);
        m_chosen[p] = -1;
        root.live[p].begin = m_arena.size();
        for (std::size_t i = 0; i < m_columns[p].size(); ++i) {
            m_arena.push_back(static_cast<std::uint32_t>(i));
        }
        root.live[p].end = m_arena.size();
    }
}

SearchOutcome Search::run(const Limits& limits, std::int64_t steps,
                          const std::function<bool(const Found&, Limits&)>& onFound) {
    m_limits = limits;
    m_residualWorth = worthOfKit(m_instance, m_forResiduals, limits.shims);
    m_onFound = &onFound;
    m_steps = 0;
    m_mostSteps = steps;
    m_mostWork = steps >= never ? never : m_clock.now() + steps * dearStep;
    m_gaveUp = false;
    m_left = m_instance.count;
    m_kit = StateKey{};
    m_own.forget();
    m_shared->prepareFor(limits, m_listing);
    seed(m_root);
    // The second narrowing knows what the seats cost at least, and so sheds what no plan within the limits can use.
    const bool isHalted = narrow(m_root, m_once) && narrow(m_once, frameAt(0)) && descend(0) == Next::halt;
    m_shared->endedWith(m_limits);
    return !isHalted ? SearchOutcome::exhausted : m_gaveUp ? SearchOutcome::gaveUp : SearchOutcome::found;
}

Search::Next Search::report(const Frame& frame) {
    Found found;
    found.column = m_chosen;
    found.shims = frame.shims;
    found.sum = frame.sum;
    found.twist = magnitude(frame.twist);
    found.load = largestOf(frame.forces);
    found.squares = squaresOf(frame.forces);
    if (found.shims > m_limits.shims || found.sum > m_limits.sum || found.twist > m_limits.twist ||
        found.load > m_limits.load || found.squares > m_limits.squares) {
        return Next::goOn; // within the limits by its prices only
    }
    for (std::size_t p = 0; p < m_chosen.size(); ++p) {
        if (m_chosen[p] >= 0) {
            ++found.served;
            found.largest =
                std::max(found.largest, magnitude(m_columns[p][static_cast<std::size_t>(m_chosen[p])].residual));
        }
    }
    return (*m_onFound)(found, m_limits) ? Next::goOn : Next::halt;
}

int Search::branchesAt(const Frame& frame, std::size_t seat) const {
    const Live& live = frame.live[seat];
    return m_probe > 0                                                ? static_cast<int>(live.count())
           : static_cast<std::size_t>(live.ofSmallest) < live.count() ? live.ofSmallest + 1
                                                                      : live.ofSmallest;
}

std::size_t Search::hardest(const Frame& frame) const {
    std::size_t best = 0;
    for (std::size_t i = 1; i < m_open.size(); ++i) {
        const int na = branchesAt(frame, m_open[i]);
        const int nb = branchesAt(frame, m_open[best]);
        if (na < nb || (na == nb && m_open[i] < m_open[best])) {
            best = i;
        }
    }
    return best;
}

/// Puts the seat's stacks into the order of what they cost at this node's prices.
void Search::orderByPrices(const Frame& frame, std::size_t seat) {
    if (frame.prices.ofClass.empty()) {
        return;
    }
    const Cost cost = isSumLimited() ? Cost::residuals : Cost::shims;
    const Live& live = frame.live[seat];
    m_ranked.clear();
    m_clock.book(60 * static_cast<std::int64_t>(live.count()));
    for (std::size_t i = live.begin; i < live.end; ++i) {
        std::int64_t rank = pricedCost(offerOf(m_columns[seat][m_arena[i]], cost), frame.prices);
        if (m_probe > 0) {
            rank += static_cast<std::int64_t>(StateKey::of(m_probe, m_arena[i]).a % (scale / 8));
        }
        m_ranked.emplace_back(rank, m_arena[i]);
    }
    std::sort(m_ranked.begin(), m_ranked.end());
    for (std::size_t i = 0; i < m_ranked.size(); ++i) {
        m_arena[live.begin + i] = m_ranked[i].second;
    }
}

Search::Next Search::descend(std::size_t depth) {
    Frame& frame = frameAt(depth);
    if (m_open.empty()) {
        return report(frame);
    }
    const bool isNoted = remembers();
    const StateKey state = isNoted ? stateOf(frame) : StateKey{};
    const std::size_t at = hardest(frame);
    const bool isByShim = frame.ofShim > 0 && frame.ofShim < branchesAt(frame, m_open[at]);
    const Next result = isByShim ? branchOnShim(depth) : branchOnSeat(depth, at);
    if (isNoted && result == Next::goOn) {
        m_shared->table().remember(state, roomForSum(frameAt(depth)));
    }
    return result;
}

Search::Next Search::branchOnSeat(std::size_t depth, std::size_t at) {
    Frame& frame = frameAt(depth);
    const std::size_t seat = m_open[at];
    if (isLong() && m_open.size() > 2) {
        orderByPrices(frame, seat);
    }
    m_open[at] = m_open.back();
    m_open.pop_back();
    const Live live = frame.live[seat];
    const std::size_t before = m_arena.size();
    Live larger;
    larger.begin = before;
    for (std::size_t i = live.begin; i < live.end; ++i) {
        const std::uint32_t index = m_arena[i];
        if (m_probe == 0 && m_columns[seat][index].size > live.smallest) {
            m_arena.push_back(index);
        }
    }
    larger.end = m_arena.size();
    const std::size_t mark = m_arena.size();
    Next result = Next::goOn;
    for (std::size_t i = live.begin; i < live.end && result == Next::goOn; ++i) {
        if (m_probe > 0 || m_columns[seat][m_arena[i]].size == live.smallest) {
            result = tryColumn(depth, seat, m_arena[i], live);
            m_arena.resize(mark);
        }
    }
    m_chosen[seat] = -1;
    if (result == Next::goOn && larger.isEmpty() && frame.leftOut > 0) {
        result = tryLeavingOut(depth);
        m_arena.resize(mark);
    }
    m_open.push_back(seat);
    std::swap(m_open[at], m_open.back());
    if (result == Next::goOn && !larger.isEmpty()) {
        result = tryLarger(depth, seat, larger);
    }
    m_arena.resize(before);
    return result;
}

Search::Next Search::tryColumn(std::size_t depth, std::size_t seat, std::uint32_t index, const Live& live) {
    Frame& frame = frameAt(depth);
    const Column& c = m_columns[seat][index];
    if (c.size - live.smallest + frame.shims + frame.freeShims > m_limits.shims ||
        (isSumLimited() && magnitude(c.residual) - live.leastResidual + frame.sum + frame.freeSum > m_limits.sum) ||
        c.shimCost - live.leastShimCost + frame.shimCost + frame.freeShimCost > shimCap() ||
        (isSumLimited() &&
         c.residualCost - live.leastResidualCost + frame.residualCost + frame.freeResidualCost > residualCap()) ||
        magnitude(c.residual) > m_limits.largestResidual) {
        return Next::goOn;
    }
    const std::int64_t twist = m_instance.seats[seat].weight * c.residual;
    const auto book = [&](int sign) {
        frame.shims += sign * c.size;
        frame.sum += sign * magnitude(c.residual);
        frame.twist += sign * twist;
        if (!frame.forces.empty()) {
            addTo(frame.forces, m_instance.seats[seat], sign * c.residual);
        }
        frame.shimCost += sign * c.shimCost;
        frame.residualCost += sign * c.residualCost;
        frame.freeShimCost -= sign * live.leastShimCost;
        frame.freeResidualCost -= sign * live.leastResidualCost;
        frame.freeShims -= std::int64_t{sign} * live.smallest;
        frame.freeSum -= sign * live.leastResidual;
        use(c, sign);
    };
    if (isSpent()) {
        return Next::halt;
    }
    book(1);
    m_chosen[seat] = static_cast<int>(index);
    const Next result = narrow(frame, frameAt(depth + 1)) ? descend(depth + 1) : Next::goOn;
    book(-1);
    return result;
}

bool Search::isSpent() {
    m_clock.book(200);
    m_gaveUp = ++m_steps > m_mostSteps || m_clock.now() > m_mostWork;
    return m_gaveUp;
}

/// The seat stays open, but for a larger stack than its smallest.
Search::Next Search::tryLarger(std::size_t depth, std::size_t seat, const Live& larger) {
    Frame& frame = frameAt(depth);
    const Live live = frame.live[seat];
    const int barred = m_barred[seat];
    frame.live[seat] = larger;
    frame.bounded = false; // the least costs are to be found anew
    m_barred[seat] = live.smallest;
    const Next result = narrow(frame, frameAt(depth + 1)) ? descend(depth + 1) : Next::goOn;
    m_barred[seat] = barred;
    frame.bounded = true;
    frame.live[seat] = live;
    return result;
}

Search::Next Search::tryLeavingOut(std::size_t depth) {
    Frame& frame = frameAt(depth);
    --frame.leftOut;
    frame.bounded = false; // the costliest may have been this one: no filtering by it on the way down
    const Next result = narrow(frame, frameAt(depth + 1)) ? descend(depth + 1) : Next::goOn;
    frame.bounded = true;
    ++frame.leftOut;
    return result;
}

} // namespace caprail::solver
