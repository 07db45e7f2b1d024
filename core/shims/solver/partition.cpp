// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bit>
#include <shims/solver/partition.h>

namespace caprail::solver {

namespace {
constexpr std::uint64_t one = 1;
/// Stacks drawn at a seat before the ones above it are drawn anew.
constexpr int drawsPerSeat = 3;
/// With three seats left and no more shims than this, every way is tried.
constexpr int fewLeft = 15;
constexpr std::size_t mostShims = 64;
} // namespace

Partition::Partition(const Instance& instance, const Limits& limits, WorkClock& clock)
    : m_instance(instance), m_limits(limits), m_clock(clock), m_stacks(instance.seats.size(), 0) {
    for (std::size_t p = 0; p < instance.seats.size(); ++p) {
        m_order.push_back(p);
    }
}

bool Partition::isSpent() {
    m_clock.book(200);
    return ++m_steps > m_mostSteps;
}

void Partition::load(const WholeKit& kit) {
    m_thickness.clear();
    m_class.clear();
    for (std::size_t i = 0; i < kit.count.size(); ++i) {
        for (int n = 0; n < kit.count[i]; ++n) {
            m_thickness.push_back(m_instance.thickness[i]);
            m_class.push_back(static_cast<std::uint16_t>(i));
        }
    }
}

/// The residuals that the next seat may have so that the other open ones can still have theirs.
Partition::Span Partition::residuals(const Rest& rest) const {
    const Seat& at = m_instance.seats[m_order[rest.depth]];
    Span othersSpan{0, 0};
    for (std::size_t i = rest.depth + 1; i < m_order.size(); ++i) {
        const Seat& p = m_instance.seats[m_order[i]];
        othersSpan.lo += std::max(p.gap - p.hi, -m_limits.largestResidual);
        othersSpan.hi += std::min(p.gap - p.lo, m_limits.largestResidual);
    }
    Span r;
    r.lo = std::max({at.gap - at.hi, -m_limits.largestResidual, rest.residual - othersSpan.hi});
    r.hi = std::min({at.gap - at.lo, m_limits.largestResidual, rest.residual - othersSpan.lo});
    if (rest.room < never) { // |r| + |the others together| within the room
        r.lo = std::max(r.lo, -((rest.room - rest.residual) / 2));
        r.hi = std::min(r.hi, (rest.room + rest.residual) / 2);
    }
    if (m_limits.twist < never && m_order.size() - rest.depth == 2) { // here the twist leaves next to no choice
        const std::int64_t other = m_instance.seats[m_order[rest.depth + 1]].weight;
        const auto fits = [&](std::int64_t x) {
            return magnitude(rest.twist + at.weight * x + other * (rest.residual - x)) <= m_limits.twist;
        };
        while (r.lo <= r.hi && !fits(r.lo)) {
            ++r.lo;
        }
        while (r.lo <= r.hi && !fits(r.hi)) {
            --r.hi;
        }
    }
    return r;
}

Partition::Span Partition::sizes(const Rest& rest) const {
    std::int64_t others = 0;
    for (std::size_t i = rest.depth + 1; i < m_order.size(); ++i) {
        others += m_instance.seats[m_order[i]].most;
    }
    const std::int64_t left = std::popcount(rest.left);
    const auto open = static_cast<std::int64_t>(m_order.size() - rest.depth);
    return {std::max<std::int64_t>(1, left - others),
            std::min<std::int64_t>(m_instance.seats[m_order[rest.depth]].most, left - (open - 1))};
}

bool Partition::finish(const Rest& rest) {
    const std::size_t p = m_order[rest.depth];
    const Seat& at = m_instance.seats[p];
    const std::int64_t total = at.gap - rest.residual;
    if (total < at.lo || total > at.hi || magnitude(rest.residual) > std::min(m_limits.largestResidual, rest.room) ||
        std::popcount(rest.left) > at.most ||
        (m_limits.twist < never && magnitude(rest.twist + at.weight * rest.residual) > m_limits.twist)) {
        return false;
    }
    m_stacks[p] = rest.left;
    return true;
}

bool Partition::give(const Rest& rest, Set stack, std::int64_t total) {
    const std::size_t p = m_order[rest.depth];
    const std::int64_t residual = m_instance.seats[p].gap - total;
    m_stacks[p] = stack;
    Rest next = rest;
    ++next.depth;
    next.left &= ~stack;
    next.residual -= residual;
    next.room -= rest.room < never ? magnitude(residual) : 0;
    next.twist += m_instance.seats[p].weight * residual;
    return share(next);
}

bool Partition::share(const Rest& rest) {
    if (isSpent()) {
        return false;
    }
    const std::size_t open = m_order.size() - rest.depth;
    if (open == 1) {
        return finish(rest);
    }
    if (open == 2 || (open == 3 && std::popcount(rest.left) <= fewLeft)) {
        const Span r = residuals(rest);
        if (r.lo > r.hi) {
            return false;
        }
        const std::int64_t gap = m_instance.seats[m_order[rest.depth]].gap;
        std::int64_t toCome = 0;
        for (Set s = rest.left; s != 0; s &= s - 1) {
            toCome += m_thickness[static_cast<std::size_t>(std::countr_zero(s))];
        }
        return tryAll(rest, {gap - r.hi, gap - r.lo}, 0, 0, 0, 0, toCome);
    }
    return drawStacks(rest);
}

/// Every stack with a total in the span: shim by shim, thick to thin, with or without.
bool Partition::tryAll(const Rest& rest, const Span& totals, std::size_t next, Set chosen, int size, std::int64_t total,
                       std::int64_t toCome) {
    const Span bySize = sizes(rest);
    const Set all = rest.left;
    if (size > bySize.hi) {
        return false;
    }
    if (total >= totals.lo && size >= bySize.lo && give(rest, chosen, total)) {
        return true;
    }
    for (Set s = next < mostShims ? all >> next << next : 0; s != 0;) {
        m_clock.book(10);
        if (total + toCome < totals.lo || m_steps > m_mostSteps) {
            return false;
        }
        const auto at = static_cast<std::size_t>(std::countr_zero(s));
        const std::int64_t t = m_thickness[at];
        toCome -= t;
        s &= s - 1;
        if (total + t <= totals.hi && tryAll(rest, totals, at + 1, chosen | one << at, size + 1, total + t, toCome)) {
            return true;
        }
        while (s != 0) { // another of the same thickness would do the same
            const auto alike = static_cast<std::size_t>(std::countr_zero(s));
            if (m_thickness[alike] != t) {
                break;
            }
            toCome -= t;
            s &= s - 1;
        }
    }
    return false;
}

/// A stack by lot with a total in the span, or none.
Partition::Set Partition::draw(const Rest& rest, const Span& totals, std::int64_t& total) {
    m_loose.clear();
    std::int64_t thickness = 0;
    for (Set s = rest.left; s != 0; s &= s - 1) {
        m_loose.push_back(static_cast<std::size_t>(std::countr_zero(s)));
        thickness += m_thickness[m_loose.back()];
    }
    const auto left = static_cast<std::int64_t>(m_loose.size());
    const Span bySize = sizes(rest);
    const std::int64_t usual = (totals.lo * left + thickness / 2) / std::max<std::int64_t>(1, thickness);
    const std::int64_t size =
        std::clamp(usual + static_cast<std::int64_t>(below(4)) / 2 + static_cast<std::int64_t>(below(2)) - 1, bySize.lo,
                   bySize.hi);
    if (bySize.lo > bySize.hi) {
        return 0;
    }
    Set stack = 0;
    total = 0;
    for (std::int64_t n = 0; n + 2 < size; ++n) {
        const std::size_t lot = below(m_loose.size());
        stack |= one << m_loose[lot];
        total += m_thickness[m_loose[lot]];
        m_loose.erase(m_loose.begin() + static_cast<std::ptrdiff_t>(lot));
    }
    const std::size_t n = m_loose.size();
    if (n == 0) {
        return 0;
    }
    const std::size_t from = below(n);
    for (std::size_t k = 0; k < n; ++k) {
        const std::size_t a = m_loose[(from + k) % n];
        const std::int64_t lo = totals.lo - total - (size > 1 ? m_thickness[a] : 0);
        const std::int64_t hi = totals.hi - total - (size > 1 ? m_thickness[a] : 0);
        if (size == 1) {
            if (m_thickness[a] >= lo && m_thickness[a] <= hi) {
                total += m_thickness[a];
                return one << a;
            }
            continue;
        }
        auto b =
            std::partition_point(m_loose.begin(), m_loose.end(), [&](std::size_t at) { return m_thickness[at] > hi; });
        if (b != m_loose.end() && *b == a) {
            ++b;
        }
        if (b != m_loose.end() && m_thickness[*b] >= lo) {
            total += m_thickness[a] + m_thickness[*b];
            return stack | one << a | one << *b;
        }
    }
    return 0;
}

bool Partition::drawStacks(const Rest& rest) {
    const Span r = residuals(rest);
    if (r.lo > r.hi) {
        return false;
    }
    const std::int64_t gap = m_instance.seats[m_order[rest.depth]].gap;
    for (int n = 0; n < drawsPerSeat; ++n) {
        std::int64_t total = 0;
        const Set stack = draw(rest, {gap - r.hi, gap - r.lo}, total);
        if (stack != 0 && give(rest, stack, total)) {
            return true;
        }
        if (isSpent()) {
            return false;
        }
    }
    return false;
}

std::optional<std::vector<std::vector<Part>>> Partition::find(const std::vector<WholeKit>& kits, std::int64_t steps) {
    m_steps = 0;
    m_mostSteps = steps;
    std::int64_t gaps = 0;
    for (const Seat& p : m_instance.seats) {
        gaps += p.gap;
    }
    for (std::size_t turn = 0; !kits.empty() && !m_order.empty() && !isSpent(); ++turn) {
        const WholeKit& kit = kits[turn % kits.size()];
        load(kit);
        if (m_thickness.size() > mostShims || m_thickness.size() < m_order.size()) {
            return std::nullopt;
        }
        for (std::size_t i = m_order.size(); i-- > 1;) {
            std::swap(m_order[i], m_order[below(i + 1)]);
        }
        const Set all = m_thickness.size() == mostShims ? ~Set{0} : (one << m_thickness.size()) - 1;
        if (!share({0, all, gaps - kit.total, m_limits.sum, m_instance.fixedTwist})) {
            continue;
        }
        std::vector<std::vector<Part>> stacks(m_order.size());
        for (std::size_t p = 0; p < m_order.size(); ++p) {
            for (Set s = m_stacks[p]; s != 0; s &= s - 1) {
                const std::uint16_t cls = m_class[static_cast<std::size_t>(std::countr_zero(s))];
                if (stacks[p].empty() || stacks[p].back().cls != cls) {
                    stacks[p].push_back({cls, 0});
                }
                ++stacks[p].back().count;
            }
        }
        return stacks;
    }
    return std::nullopt;
}

} // namespace caprail::solver
